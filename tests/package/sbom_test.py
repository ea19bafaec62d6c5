#!/usr/bin/python3
"""The bill of materials names everything that the programs are made of, at the versions that are installed.

Usage: sbom_test.py SOURCE-FOLDER BUILD-FOLDER OBJDUMP-READABLE-PROGRAM...
What is linked is found out here by another tool (objdump) than there (readelf)."""
import hashlib
import json
import os
import pathlib
import re
import subprocess
import sys
import tempfile
import unittest

SOURCE, BUILD, *PROGRAMS = (pathlib.Path(a).resolve() for a in sys.argv[1:])
del sys.argv[1:]


def output(*command):
    return subprocess.run([str(c) for c in command], text=True, check=True, stdout=subprocess.PIPE).stdout


def made(folder, name, **environment):
    file = pathlib.Path(folder) / name
    subprocess.run([sys.executable, SOURCE / "platform/linux/sbom.py", BUILD, file, *(f"{p.name}={p}" for p in PROGRAMS)],
                   check=True, stdout=subprocess.DEVNULL, env={**os.environ, **environment})
    return file.read_bytes()


def used_as(component):
    return [p["value"] for p in component["properties"] if p["name"] == "firstdew:use"]


class Bill(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        with tempfile.TemporaryDirectory() as folder:
            cls.first = made(folder, "1.json", SOURCE_DATE_EPOCH="1772692200")
            cls.second = made(folder, "2.json", SOURCE_DATE_EPOCH="1772692200", TZ="Pacific/Apia", LC_ALL="C")
        cls.bill = json.loads(cls.first)
        cls.packages = {c["name"]: c for c in cls.bill["components"] if c["type"] == "library"}

    def test_every_linked_library_is_in_it(self):
        names = set()
        for program in PROGRAMS:
            places = dict(re.findall(r"^\s*(\S+) => (\S+)", output("ldd", program), re.M))
            needed = re.findall(r"NEEDED\s+(\S+)", output("objdump", "-p", program))
            self.assertGreater(len(needed), 5)
            names |= {os.path.realpath(places[n]) for n in needed if n in places}
        for file in sorted(names):
            owner = subprocess.run(["dpkg", "-S", file, file.removeprefix("/usr")], text=True, capture_output=True).stdout.split(":")[0]
            self.assertIn(owner, self.packages, file)
            self.assertIn("linked", used_as(self.packages[owner]), file)

    def test_what_is_compiled_in_is_in_it(self):
        # Known from the source: what these headers are included for leaves no name in the program.
        for package, header in (("nlohmann-json3-dev", "nlohmann/json.hpp"), ("libcli11-dev", "CLI/CLI.hpp"),
                                ("libsqlitecpp-dev", "SQLiteCpp/SQLiteCpp.h")):
            self.assertTrue(any(header in f.read_text(errors="replace") for folder in ("core", "platform")
                                for f in (SOURCE / folder).rglob("*") if f.suffix in (".h", ".cpp")), header)
            self.assertIn("compiled in", used_as(self.packages[package]))

    def test_versions_are_those_installed(self):
        self.assertGreater(len(self.packages), 15)
        for name, component in self.packages.items():
            self.assertEqual(component["version"], output("dpkg-query", "-W", "-f=${Version}\n", name).splitlines()[0])
            self.assertTrue(component["purl"].startswith(f"pkg:deb/debian/{name}@"))
        version = re.search(r"project\(firstdew VERSION (\S+)", (SOURCE / "CMakeLists.txt").read_text())[1]
        self.assertEqual(self.bill["metadata"]["component"]["version"], version)

    def test_files_of_others_that_the_tree_carries_are_in_it(self):
        files = {c["name"]: c for c in self.bill["components"] if c["type"] == "file"}
        carried = [*(SOURCE / "assets/fonts").glob("*.ttf"), *(SOURCE / "assets/voice").glob("*/*")]
        self.assertGreater(len(carried), 4)
        self.assertEqual(sorted(files), sorted(str(f.relative_to(SOURCE)) for f in carried))
        for file in carried:
            component = files[str(file.relative_to(SOURCE))]
            self.assertEqual(component["hashes"][0]["content"], hashlib.sha256(file.read_bytes()).hexdigest())
            self.assertTrue(component["licenses"][0]["license"]["id"])

    def test_the_safety_case_lists_every_source_package_and_its_version(self):
        listed = dict(re.findall(r"^\| S\d+ \| (\S+) \| (\S+) \|", (SOURCE / "core/protocol/SAFETY.md").read_text(), re.M))
        release = re.search(r'^VERSION_ID="?(\d+)', pathlib.Path("/etc/os-release").read_text(), re.M)[1]
        self.assertGreater(len(listed), 15)
        for component in self.packages.values():
            source, version = next(p["value"] for p in component["properties"] if p["name"] == "debian:source").split()
            if release == "12":  # the release that the versions there are of
                self.assertIn(source, listed)
                self.assertRegex(version, rf"^(\d+:)?{re.escape(listed[source])}(?!\d)", source)

    def test_it_is_well_formed(self):
        self.assertEqual((self.bill["bomFormat"], self.bill["specVersion"]), ("CycloneDX", "1.5"))
        self.assertRegex(self.bill["serialNumber"], r"^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$")
        self.assertEqual(self.bill["metadata"]["timestamp"], "2026-03-05T06:30:00Z")
        references = [c["bom-ref"] for c in self.bill["components"]]
        self.assertEqual(len(references), len(set(references)))
        self.assertEqual(self.bill["dependencies"], [{"ref": "firstdew", "dependsOn": sorted(references)}])

    def test_the_same_build_gives_the_same_bytes(self):
        self.assertEqual(self.first, self.second)


unittest.main()
