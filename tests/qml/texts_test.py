#!/usr/bin/python3
"""Every text of the program is there in every language, finished, with the same places to fill in."""
import re
import sys
import xml.etree.ElementTree as ElementTree
from pathlib import Path

PLURALS = {"en": 2, "de": 2, "es": 2, "ar": 6}  # CLDR plural categories as Qt Linguist counts them
LITERAL = r'"((?:[^"\\]|\\.)*)"'
LITERALS = rf"{LITERAL}(?:\s*{LITERAL})*"


def problems(file, language):
    for message in ElementTree.parse(file).getroot().iter("message"):
        source = message.findtext("source")
        translation = message.find("translation")
        if translation.get("type"):
            yield f"{file.name}: {translation.get('type')}: {source}"
            continue
        forms = [f.text or "" for f in translation.iter("numerusform")] or [translation.text or ""]
        if any(not form.strip() for form in forms):
            yield f"{file.name}: empty: {source}"
        if message.get("numerus") == "yes" and len(forms) != PLURALS[language]:
            yield f"{file.name}: {len(forms)} plural forms: {source}"
        places = sorted(re.findall(r"%\d", source))
        if any(sorted(re.findall(r"%\d", form)) != places for form in forms):
            yield f"{file.name}: other places to fill in: {source}"
        # A form for one, two or none of them may say the number in words.
        if message.get("numerus") == "yes" and "%n" not in forms[-1]:
            yield f"{file.name}: the number is missing: {source}"


def plain(literals):
    return "".join(re.findall(LITERAL, literals)).replace('\\"', '"').replace("\\n", "\n")


def sources(roots):
    """Texts as the pages and the program ask for them: (context, text, counted)."""
    found = set()
    for root in roots:
        for page in Path(root).rglob("*.qml"):
            for call in re.finditer(rf"qsTr\(({LITERALS})([^)]*)", page.read_text(encoding="utf-8")):
                found.add((page.stem, plain(call[1]), "%n" in call[1]))
        for unit in Path(root).rglob("*.cpp"):
            for call in re.finditer(rf"(?:(\w+)::)?\btr\(\s*({LITERALS})", unit.read_text(encoding="utf-8")):
                found.add((call[1] or unit.stem, plain(call[2]), "%n" in call[2]))
    return found


def main(folder, *roots):
    wrong = []
    asked = sources(roots)
    for language in PLURALS:
        file = Path(folder) / f"firstdew_{language}.ts"
        wrong += problems(file, language)
        known = {(c.findtext("name").split("::")[-1], m.findtext("source"))
                 for c in ElementTree.parse(file).getroot().iter("context") for m in c.iter("message")}
        # The texts are written in English; only what is counted has English forms.
        needed = {(context, text) for context, text, counted in asked if counted or language != "en"}
        wrong += [f"{file.name}: missing: {context}: {text}" for context, text in sorted(needed - known)]
        wrong += [f"{file.name}: no longer asked for: {context}: {text}" for context, text in sorted(known - needed)]
    print("\n".join(wrong) or f"{len(asked)} texts finished in {len(PLURALS)} languages")
    return 1 if wrong or not asked else 0


sys.exit(main(*sys.argv[1:]))
