#!/usr/bin/python3
"""Every text of the program is there in every language, finished, with the same places to fill in, and reads as one."""
import re
import sys
import xml.etree.ElementTree as ElementTree
from pathlib import Path

# CLDR plural categories as Qt Linguist counts them
PLURALS = {"en": 2, "de": 2, "es": 2, "fr": 2, "pt_BR": 2, "ar": 6}
LITERAL = r'"((?:[^"\\]|\\.)*)"'
LITERALS = rf"{LITERAL}(?:\s*{LITERAL})*"
# A unit stays on the line of its number: between them stands a space that does not break, or none.
LOOSE_UNIT = re.compile(r"(?:%[\dn]|\d)[\u2069\u200e\u200f]* (?:mA·min|mA|mg|ml|cm²|cm|kg|min|s|%)(?![\w%])")
# What the program says to itself: names of things in it, days as it stores them, brackets of its files.
RAW = {"a name of the program's own": re.compile(r"\b[a-z]+(?:_[a-z0-9]+)+\b|\b[a-z]{2,}[A-Z][a-z]\w*"),
       "a day as it is stored": re.compile(r"\b\d{4}-\d\d-\d\d\b"),
       "a bracket of a file": re.compile(r"[\[\]{}]")}
WORD = re.compile(r"[^\W\d_]{2,}")
# French has a space before these signs and inside its quotation marks, and none may begin or end a line.
LOOSE_SIGN = re.compile("« | [:;?!»]")


def texts(file):
    """(context, source, comment) of each message, with its translation or, if it is not finished, the reason."""
    for context in ElementTree.parse(file).getroot().iter("context"):
        for message in context.iter("message"):
            translation = message.find("translation")
            forms = [f.text or "" for f in translation.iter("numerusform")] or [translation.text or ""]
            key = (context.findtext("name"), message.findtext("source"), message.findtext("comment") or "")
            yield key, forms, translation.get("type"), message.get("numerus") == "yes"


def unfilled(source, forms, counted, language):
    """What is missing in a translation."""
    if any(not form.strip() for form in forms):
        yield "empty"
    if counted and len(forms) != PLURALS[language]:
        yield f"{len(forms)} plural forms"
    places = sorted(re.findall(r"%\d", source))
    if any(sorted(re.findall(r"%\d", form)) != places for form in forms):
        yield "other places to fill in"
    # A form for one, two or none of them may say the number in words.
    if counted and "%n" not in forms[-1]:
        yield "the number is missing"


def misread(source, forms, english, language):
    """What a reader stumbles over. `english` are the English forms of a counted text."""
    # Where English has a word that changes with the number, so has every other language of ours.
    if len(forms) > 1 and len(set(forms)) == 1 and ("(s)" in source or len(set(english)) > 1):
        yield "the same for one and for many"
    if language != "en" and forms == [source] and len(WORD.findall(re.sub(r"%\w", "", source))) >= 3:
        yield "left in English"
    for form in forms:
        if language == "fr" and LOOSE_SIGN.search(form):
            yield f"a sign may part from its word in “{form}”"
        if LOOSE_UNIT.search(form):
            yield f"the unit may part from its number in “{form}”"
        for what, raw in RAW.items():
            if raw.search(form):
                yield f"{what} in “{form}”"


def problems(file, language, english):
    for key, forms, unfinished, counted in texts(file):
        source = key[1]
        found = [unfinished] if unfinished else [*unfilled(source, forms, counted, language),
                                                 *misread(source, forms, english.get(key, ()), language)]
        yield from (f"{file.name}: {what}: {key[0]}: {source}" for what in found)


# One text for each fault above, and one that comes near it and is none; German ones, where no language is named.
PLANTED = [
    ("%n day(s)", ["%n Tage", "%n Tage"], ["%n day", "%n days"], True),
    ("%n earlier; all are in it", ["%n davon", "%n davon"], ["%n; it is in it", "%n; they are in it"], True),
    ("%n in the period", ["%n im Zeitraum", "%n im Zeitraum"], ["%n in the period", "%n in the period"], False),
    ("%1 of %2 is done", ["%1 of %2 is done"], (), True),
    ("%1 mA·min (limit %2)", ["%1\u00a0mA·min (limit %2)"], (), False),
    ("%1 mA", ["%1 mA"], (), True),
    ("%1 mA", ["\u2066%1\u2069 mA"], (), True),
    ("(80 %: %1)", ["(80 %: %1)"], (), True),
    ("%n min", ["%n min", "%n\u202fmin"], (), True),
    ("%1 min", ["%1\u00a0min"], (), False),
    ("%1 minutes", ["%1 minutos"], (), False),
    ("Sites: %1", ["Stellen: first_course"], (), True),
    ("Sites: %1", ["Stellen: handFoot"], (), True),
    ("One file (OpenPGP), in mA", ["Eine Datei (OpenPGP), in mA"], (), False),
    ("From %1", ["Seit 2026-03-01"], (), True),
    ("From %1 to %2", ["%1-%2, 2026-03"], (), False),
    ("Sites: %1", ["Stellen: [hands]"], (), True),
    ("Sites: %1", ["Zones : %1"], (), True, "fr"),
    ("Why?", ["Pourquoi ?"], (), True, "fr"),
    ("“%1” is closed", ["« %1\u00a0» est fermé"], (), True, "fr"),
    ("“%1” is closed", ["«\u00a0%1 » est fermé"], (), True, "fr"),
    ("“%1” is closed: why?", ["«\u00a0%1\u00a0» est fermé\u00a0: pourquoi\u202f?"], (), False, "fr"),
    ("Sites: %1", ["Stellen : %1"], (), False, "de"),
]


def blind():
    """Planted faults that are not seen, and good texts that are taken for one."""
    for source, forms, english, faulty, *language in PLANTED:
        if bool([*misread(source, forms, english, *language or ["de"])]) != faulty:
            yield f"{'not seen' if faulty else 'wrongly seen'}: {source}: {forms}"


def plain(literals):
    return "".join(re.findall(LITERAL, literals)).replace('\\"', '"').replace("\\n", "\n").replace("\\u00a0", "\u00a0")


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
    wrong = [*blind()]
    asked = sources(roots)
    files = {file.stem.partition("_")[2]: file for file in sorted(Path(folder).glob("firstdew_*.ts"))}
    english = {key: forms for key, forms, *_ in texts(files["en"])}
    for language, file in files.items():
        if language not in PLURALS:
            wrong.append(f"{file.name}: how many plural forms does it have?")
            continue
        wrong += problems(file, language, english)
        known = {(context.split("::")[-1], source) for (context, source, _), *_ in texts(file)}
        # The texts are written in English; only what is counted has English forms.
        needed = {(context, text) for context, text, counted in asked if counted or language != "en"}
        wrong += [f"{file.name}: missing: {context}: {text}" for context, text in sorted(needed - known)]
        wrong += [f"{file.name}: no longer asked for: {context}: {text}" for context, text in sorted(known - needed)]
    print("\n".join(wrong) or f"{len(asked)} texts finished in {len(files)} languages")
    return 1 if wrong or not asked else 0


sys.exit(main(*sys.argv[1:]))
