#!/usr/bin/python3
"""No number parts from its unit at the end of a line: texts take whole quantities, and only the list of
qml/words/Quantity.cpp names units behind a place, with a space that does not break.

Usage: quantities_test.py FOLDER-OF-TRANSLATIONS ROOT…"""
import re
import sys
import xml.etree.ElementTree as ElementTree
from pathlib import Path

UNITS = "mA·min|mA|mg|ml|cm²|cm|kg|min|s|%|ملغ|مل|سم²|سم|د|ث"
LOOSE = re.compile(rf"(?:%[\dn]|\d)[\u2066-\u2069\u200e\u200f]* (?:{UNITS})(?![\w%])")
TIED = re.compile(rf"(?:%[\dn]|\d)[\u2066-\u2069\u200e\u200f]*[ \u00a0\u202f]?(?:{UNITS})(?![\w%])")
LIST = "Quantity.cpp"


def shown(text):
    """The literals of a source file that are translated or filled in."""
    for call in re.finditer(r'(?:\bqsTr|\btr|QStringLiteral)\(\s*((?:"(?:[^"\\]|\\.)*"\s*)+)', text):
        yield "".join(re.findall(r'"((?:[^"\\]|\\.)*)"', call[1]))


def in_sources(roots):
    for root in roots:
        for file in sorted(Path(root).rglob("*")):
            if file.suffix in (".qml", ".cpp", ".h") and file.name != LIST:
                for text in shown(file.read_text(encoding="utf-8")):
                    if TIED.search(text):
                        yield f"{file}: hand the quantity in whole: {text}"


def in_translations(folder):
    for file in sorted(Path(folder).glob("*.ts")):
        for message in ElementTree.parse(file).getroot().iter("message"):
            translation = message.find("translation")
            for form in [translation.text or "", *(f.text or "" for f in translation.iter("numerusform"))]:
                if LOOSE.search(form):
                    yield f"{file.name}: the unit may part from its number: {form}"


def self_test():
    for good in ("%1\u00a0mA", "\u2066%1\u00a0mA\u2069", "%1 minutes", "%1 شخصًا", "%1%", "in mA", "%1 %2", "2 %n"):
        assert not LOOSE.search(good), good
    for bad in ("%1 mA", "\u2066%1\u2069 mA", "about 350 ml.", "80 %: %1", "%n min left", "%1 ملغ", "%1 د %2"):
        assert LOOSE.search(bad), bad
    for bad in ("counts as %1 cm², by", "%1%", "%1\u00a0mA"):
        assert TIED.search(bad), bad
    assert list(shown('qsTr("%1 mA"); tr(\n"a "\n"%1 s")')) == ["%1 mA", "a %1 s"]


def main(folder, *roots):
    self_test()
    wrong = [*in_sources(roots), *in_translations(folder)]
    print("\n".join(wrong) or "every number keeps its unit")
    return 1 if wrong else 0


sys.exit(main(*sys.argv[1:]))
