#!/usr/bin/python3
"""The files that a package carries beside the programs: valid, and true to what the programs take.

Usage: files_test.py SOURCE-FOLDER FIRSTDEW-CLI
"""
import configparser
import pathlib
import re
import struct
import subprocess
import sys
import unittest
import xml.etree.ElementTree as ET

SOURCE = pathlib.Path(sys.argv.pop(1))
CLI = sys.argv.pop(1)
DESKTOP = SOURCE / "assets/desktop/firstdew.desktop"
METAINFO = SOURCE / "assets/appstream/org.firstdew.firstdew.metainfo.xml"
MANUALS = SOURCE / "assets/man"
LANGUAGES = sorted(p.stem.split("_", 1)[1] for p in (SOURCE / "qml/i18n").glob("*.ts") if not p.stem.endswith("_en"))
TAGS = [language.replace("_", "-") for language in LANGUAGES]  # as the web and the phone stores write them


def output(*command):
    done = subprocess.run(command, text=True, stdout=subprocess.PIPE, stderr=subprocess.STDOUT)
    return done.returncode, done.stdout


def help_of(*words):
    code, text = output(CLI, *words, "--help")
    assert code == 0, text
    return text


def verbs_in(text):
    part = text.partition("Subcommands:")[2]
    return re.findall(r"^  (\S+)", part, re.M)


def options_in(text):
    return set(re.findall(r"(?<![\w-])--[a-z][a-z-]+", text)) - {"--help", "--version"}


def manual(name):
    """The manual's source without the marks of hyphens and fonts."""
    return re.sub(r"\\f.", "", (MANUALS / name).read_text()).replace("\\-", "-")


def png_size(file):
    return struct.unpack(">II", file.read_bytes()[16:24])


def version():
    return re.search(r"project\(firstdew VERSION (\S+)", (SOURCE / "CMakeLists.txt").read_text())[1]


class Files(unittest.TestCase):
    def test_desktop_file_is_valid(self):
        self.assertEqual(output("desktop-file-validate", str(DESKTOP)), (0, ""))

    def test_metainfo_is_valid_without_a_word(self):
        code, text = output("appstreamcli", "validate", "--no-net", "--pedantic", "--no-color", str(METAINFO))
        self.assertEqual(code, 0, text)
        # AppStream 1.0 has another name for the developer, which that of Debian 12 does not know.
        said = [line for line in text.splitlines() if re.match(r"[EWIP]: ", line) and not re.search("developer-(name-tag-deprecated|info-missing)", line)]
        self.assertEqual(said, [])

    def test_metainfo_has_what_a_store_shows(self):
        # The store's list of quality, from memory: a summary that fits a tile, two colours, captioned pictures of at
        # most 1000 by 700, notes for each version.
        component = ET.parse(METAINFO).getroot()
        lang = "{http://www.w3.org/XML/1998/namespace}lang"
        for summary in component.iter("summary"):
            self.assertLessEqual(len(summary.text), 35, summary.text)
            self.assertFalse(summary.text.endswith(".") or "Firstdew" in summary.text, summary.text)
        self.assertLessEqual(len(component.findtext("name")), 20)
        colours = {c.get("scheme_preference"): c.text for c in component.find("branding")}
        self.assertEqual(set(colours), {"light", "dark"})
        icon = (SOURCE / "assets/desktop/firstdew.svg").read_text()
        self.assertTrue(all(c in icon for c in colours.values()), "the colours are those of the icon")
        pictures = list(component.iter("screenshot"))
        self.assertGreaterEqual(len(pictures), 3)
        for picture in pictures:
            captions = {c.get(lang): c.text for c in picture.findall("caption")}
            self.assertEqual(set(captions), {None, *TAGS})
            self.assertTrue(all(not text.endswith(".") for text in captions.values()), captions)
            image = picture.find("image")
            size = png_size(SOURCE / "assets/pictures/store" / image.text.rsplit("/", 1)[1])
            self.assertEqual(size, (int(image.get("width")), int(image.get("height"))))
            self.assertTrue(size[0] <= 1000 and size[1] <= 700, size)
        listed = re.findall(r"^firstdew \((\S+)-\d+\)", (SOURCE / "platform/linux/package/changelog").read_text(), re.M)
        self.assertEqual([r.get("version") for r in component.iter("release")], listed)
        for release in component.iter("release"):
            self.assertGreater(len("".join(release.find("description").itertext()).strip()), 80)

    def test_listing_of_the_phone_stores_fits_and_is_of_this_version(self):
        # Bounds of F-Droid's and fastlane's listings, from memory.
        folder = SOURCE / "fastlane/metadata/android"
        manifest = (SOURCE / "platform/android/package/AndroidManifest.xml").read_text()
        code = re.search(r'android:versionCode="(\d+)"', manifest)[1]
        self.assertIn(f'android:versionName="{version()}"', manifest)
        self.assertEqual(sorted(p.name.split("-")[0] for p in folder.iterdir()), sorted(["en", *(tag.split("-")[0] for tag in TAGS)]))
        for language in folder.iterdir():
            for name, most in (("title", 30), ("short_description", 80), ("full_description", 4000), (f"changelogs/{code}", 500)):
                text = (language / f"{name}.txt").read_text(encoding="utf-8").strip()
                self.assertTrue(0 < len(text) <= most, f"{language.name}/{name}: {len(text)} characters")
        images = folder / "en-US/images"
        self.assertEqual(png_size(images / "icon.png"), (512, 512))
        shots = list((images / "phoneScreenshots").glob("*.png"))
        self.assertTrue(2 <= len(shots) <= 8)
        self.assertTrue(all(min(png_size(s)) >= 320 for s in shots))

    def test_every_language_of_the_app_is_spoken_by_its_entry(self):
        entry = configparser.ConfigParser(interpolation=None)
        entry.optionxform = str
        entry.read(DESKTOP)
        summaries = {s.get("{http://www.w3.org/XML/1998/namespace}lang") for s in ET.parse(METAINFO).iter("summary")}
        for language in LANGUAGES:
            self.assertIn(f"Comment[{language}]", entry["Desktop Entry"])
            for action in ("check-in", "bath", "diary"):
                self.assertIn(f"Name[{language}]", entry[f"Desktop Action {action}"])
            self.assertIn(language.replace("_", "-"), summaries)

    def test_entry_starts_the_app_at_places_that_it_has(self):
        places = re.search(r'oneOf\("page", o.page, \{(.*?)\}', (SOURCE / "platform/app/Options.cpp").read_text())[1]
        starts = re.findall(r"^Exec=(.*)$", DESKTOP.read_text(), re.M)
        self.assertGreater(len(starts), 1)
        for start in starts:
            words = start.split()
            self.assertEqual(words[0], "firstdew")
            if len(words) > 1:
                self.assertEqual(words[1], "--page")
                self.assertIn(f'"{words[2]}"', places)

    def test_versions_agree(self):
        changelog = (SOURCE / "platform/linux/package/changelog").read_text()
        self.assertTrue(changelog.startswith(f"firstdew ({version()}-"), changelog.splitlines()[0])
        self.assertEqual(next(ET.parse(METAINFO).iter("release")).get("version"), version())
        for page in MANUALS.glob("*.1"):
            self.assertIn(f'"firstdew {version()}"', page.read_text())

    def test_manuals_are_well_formed(self):
        for page in MANUALS.glob("*.1"):
            self.assertEqual(output("mandoc", "-T", "lint", "-W", "warning", str(page)), (0, ""))

    def test_manual_of_the_command_line_knows_every_verb_and_option(self):
        text = manual("firstdew-cli.1")
        verbs = verbs_in(help_of())
        self.assertIn("checkin", verbs)
        for verb in verbs:
            with self.subTest(verb):
                self.check_manual_of(verb, text)

    def check_manual_of(self, verb, text):
        entries = re.findall(rf"^\.TP\n\.B {verb}\b(.*?)(?=^\.TP\n\.B [a-z]|^\.SH|\Z)", text, re.M | re.S)
        self.assertTrue(entries, f"assets/man/firstdew-cli.1 has no entry for '{verb}'")
        helps = help_of(verb)
        said = options_in(helps).union(*(options_in(help_of(verb, sub)) for sub in verbs_in(helps)))
        told = set().union(*(options_in(e) for e in entries)) | {"--person", "--json"}
        self.assertEqual(said - told, set(), f"assets/man/firstdew-cli.1 leaves out options of '{verb}'")

    def test_manual_of_the_app_knows_every_option(self):
        options = set(re.findall(r'^\s*(?:parser\.addOptions\(\{)?\{"([a-z-]+)", "(?!for tests)',
                                 (SOURCE / "platform/app/Options.cpp").read_text(), re.M))
        self.assertIn("store", options)
        self.assertEqual({f"--{o}" for o in options} - options_in(manual("firstdew.1")), set())


unittest.main()
