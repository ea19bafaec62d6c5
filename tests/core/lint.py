#!/usr/bin/env python3
"""Rules of the house that a compiler does not check.

Usage: lint.py ROOT        exit 0 when the tree keeps the rules, 1 with one line per breach
       lint.py --self-test make small bad trees and see each rule catch its breach
"""
import pathlib
import re
import sys
import tempfile

LAYERS = ["facts", "codec", "diary", "protocol", "bath", "outlook", "situation", "journal", "summary", "exchange", "rehearsal"]
TOP = {"CMakeLists.txt", "README.md", "DEVELOPERS.md", "LICENSE", "core", "qml", "platform", "assets", "tests",
       "demo-data"}
# Which layers a folder may look at, beside itself: those before it.
MAY_USE = {name: set(LAYERS[:i]) for i, name in enumerate(LAYERS)}
MAY_USE["outlook"] = {"facts", "diary", "protocol"}
MAY_USE["diary"] = {"facts"}
MAY_USE["journal"] = {"facts", "codec"}
MAY_USE["exchange"] -= {"journal"}

QT = re.compile(r'#\s*include\s*[<"](Q[A-Z]\w*|Qt\w+/|q(?!rencode)[a-z]+\.h)')
INCLUDE = re.compile(r'#\s*include\s*"([a-z]+)/([^"]+)"')
# Only these look into a record; everybody else asks the diary.
RECORD_READERS = ('core/facts/', 'core/codec/', 'core/journal/', 'core/diary/', 'tests/')
RECORD = re.compile(r'#\s*include\s*"facts/Record\.h"|\brecordOf\s*\(|(\.|->)(all|latest|mutableAll)<')
CLOCK = re.compile(r'system_clock|steady_clock|high_resolution_clock|\btime\s*\(\s*(NULL|nullptr|0)\s*\)|gettimeofday|clock_gettime|std::random_device')
QML_SQL = re.compile(r'\b(SELECT|INSERT INTO|UPDATE \w+ SET|DELETE FROM|openDatabaseSync)\b')


def code_of(text):
    """The text without comments and without the content of string literals (kept: include paths)."""
    text = re.sub(r'/\*.*?\*/', lambda m: '\n' * m.group(0).count('\n'), text, flags=re.S)
    return re.sub(r'//[^\n]*', '', text)


def files(root, folder, *suffixes):
    return sorted(p for p in (root / folder).rglob('*') if p.suffix in suffixes)


def breaches(root):
    out = []
    tracked_top = {p.name for p in root.iterdir() if not p.name.startswith('.') and not p.name.startswith('build')}
    for extra in sorted(tracked_top - TOP):
        out.append(f'{extra}: not part of the top level')
    edges = {}
    for path in files(root, 'core', '.h', '.cpp'):
        layer = path.relative_to(root / 'core').parts[0]
        if layer not in LAYERS:
            out.append(f'{path.relative_to(root)}: no such layer as {layer}')
            continue
        text = code_of(path.read_text(encoding='utf-8'))
        for number, line in enumerate(text.splitlines(), 1):
            where = f'{path.relative_to(root)}:{number}'
            if QT.search(line):
                out.append(f'{where}: Qt included under core/')
            if CLOCK.search(line):
                out.append(f'{where}: core reads no clock and no entropy')
            inc = INCLUDE.search(line)
            if inc and inc.group(1) in LAYERS:
                if inc.group(1) != layer and inc.group(1) not in MAY_USE[layer]:
                    out.append(f'{where}: {layer} must not include {inc.group(1)}')
                edges.setdefault(str(path.relative_to(root / 'core')), set()).add(f'{inc.group(1)}/{inc.group(2)}')
    out += cycles(edges)
    for folder in ('core', 'qml', 'platform'):
        for path in files(root, folder, '.h', '.cpp', '.mm'):
            name = str(path.relative_to(root))
            if name.startswith(RECORD_READERS):
                continue
            for number, line in enumerate(code_of(path.read_text(encoding='utf-8')).splitlines(), 1):
                if RECORD.search(line):
                    out.append(f'{name}:{number}: reads a Record; ask the diary (core/diary/Diary.h)')
    for path in files(root, 'qml', '.qml'):
        for number, line in enumerate(code_of(path.read_text(encoding='utf-8')).splitlines(), 1):
            if QML_SQL.search(line):
                out.append(f'{path.relative_to(root)}:{number}: SQL in QML')
    return out


def cycles(edges):
    """Files that include each other in a circle (a .cpp never closes one)."""
    out, done = [], set()

    def walk(node, trail):
        if node in trail:
            out.append('include cycle: ' + ' > '.join(trail[trail.index(node):] + [node]))
            return
        if node in done:
            return
        for nxt in sorted(edges.get(node, ())):
            walk(nxt, trail + [node])
        done.add(node)

    for node in sorted(edges):
        walk(node, [])
    return out


BAD = {
    'Qt included': ('core/facts/A.h', '#include <QString>\n'),
    'must not include': ('core/protocol/A.h', '#include "situation/Assess.h"\n'),
    'include cycle': ('core/facts/A.h', '#include "facts/B.h"\n'),
    'no clock': ('core/bath/A.cpp', 'auto t = std::chrono::steady_clock::now();\n'),
    'no such layer': ('core/extras/A.h', '\n'),
    'not part of the top level': ('scripts', ''),
    'reads a Record': ('core/protocol/A.cpp', 'auto n = record.all<Session>().size();\n'),
    'reads a Record; ask': ('qml/viewmodels/A.h', '#include "facts/Record.h"\n'),
    'SQL in QML': ('qml/pages/A.qml', 'Item { property string q: "SELECT 1" }\n'),
}


def self_test():
    failed = 0
    for expected, (name, text) in BAD.items():
        with tempfile.TemporaryDirectory() as tmp:
            root = pathlib.Path(tmp)
            for folder in ('core/facts', 'qml/pages'):
                (root / folder).mkdir(parents=True)
            (root / 'core/facts/B.h').write_text('#include "facts/A.h"\n' if expected == 'include cycle' else '\n')
            (root / name).parent.mkdir(parents=True, exist_ok=True)
            (root / name).write_text(text)
            found = breaches(root)
            if not any(expected in b for b in found):
                print(f'not caught: {expected}: {found}')
                failed += 1
    return failed


if __name__ == '__main__':
    if sys.argv[1:] == ['--self-test']:
        sys.exit(1 if self_test() else 0)
    problems = breaches(pathlib.Path(sys.argv[1]).resolve())
    print('\n'.join(problems) if problems else 'the tree keeps the rules')
    sys.exit(1 if problems else 0)
