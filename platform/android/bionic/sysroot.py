#!/usr/bin/python3
"""Makes a folder of headers and libraries for Android's C library (bionic), from what package registries hold.

Usage: sysroot.py ZIG-FOLDER ANDROID-LIBRARIES FIGURES OUT

The headers are musl's, as zig ships them, changed where bionic differs; numbers come from FIGURES, which layouts.py made
of the crate libc. The assertions that it also made judge the outcome. The libraries are Android's own, of version 6,
which programs are linked with; so a name that Android 6 lacks stops the link, unless since26.c has it.
"""
import pathlib
import re
import shutil
import subprocess
import sys

# Android 6 has no such header, or its content is of no use without names that Android 6 lacks.
ABSENT = """aio.h cpio.h crypt.h fmtmsg.h glob.h iconv.h ifaddrs.h langinfo.h lastlog.h libintl.h monetary.h mqueue.h nl_types.h
pty.h shadow.h spawn.h stropts.h tgmath.h threads.h ulimit.h utmpx.h values.h wordexp.h""".split()

OWN = {
    "errno.h": """#pragma once
#include <features.h>
#include <bits/errno.h>
#ifdef __cplusplus
extern "C" {
#endif
__attribute__((const)) int* __errno(void);
#ifdef __cplusplus
}
#endif
#define errno (*__errno())
""",
    "assert.h": """#include <features.h>
#undef assert
#ifdef NDEBUG
#define assert(x) ((void)0)
#else
#define assert(x) ((void)((x) || (__assert2(__FILE__, __LINE__, __func__, #x), 0)))
#endif
#if defined(__STDC_VERSION__) && __STDC_VERSION__ < 202311L && !defined(__cplusplus)
#undef static_assert
#define static_assert _Static_assert
#endif
#ifdef __cplusplus
extern "C" {
#endif
_Noreturn void __assert2(const char*, int, const char*, const char*);
#ifdef __cplusplus
}
#endif
""",
    "ctype.h": """#pragma once
#include <features.h>
#define __NEED_locale_t
#include <bits/alltypes.h>
#ifdef __cplusplus
extern "C" {
#endif
""" + "".join(f"int {name}(int);\n" for name in """isalnum isalpha isascii isblank iscntrl isdigit isgraph islower isprint
ispunct isspace isupper isxdigit toascii tolower toupper""".split()) + "".join(f"int {name}_l(int, locale_t);\n"
    for name in "isalnum isalpha isblank iscntrl isdigit isgraph islower isprint ispunct isspace isupper isxdigit tolower toupper".split())
    + """#ifdef __cplusplus
}
#endif
""",
    "bits/setjmp.h": "typedef long __jmp_buf[32];\n",
    "sys/cdefs.h": """#pragma once
#ifdef __cplusplus
#define __BEGIN_DECLS extern "C" {
#define __END_DECLS }
#else
#define __BEGIN_DECLS
#define __END_DECLS
#endif
""",
}

# File, what musl has, what bionic has. Every one has to be found.
CHANGES = [
    ("features.h", r"#define _FEATURES_H", "#define _FEATURES_H\n#define __BIONIC__ 1\n"
     "#ifndef __ANDROID_API__\n#error bionic needs a version: -target aarch64-linux-android.N\n#endif"),
    ("bits/alltypes.h", r"typedef unsigned _Reg nlink_t;", "typedef unsigned nlink_t;"),
    ("bits/alltypes.h", r"typedef struct __pthread \* pthread_t;", "typedef long pthread_t;"),
    ("bits/alltypes.h", r"typedef unsigned long pthread_t;", "typedef long pthread_t;"),
    ("bits/alltypes.h", r"typedef unsigned pthread_key_t;", "typedef int pthread_key_t;"),
    ("bits/alltypes.h", r"typedef int pthread_spinlock_t;", "typedef struct { long __private; } pthread_spinlock_t;"),
    ("bits/alltypes.h", r"typedef struct \{ unsigned __attr; \} pthread_mutexattr_t;", "typedef long pthread_mutexattr_t;"),
    ("bits/alltypes.h", r"typedef struct \{ unsigned __attr; \} pthread_condattr_t;", "typedef long pthread_condattr_t;"),
    ("bits/alltypes.h", r"typedef struct \{ unsigned __attr; \} pthread_barrierattr_t;", "typedef int pthread_barrierattr_t;"),
    ("bits/alltypes.h", r"typedef struct \{ unsigned __attr\[2\]; \} pthread_rwlockattr_t;", "typedef long pthread_rwlockattr_t;"),
    ("bits/alltypes.h", r"typedef struct __sigset_t \{[^}]*\} sigset_t;",
     "typedef struct __sigset_t { unsigned long __bits[1]; } sigset_t;"),
    ("bits/alltypes.h", r"typedef int blksize_t;", "typedef unsigned long blksize_t;"),
    ("bits/alltypes.h", r"typedef struct \{ union \{[^}]*\} __u; \} pthread_attr_t;", """typedef struct {
	unsigned flags;
	void *stack_base;
	unsigned long stack_size, guard_size;
	int sched_policy, sched_priority;
	char __reserved[16];
} pthread_attr_t;"""),
    ("bits/alltypes.h", r"typedef struct \{ union \{[^}]*\} __u; \} pthread_mutex_t;",
     "typedef struct { int __private[10]; } pthread_mutex_t;"),
    ("bits/alltypes.h", r"typedef struct \{ union \{[^}]*\} __u; \} pthread_cond_t;",
     "typedef struct { int __private[12]; } pthread_cond_t;"),
    ("bits/alltypes.h", r"typedef struct \{ union \{[^}]*\} __u; \} pthread_rwlock_t;",
     "typedef struct { int __private[14]; } pthread_rwlock_t;"),
    ("pthread.h", r"_INITIALIZER \{\{\{0\}\}\}", "_INITIALIZER {{0}}"),
    ("bits/stat.h", r"blksize_t st_blksize;", "int st_blksize;"),
    ("fcntl.h", r"\(03\|O_SEARCH\)", "3"),
    ("stdlib.h", r"int rand \(void\);", r"\g<0>\nunsigned arc4random(void);\nvoid arc4random_buf(void *, size_t);"),
    ("unistd.h", r"#define lseek64 lseek\n", ""),
    ("unistd.h", r"off_t lseek\(int, off_t, int\);", r"\g<0>\noff_t lseek64(int, off_t, int);"),
    ("poll.h", r"typedef unsigned long nfds_t;", "typedef unsigned nfds_t;"),
    ("sys/resource.h", r"\tlong    __reserved\[16\];\n", ""),
    ("sys/socket.h", r"int msg_iovlen;", "unsigned long msg_iovlen;"),
    ("sys/socket.h", r"socklen_t (msg_controllen|cmsg_len);", r"unsigned long \1;"),
    ("sys/socket.h", r"#if __LONG_MAX > 0x7fffffff && __BYTE_ORDER == __\w+_ENDIAN\n\tint __pad\d;\n#endif\n", ""),
    ("sys/sysinfo.h", r"\tchar __reserved\[256\];\n", ""),
    ("bits/termios.h", r"\tspeed_t __c_ispeed;\n\tspeed_t __c_ospeed;\n", ""),
    ("sched.h", r"struct sched_param \{.*?\n\};", "struct sched_param {\n\tint sched_priority;\n};"),
    ("bits/signal.h", r"\tsigset_t uc_sigmask;\n", "\tsigset_t uc_sigmask;\n\tchar __padding[128 - sizeof(sigset_t)];\n"),
    ("regex.h", r"typedef struct re_pattern_buffer \{.*?\} regex_t;",
     "typedef struct {\n\tint re_magic;\n\tsize_t re_nsub;\n\tconst char *re_endp;\n\tvoid *re_g;\n} regex_t;"),
    ("bits/alltypes.h", r"struct _IO_FILE \{ char __x; \};", "struct _IO_FILE { char __private[152]; };"),
    ("stdio.h", r"typedef union _G_fpos64_t \{.*?\} fpos_t;", "typedef long fpos_t;"),
    ("signal.h", r"struct sigaction \{.*?\n\};", """struct sigaction {
	int sa_flags;
	union {
		void (*sa_handler)(int);
		void (*sa_sigaction)(int, siginfo_t *, void *);
	} __sa_handler;
	sigset_t sa_mask;
	void (*sa_restorer)(void);
};"""),
    ("semaphore.h", r"volatile int __val\[[^\]]*\];", "unsigned __count; int __reserved[3];"),
    ("netdb.h", r"\tstruct sockaddr \*ai_addr;\n\tchar \*ai_canonname;", "\tchar *ai_canonname;\n\tstruct sockaddr *ai_addr;"),
    ("math.h", r"\(\s*\\\n\s*sizeof\(x\) == sizeof\(float\) \? __fpclassifyf\(x\).*?__fpclassifyl\(x\) \)",
     "__builtin_fpclassify(FP_NAN, FP_INFINITE, FP_NORMAL, FP_SUBNORMAL, FP_ZERO, x)"),
    ("math.h", r"#define isinf\(x\).*?== FP_INFINITE\)", "#define isinf(x) __builtin_isinf(x)"),
    ("math.h", r"#define isnan\(x\).*?== FP_NAN\)", "#define isnan(x) __builtin_isnan(x)"),
    ("math.h", r"#define isnormal\(x\).*?== FP_NORMAL\)", "#define isnormal(x) __builtin_isnormal(x)"),
    ("math.h", r"#define isfinite\(x\).*?> FP_INFINITE\)", "#define isfinite(x) __builtin_isfinite(x)"),
    ("math.h", r"#define signbit\(x\).*?__signbitl\(x\) \)", "#define signbit(x) __builtin_signbit(x)"),
]


def copy_headers(zig, out):
    libc = zig / "lib/libc/include"
    for folder in ("any-linux-any", "aarch64-linux-any", "generic-musl", "aarch64-linux-musl"):
        shutil.copytree(libc / folder, out, dirs_exist_ok=True)
    for name in ABSENT:
        (out / name).unlink()
    for name, text in OWN.items():
        (out / name).write_text(text)
    for name, old, new in CHANGES:
        text, count = re.subn(old, new, (out / name).read_text(), flags=re.DOTALL)
        if count == 0:
            sys.exit(f"sysroot.py: {name} has no {old}")
        (out / name).write_text(text)


def evaluate(text):
    """The value of an expression of numbers alone, or nothing."""
    text = re.sub(r"/\*.*?\*/", "", text)
    if not re.fullmatch(r"[\s0-9a-fxA-FXuUlL()|~+<-]+", text):
        return None
    text = re.sub(r"(?<=[0-9a-fA-F])[uUlL]+", "", text)
    try:
        return eval(re.sub(r"\b0(?=[0-7])", "0o", text), {"__builtins__": {}})  # pylint: disable=eval-used
    except (SyntaxError, NameError, TypeError):
        return None


def write_numbers(figures, out):
    """Replaces what musl numbers differently, and drops sysconf and pathconf names that bionic lacks."""
    numbers = {}
    for line in figures.read_text().splitlines():
        kind, name, *rest = line.split()
        if kind == "number":
            numbers[name] = int(rest[0])

    def renumber(m):
        name, value = m.group(2), evaluate(m.group(4))
        if name not in numbers:
            return "" if name.startswith(("_SC_", "_PC_")) else m.group(0)
        if value is None or value == numbers[name]:
            return m.group(0)
        renumbered.append(name)
        value = numbers[name]
        return f"{m.group(1)}{name}{m.group(3)}({value}{'ul' if value >= 1 << 63 else ''})"

    renumbered = []
    for file in [f for f in out.rglob("*.h") if f.relative_to(out).parts[0] not in ("linux", "asm", "asm-generic")]:
        text = file.read_text(errors="surrogateescape")
        new = re.sub(r"^(#[ \t]*define[ \t]+)(\w+)([ \t]+)([^\n]+)$", renumber, text, flags=re.MULTILINE)
        if new != text:
            file.write_text(new, errors="surrogateescape")
    print(f"{len(set(renumbered))} numbers of musl replaced by bionic's")


def offered(library):
    """Names and kinds that an app may use: those under the version LIBC, not LIBC_PRIVATE."""
    listed = subprocess.run(["readelf", "--dyn-syms", "-W", library], capture_output=True, text=True, check=True).stdout
    return re.findall(r" (FUNC|OBJECT) +(?:GLOBAL|WEAK) +DEFAULT +\d+ (\w+)@@LIBC$", listed, re.MULTILINE)


def write_stubs(libraries, out):
    """An assembler file for each library that has its names and nothing else, and the list of all of them."""
    later = re.findall(r"SINCE_26\(.*?\b(\w+)\(", (pathlib.Path(__file__).parent / "since26.c").read_text())
    every = []
    for name in ("libc", "libm", "libdl"):
        names = offered(libraries / f"{name}.so") + ([("FUNC", n) for n in later] if name == "libc" else [])
        lines = [f".globl {n}\n.type {n},%{'function' if kind == 'FUNC' else 'object'}\n.size {n},8\n{n}: .xword 0" for kind, n in names]
        (out / f"{name}.s").write_text("\n".join(lines) + "\n")
        every += [n for _, n in names]
        print(f"{name}: {len(names)} names" + (f", {len(later)} of them since Android 8" if name == "libc" else ""))
    (out / "libc.map").write_text("LIBC { global: *; };\n")
    (out / "names.txt").write_text("\n".join(sorted(every)) + "\n")


def main():
    zig, libraries, figures, out = map(pathlib.Path, sys.argv[1:])
    if out.exists():
        shutil.rmtree(out)
    copy_headers(zig, out / "include")
    write_numbers(figures, out / "include")
    (out / "lib").mkdir()
    write_stubs(libraries, out / "lib")


if __name__ == "__main__":
    main()
