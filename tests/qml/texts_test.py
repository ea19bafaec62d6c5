#!/usr/bin/python3
"""Every text of the interface is there in every language, finished, with the same places to fill in."""
import re
import sys
import xml.etree.ElementTree as ElementTree
from pathlib import Path

LATER = ("Bath", "Summary", "Diary", "Today")  # pages still being written; their texts are counted aloud until they are translated
PLURALS = {"de": 2, "es": 2, "ar": 6}  # CLDR plural categories as Qt Linguist counts them


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
        if message.get("numerus") == "yes" and len(forms) < PLURALS[language]:
            yield f"{file.name}: {len(forms)} plural forms: {source}"
        places = set(re.findall(r"%\d", source))
        if any(set(re.findall(r"%\d", form)) != places for form in forms):
            yield f"{file.name}: other places to fill in: {source}"


def sources(folder):
    """Texts as the pages ask for them."""
    found = set()
    for page in Path(folder).rglob("*.qml"):
        for text in re.findall(r'qsTr\("((?:[^"\\]|\\.)*)"', page.read_text(encoding="utf-8")):
            found.add((page.stem, text.replace('\\"', '"').replace("\\n", "\n")))
    return found


def main(folder):
    wrong = []
    asked = sources(folder)
    for language in PLURALS:
        file = Path(folder) / "i18n" / f"firstdew_{language}.ts"
        wrong += problems(file, language)
        known = {(c.findtext("name"), m.findtext("source"))
                 for c in ElementTree.parse(file).getroot().iter("context") for m in c.iter("message")}
        wrong += [f"{file.name}: missing: {page}: {text}" for page, text in sorted(asked - known) if not page.startswith(LATER)]
        later = sum(page.startswith(LATER) for page, _ in asked - known)
        if later:
            print(f"{file.name}: {later} texts of the running session are still English")
    print("\n".join(wrong) or f"{len(asked)} texts finished in {len(PLURALS)} languages")
    return 1 if wrong or not asked else 0


sys.exit(main(sys.argv[1]))
