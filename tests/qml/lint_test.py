#!/usr/bin/python3
"""qmllint finds nothing in the pages, and does find a misspelt property, value and name that are planted.

Usage: lint_test.py QMLLINT BUILD_OF_QML SOURCES
"""
import json
import re
import subprocess
import sys
import tempfile
from pathlib import Path

# A control whose background or content gives its size needs that at once; qmllint of Qt 6.4 tells that it is not made later.
SETTINGS = ["--deferred-property-id", "disable"]
PLANTED = {
    "property of a value": "readonly property string planted: PlanModel.machine.nam",
    "property of a model": "readonly property bool planted: Store.severel",
    "value of an enumeration": "readonly property bool planted: Store.trouble === Trouble.Damagd",
    "page": "function planted() { Router.page(Part.AbuotPart) }",
    "word": "function planted() { return Appearance.phrases.milliampere(1) }",
    "id": "readonly property var planted: pgae.title",
}


def settings(lint):
    """Those that this qmllint knows."""
    known = subprocess.run([lint, "--help"], capture_output=True, text=True, check=False).stdout
    return SETTINGS if SETTINGS[0] in known else []


def warnings(lint, build, files):
    modules = next(Path("/usr/lib").glob("*/qt6/qml"))
    resources = [r for q in sorted((build / ".rcc").glob("*.qrc")) for r in ("--resource", str(q))]
    run = subprocess.run([lint, "--bare", "-I", build, "-I", modules, *resources, *settings(lint), "--json", "-", *files],
                         capture_output=True, text=True, check=False)
    if not run.stdout.strip():
        raise SystemExit(f"qmllint said nothing: {run.stderr}")
    types = (build / "Firstdew" / "firstdew_qml.qmltypes").read_text()
    for file in json.loads(run.stdout)["files"]:
        text = Path(file["filename"]).read_text()
        for w in file["warnings"]:
            if w["type"] == "info" or of_document(w, text) or of_list(w, types):
                continue
            yield f"{file['filename']}:{w.get('line', 0)}: {w['message']}"


def of_document(warning, text):
    """An id of the same document, seen from a part that is made later: Qt 6.4 has no way to tell qmllint that this is so
    for good (ComponentBehavior came with 6.5)."""
    if warning["message"] != "Unqualified access":
        return False
    name = text[warning["charOffset"]:][: warning["length"]]
    return re.search(rf"\bid: {re.escape(name)}\b", text) is not None


def of_list(warning, types):
    """A property that is a list of an enumeration's values. qmllint of Qt 6.8 does not find the type of one, although the
    enumeration is registered; that of Qt 6.4 does."""
    value = re.match(r'Type "(firstdew::ui::\w+)::Value" of property', warning["message"])
    if value:
        return f'name: "{value[1]}"' in types and is_list(types, f"{value[1]}::Value")
    name = re.match(r'No type found for property "(\w+)"\.', warning["message"])
    return name is not None and re.search(rf'name: "{name[1]}"\s+type: "firstdew::ui::\w+::Value"\s+isList: true', types) is not None


def is_list(types, value):
    return re.search(rf'type: "{value}"\s+isList: true', types) is not None


def main(lint, build, sources):
    build, sources = Path(build), Path(sources)
    files = sorted(sources.rglob("*.qml"))
    found = list(warnings(lint, build, files))
    print("\n".join(found))
    print(f"{len(files)} documents, {len(found)} warnings")
    missed = []
    page = (sources / "pages" / "KeepPage.qml").read_text()
    for what, line in PLANTED.items():
        with tempfile.TemporaryDirectory() as folder:
            planted = Path(folder) / "Planted.qml"
            text = page.replace("    id: page\n", f"    id: page\n    {line}\n", 1)
            planted.write_text(text)
            at = f":{text[:text.index(line)].count(chr(10)) + 1}:"
            if not any(at in w for w in warnings(lint, build, [planted])):
                missed.append(what)
    print(f"{len(PLANTED)} planted, missed: {', '.join(missed) or 'none'}")
    return 1 if found or missed or not files else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:4]))
