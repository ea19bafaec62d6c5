#!/usr/bin/python3
"""The Debian package: checked by lintian, then installed, used and removed in a small system of its own.

Usage: deb_test.py PACKAGE.deb     (as root; installs from the machine's own Debian archive; a package for another processor
                                   under platform/linux/emulating.sh)
Takes minutes: it is called by .ci/run, not by ctest. Last line: `N passed, N failed`.
"""
import contextlib
import hashlib
import json
import os
import pathlib
import re
import shutil
import stat
import subprocess
import sys
import tempfile

DEB = pathlib.Path(sys.argv[1]).resolve()
# MB that the package may take: it took 8.0 on amd64. Raise it only with a reason in the commit message.
MOST_MB = {"amd64": 9, "arm64": 9}
PERSON = "somebody"
HOME = f"/home/{PERSON}"
# What a package manager keeps for itself.
KEPT_BY_DPKG = re.compile(r"^/(var/(lib/(dpkg|apt|systemd)|log|cache)|etc/(apt|resolv\.conf)|tmp|dev|proc|sys|run)(/|$)")


def run(*command, **more):
    return subprocess.run([str(c) for c in command], text=True, check=True, stdout=subprocess.PIPE, stderr=subprocess.STDOUT,
                          **more).stdout


def field(name):
    return run("dpkg-deb", "-f", DEB, name).strip()


ARCHITECTURE = field("Architecture")
CROSS = ARCHITECTURE != run("dpkg", "--print-architecture").strip()
TRIPLET = run("dpkg-architecture", "-a", ARCHITECTURE, "-qDEB_HOST_MULTIARCH").strip()
PLACES = ["etc/pam.d/firstdew", "usr/bin/firstdew", "usr/bin/firstdew-cli", "usr/share/applications/firstdew.desktop",
          "usr/share/metainfo/org.firstdew.firstdew.metainfo.xml", "usr/share/icons/hicolor/scalable/apps/firstdew.svg",
          *(f"usr/share/icons/hicolor/{n}x{n}/apps/firstdew.png" for n in (48, 64, 128, 256)),
          f"usr/lib/{TRIPLET}/firstdew/firstdew-speaker",
          "usr/share/man/man1/firstdew.1.gz", "usr/share/man/man1/firstdew-cli.1.gz",
          "usr/share/doc/firstdew/copyright", "usr/share/doc/firstdew/changelog.Debian.gz"]
BILL = "usr/share/doc/firstdew/firstdew.cdx.json"
if not CROSS:  # it is written from what is installed where the package is built
    PLACES.append(BILL)


class Root:
    """A minimal Debian in a folder of its own."""

    def __init__(self, folder):
        self.folder = pathlib.Path(folder)
        release = dict(line.split("=", 1) for line in pathlib.Path("/etc/os-release").read_text().splitlines() if "=" in line)
        sources = [p for p in ("/etc/apt/sources.list", "/etc/apt/sources.list.d/debian.sources") if os.path.exists(p)
                   and pathlib.Path(p).read_text().strip()]
        run("mmdebstrap", f"--architectures={ARCHITECTURE}", "--variant=apt", "--include=passwd", release["VERSION_CODENAME"], self.folder, *sources)
        if os.path.exists("/etc/resolv.conf"):
            shutil.copy("/etc/resolv.conf", self.folder / "etc/resolv.conf")

    @contextlib.contextmanager
    def mounted(self):
        """With /proc where the machine allows it; programs must do without where it does not."""
        proc = subprocess.run(["mount", "-t", "proc", "proc", self.folder / "proc"], stderr=subprocess.DEVNULL).returncode == 0
        try:
            yield
        finally:
            if proc:
                run("umount", self.folder / "proc")

    def __call__(self, *command):
        return run("chroot", self.folder, "/usr/bin/env", "-i", "PATH=/usr/sbin:/usr/bin:/sbin:/bin", "DEBIAN_FRONTEND=noninteractive",
                   "LC_ALL=C.UTF-8", *command)

    def as_person(self, *command):
        return run("chroot", f"--userspec={PERSON}:{PERSON}", self.folder, "/usr/bin/env", "-i", "PATH=/usr/bin:/bin", f"HOME={HOME}",
                   "LC_ALL=C.UTF-8", "QT_QPA_PLATFORM=offscreen", f"XDG_RUNTIME_DIR={HOME}", *command)

    def files(self):
        """Every path outside what the package manager keeps, with its kind, rights and contents."""
        seen = {}
        for folder, folders, names in os.walk(self.folder):
            inside = "/" + os.path.relpath(folder, self.folder)
            folders[:] = [d for d in folders if not KEPT_BY_DPKG.match(os.path.join(inside, d).replace("/./", "/"))]
            for name in folders + names:
                path = os.path.join(folder, name)
                about = os.lstat(path)
                told = [stat.filemode(about.st_mode), about.st_uid]
                if stat.S_ISREG(about.st_mode):
                    told.append(hashlib.sha256(pathlib.Path(path).read_bytes()).hexdigest())
                elif stat.S_ISLNK(about.st_mode):
                    told.append(os.readlink(path))
                seen["/" + os.path.relpath(path, self.folder)] = told
        return seen


class Report:
    passed = failed = 0

    def check(self, what, good, detail=""):
        self.passed += bool(good)
        self.failed += not good
        print("ok  " if good else "FAIL", what, flush=True)
        if not good and detail:
            print(detail)


def check_size(report):
    most, size = MOST_MB[ARCHITECTURE], DEB.stat().st_size / 1e6
    report.check(f"it takes at most {most} MB: {size:.2f}", size <= most)


def check_by_lintian(report):
    done = subprocess.run(["lintian", "--allow-root", "--fail-on", "error", "--info", str(DEB)], text=True, capture_output=True)
    tags = [line for line in done.stdout.splitlines() if re.match(r"[EWI]: ", line)]
    print("\n".join(tags) or "     lintian has nothing to say")
    report.check("lintian finds no error", done.returncode == 0, done.stdout + done.stderr)


def check_contents(report):
    names = {line.split()[5].removeprefix("./") for line in run("dpkg-deb", "-c", DEB).splitlines()}
    files = {n for n in names if not n.endswith("/")}
    report.check("it holds what it should and nothing else", files == set(PLACES), sorted(files ^ set(PLACES)))
    scripts = {p.split()[-1] for p in run("dpkg-deb", "-I", DEB).splitlines() if re.search(r"(pre|post)(inst|rm)", p)}
    report.check("it runs no script at installing or removing", not scripts, scripts)


def check_hardened(root, report):
    """Position-independent, read-only after start, with guarded stacks and checked copies, in every program of the package."""
    for place in (p for p in PLACES if p.startswith(("usr/bin/", "usr/lib/"))):
        file = root.folder / place
        told = run("readelf", "--wide", "--file-header", "--program-headers", "--dynamic", "--dyn-syms", file)
        for what, sign in (("loads anywhere", r"Type: +DYN"), ("is read-only after start", r"GNU_RELRO"), ("binds at start", r"BIND_NOW|\bNOW\b"),
                           ("guards its stack", r"__stack_chk_fail"), ("checks copies", r"__\w+_chk")):
            report.check(f"{place} {what}", re.search(sign, told), told[-2000:])
        if ARCHITECTURE == "amd64":
            # Debian's start files and libc's have a few such marks themselves: most functions of ours must begin with one.
            code = run("objdump", "--disassemble", "--section=.text", "--no-show-raw-insn", file)
            starts, marks = len(re.findall(r"^\s+\w+:\s+push +%r(?:bp|bx|12|13|14|15)$", code, re.M)), code.count("endbr64")
            report.check(f"{place} marks where jumps may land", marks > 10 and marks > starts / 20, f"{marks} marks, {starts} pushes")
        report.check(f"{place} has no stack that runs", re.search(r"GNU_STACK .* RW ", told), told[:2000])


def check_bill(root, report):
    """The bill of materials in the package names each library that the package asks for."""
    bill = json.loads((root.folder / BILL).read_text())
    names = {c["name"] for c in bill["components"]}
    wanted = {d.split()[0] for d in field("Depends").split(", ")}
    report.check("its bill of materials names all that it asks for", wanted <= names, sorted(wanted - names))


def use(root, report):
    """A person makes a record, looks at it and opens every page."""
    root.as_person("firstdew-cli", "demo", "--out", f"{HOME}/demo.db", "--today", "2026-03-01")
    outlook = root.as_person("firstdew-cli", "outlook", "--store", f"{HOME}/demo.db", "--today", "2026-03-01")
    report.check("firstdew-cli makes the demo and looks at it", "hands" in outlook, outlook)
    root.as_person("firstdew-cli", "summary", "--store", f"{HOME}/demo.db", "--from", "2026-01-01", "--to", "2026-03-01", "--out",
                   f"{HOME}/summary.pdf")
    page = (root.folder / HOME[1:] / "summary.pdf").read_bytes()
    report.check("firstdew-cli prints the summary", page.startswith(b"%PDF-"))
    told = root.as_person("firstdew", "--self-test")
    report.check("firstdew opens every page with the packages it asks for alone", " 0 failures" in told and "FAIL" not in told, told)
    print("    ", told.strip().splitlines()[-1])


def main():
    report = Report()
    check_size(report)
    check_by_lintian(report)
    check_contents(report)
    with tempfile.TemporaryDirectory(prefix="firstdew-root-") as folder:
        os.chmod(folder, 0o755)
        root = Root(folder)
        with root.mounted():
            root("useradd", "--create-home", PERSON)
            root("apt-get", "update")
            pulled = root("apt-get", "satisfy", "-y", "--no-install-recommends", field("Depends"))
            before = root.files()
            shutil.copy(DEB, root.folder / "tmp" / DEB.name)
            root("apt-get", "install", "-y", "--no-install-recommends", f"/tmp/{DEB.name}")
            report.check("it installs", "install ok installed" in root("dpkg-query", "-W", "-f=${Status}", "firstdew"))
            check_hardened(root, report)
            if not CROSS:
                check_bill(root, report)
            use(root, report)
            used = root.files()
            root("apt-get", "purge", "-y", "firstdew")
            after = root.files()
    record = {p: told for p, told in after.items() if p not in before}
    stays = {p for p in used if p not in before and p.startswith(f"{HOME}/")}
    report.check("the person's record is there before it is removed", {f"{HOME}/demo.db", f"{HOME}/.local/share/firstdew/record.db"} <= stays,
                 sorted(stays))
    report.check("removing leaves the person's data as it was", all(after.get(p) == used[p] for p in stays))
    report.check("removing leaves nothing else", set(record) == stays, sorted(set(record) ^ stays))
    changed = [p for p in before if after.get(p) != before[p]]
    report.check("nothing that was there before is changed or gone", not changed, changed)
    needed = re.search(r"Need to get (.*?) of archives", pulled)
    space = re.search(r"After this operation, (.*?) of additional", pulled)
    count = re.search(r"(\d+) newly installed", pulled)
    print(f"size: package {DEB.stat().st_size / 1e6:.2f} MB, installed {int(field('Installed-Size')) / 1000:.1f} MB; on a minimal "
          f"system it pulls in {count[1]} packages, {needed[1]} to fetch, {space[1]} on disk")
    print(f"{report.passed} passed, {report.failed} failed")
    return 1 if report.failed else 0


try:
    sys.exit(main())
except subprocess.CalledProcessError as e:
    print(f"FAIL {' '.join(map(str, e.cmd))}\n{e.stdout}\n0 passed, 1 failed")
    sys.exit(1)
