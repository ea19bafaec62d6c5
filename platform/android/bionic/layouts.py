#!/usr/bin/python3
"""Writes what Rust's crate libc says of Android on arm64: sizes, places of fields, numbers. figures.txt has a line each,
layouts.c asserts them of the headers with which it is compiled.

Usage: layouts.py CRATE-FOLDER WORK-FOLDER     (needs cargo)

The crate's own sources are compiled, with every cfg decided as for aarch64-linux-android, and a program made from them
says the figures. It runs on this machine: both have the same sizes of integers, pointers and the same alignment.
"""
import os
import pathlib
import re
import shutil
import subprocess
import sys

WORLD = {"target_os": "android", "target_arch": "aarch64", "target_env": "", "target_pointer_width": "64",
         "target_endian": "little", "target_vendor": "unknown", "target_family": "unix"}
TOKEN = re.compile(r'(?:\s|//[^\n]*\n)*([a-z_0-9]+|"[^"]*"|[(),=])')
END = re.compile(r"(?:[\s,]|//[^\n]*\n)*\)|\s*,")

HEADERS = """dirent.h dlfcn.h elf.h errno.h fcntl.h getopt.h grp.h limits.h link.h locale.h net/if.h netdb.h netinet/in.h
netinet/tcp.h poll.h pthread.h pwd.h regex.h sched.h semaphore.h setjmp.h signal.h stddef.h stdint.h stdio.h stdlib.h string.h
sys/epoll.h sys/eventfd.h sys/file.h sys/inotify.h sys/ioctl.h sys/mman.h sys/prctl.h sys/resource.h sys/select.h sys/socket.h
sys/stat.h sys/statfs.h sys/statvfs.h sys/sysinfo.h sys/time.h sys/times.h sys/types.h sys/uio.h sys/un.h sys/utsname.h
sys/wait.h syslog.h termios.h time.h ucontext.h unistd.h utime.h wchar.h""".split()

STRUCTS = """stat dirent flock rlimit rusage timespec timeval itimerval itimerspec tm tms utimbuf sigaction passwd group
utsname sockaddr sockaddr_in sockaddr_in6 sockaddr_un sockaddr_storage addrinfo hostent servent protoent msghdr cmsghdr iovec
pollfd termios statvfs statfs sysinfo lconv sched_param epoll_event inotify_event in_addr in6_addr ipv6_mreq linger ucred
dl_phdr_info option""".split()
NAMED = """sigset_t stack_t siginfo_t fd_set pthread_attr_t pthread_mutex_t pthread_cond_t pthread_rwlock_t sem_t regex_t
regmatch_t Dl_info cpu_set_t mcontext_t ucontext_t max_align_t Elf64_Phdr""".split()
TYPES = """size_t ssize_t ptrdiff_t intptr_t pid_t uid_t gid_t id_t mode_t dev_t ino_t nlink_t off_t blkcnt_t blksize_t
fsblkcnt_t fsfilcnt_t time_t suseconds_t useconds_t clock_t clockid_t socklen_t sa_family_t in_addr_t in_port_t nfds_t rlim_t
pthread_t pthread_key_t pthread_mutexattr_t pthread_condattr_t pthread_rwlockattr_t wchar_t speed_t tcflag_t cc_t""".split()
INTEGERS = {"c_int", "c_uint", "c_long", "c_ulong", "c_short", "c_ushort", "c_char", "c_uchar", "c_longlong", "c_ulonglong",
            "i8", "u8", "i16", "u16", "i32", "u32", "i64", "u64", "usize", "isize", "size_t", "ssize_t"}
SAY = """[package]
name = "say"
version = "0.0.0"
edition = "2021"
[workspace]
[dependencies]
libc = { path = "../libc" }
"""
# Fields that C's headers call otherwise, or not at all.
IN_C = {"_f": None, "_pad": None, "u64": "data.u64", "st_atime_nsec": "st_atim.tv_nsec", "st_mtime_nsec": "st_mtim.tv_nsec", "st_ctime_nsec": "st_ctim.tv_nsec"}


def parse(text, at):
    m = TOKEN.match(text, at)
    name, at = m.group(1), m.end()
    m = TOKEN.match(text, at)
    if name in ("any", "all", "not") and m.group(1) == "(":
        at, parts = m.end(), []
        while True:
            m = TOKEN.match(text, at)
            at = m.end()
            if m.group(1) == ")":
                return {"any": any(parts), "all": all(parts), "not": not any(parts)}[name], at
            if m.group(1) != ",":
                value, at = parse(text, m.start())
                parts.append(value)
    if m.group(1) == "=":
        m = TOKEN.match(text, m.end())
        return WORLD.get(name) == m.group(1).strip('"'), m.end()
    return name == "unix", at


def decide(text):
    out, done = [], 0
    for m in re.finditer(r"#!?\[cfg(?:_attr)?\(", text):
        try:
            value, at = parse(text, m.end())
            end = END.match(text, at).start()
        except AttributeError:  # in a comment, or a processor that is not asked about
            continue
        out += [text[done:m.end()], "all()" if value else "any()"]
        done = end
    return "".join(out) + text[done:]


def cargo(folder, package, *arguments):
    env = dict(os.environ, RUSTC_BOOTSTRAP="1", CARGO_TARGET_DIR=str(folder / "target"))
    done = subprocess.run(["cargo", *arguments], cwd=folder / package, env=env, capture_output=True, text=True, check=False)
    if done.returncode != 0:
        sys.exit(f"layouts.py: cargo {' '.join(arguments)}: {done.stderr}")
    return done.stdout


def fields(expanded, name):
    m = re.search(rf"pub (?:struct|union) {name} \{{(.*?)\n\s*\}}", expanded, re.DOTALL)
    if not m:
        sys.exit(f"layouts.py: the crate has no {name}")
    return re.findall(r"pub (\w+):", m.group(1))


def program(expanded):
    lines = ["#![allow(deprecated)]", "use std::mem::*;", "fn main() {"]
    for name in TYPES:
        lines.append(f'println!("type {name} {{}}", size_of::<libc::{name}>());')
    for name in STRUCTS + NAMED:
        lines.append(f'println!("size {name} {{}} {{}}", size_of::<libc::{name}>(), align_of::<libc::{name}>());')
        for field in fields(expanded, name):
            lines.append(f"{{ let x = MaybeUninit::<libc::{name}>::uninit(); let p = x.as_ptr(); "
                         f"let f = unsafe {{ std::ptr::addr_of!((*p).{field}) }};")
            lines.append(f'println!("field {name} {field} {{}} {{}}", f as usize - p as usize, of(f)); }}')
    for name, kind in sorted(set(re.findall(r"pub const (\w+): (?:crate::|\w+::)*(\w+) =", expanded))):
        if kind in INTEGERS:
            lines.append(f'println!("number {name} {{}} {{}}", libc::{name} as i128, size_of_val(&libc::{name}));')
    return "\n".join(lines + ["}", "fn of<T>(_: *const T) -> usize { size_of::<T>() }", ""])


def assertion(line):
    kind, name, *rest = line.split()
    c_name = f"struct {name}" if name in STRUCTS else name
    said = line.replace('"', "")
    if kind == "type":
        return f'_Static_assert(sizeof({name}) == {rest[0]}, "{said}");'
    if kind == "size":
        return (f'_Static_assert(sizeof({c_name}) == {rest[0]}, "{said}");\n'
                f'_Static_assert(_Alignof({c_name}) == {rest[1]}, "{said}");')
    if kind == "field":
        field = IN_C.get(rest[0], rest[0])
        if field is None:
            return ""
        return (f'_Static_assert(__builtin_offsetof({c_name}, {field}) == {rest[1]}, "{said}");\n'
                f'_Static_assert(sizeof((({c_name}*)0)->{field}) == {rest[2]}, "{said}");')
    # As many bits as the crate's type has: one writes 0x80000000, the other its negative.
    bits = f"{(1 << 8 * int(rest[1])) - 1:#x}ull"
    value = int(rest[0]) & (1 << 8 * int(rest[1])) - 1
    return (f"#ifdef {name}\n_Static_assert(((unsigned long long)({name}) & {bits}) == {value}ull, "
            f'"{said}, not " FIRSTDEW_TEXT({name}));\n#endif')


def main():
    crate, work = (pathlib.Path(p).resolve() for p in sys.argv[1:])
    shutil.rmtree(work / "libc", ignore_errors=True)
    shutil.copytree(crate, work / "libc")
    (work / "libc/.cargo-checksum.json").unlink(missing_ok=True)
    manifest = (work / "libc/Cargo.toml").read_text()  # without what cargo would have to look up in its registry
    manifest = re.sub(r'\[dependencies\..*?\n\n', "", manifest, flags=re.DOTALL).replace('"rustc-std-workspace-core",', "")
    (work / "libc/Cargo.toml").write_text(manifest)
    (work / "libc/Cargo.lock").unlink(missing_ok=True)
    for file in (work / "libc/src").rglob("*.rs"):
        file.write_text(decide(file.read_text()))
    expanded = cargo(work, "libc", "rustc", "-q", "--offline", "--lib", "--", "-Zunpretty=expanded")
    (work / "say/src").mkdir(parents=True, exist_ok=True)
    (work / "say/src/main.rs").write_text(program(expanded))
    (work / "say/Cargo.toml").write_text(SAY)
    said = cargo(work, "say", "run", "-q", "--offline").splitlines()
    lines = ["#define _GNU_SOURCE 1", *(f"#include <{h}>" for h in HEADERS),
             "#define FIRSTDEW_TEXT(x) FIRSTDEW_TEXT_OF(x)", "#define FIRSTDEW_TEXT_OF(x) #x", *map(assertion, said)]
    (work / "figures.txt").write_text("\n".join(said) + "\n")
    (work / "layouts.c").write_text("\n".join(lines) + "\n")


if __name__ == "__main__":
    main()
