#!/usr/bin/python3
"""The rows of core/protocol/SAFETY.md and platform/SECURITY.md rest on files, tests and hazards that are there.

A row is a line of a table. In it `a/path` in backticks is a file, "a name" in double quotes is a test, H1 is a hazard of
HAZARDS.md. Every hazard is named by a requirement.

Usage: links.py SOURCE-FOLDER | --self-test"""
import re
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from hazards import tests_in  # noqa: E402

CONTROLS = {'STORAGE': 2, 'CRYPTO': 2, 'AUTH': 3, 'NETWORK': 2, 'PLATFORM': 3, 'CODE': 4, 'RESILIENCE': 4, 'PRIVACY': 4}
STANDINGS = ('met', 'partly', 'open', 'not applicable')


def rows(text):
    """The cells of every table's line, without heads and rules."""
    lines = text.splitlines()
    for line, after in zip(lines, [*lines[1:], '']):
        if line.startswith('| ') and not line.startswith('| ---') and not after.startswith('| ---'):
            yield [cell.strip() for cell in line.strip('|').split('|')]


def broken(name, text, tests, hazards, exists):
    """What a table's line names and is not there."""
    for cells in rows(text):
        line = ' | '.join(cells)
        for path in re.findall(r'`([\w.-]+/[\w./-]+\.\w+)`', line):
            if not path.startswith('.') and not exists(path):
                yield f'{name}: {cells[0]}: no file {path}'
        yield from (f'{name}: {cells[0]}: no test "{t}"' for t in re.findall(r'"([^"]+)"', line) if t not in tests)
        yield from (f'{name}: {cells[0]}: no hazard {h}' for h in re.findall(r'\bH\d+\b', line) if h not in hazards)


def security(text):
    wanted = {f'MASVS-{area}-{n}' for area, count in CONTROLS.items() for n in range(1, count + 1)}
    listed = [cells for cells in rows(text) if cells[0].startswith('MASVS-')]
    found = [cells[0] for cells in listed]
    yield from (f'SECURITY.md: {c} is missing' for c in sorted(wanted - set(found)))
    yield from (f'SECURITY.md: {c} twice or unknown' for c in sorted(set(found)) if found.count(c) > 1 or c not in wanted)
    for control, _, standing, evidence, test in listed:
        if standing not in STANDINGS:
            yield f'SECURITY.md: {control}: standing "{standing}"'
        if standing == 'met' and not (test or '`' in evidence):
            yield f'SECURITY.md: {control}: met without evidence'


def safety(text, hazards):
    """Requirements name code, test and hazard, and no hazard goes without one."""
    named = set()
    for cells in rows(text):
        if not re.fullmatch(r'R\d+', cells[0]):
            continue
        line = ' | '.join(cells)
        of = set(re.findall(r'\bH\d+\b', line))
        named |= of
        for what, there in (('hazard', of), ('code', '`' in line), ('test', '"' in line)):
            if not there:
                yield f'SAFETY.md: {cells[0]} names no {what}'
    yield from (f'SAFETY.md: no requirement names {h}' for h in sorted(hazards - named, key=lambda h: int(h[1:])))


def self_test():
    row = '| a | b |\n| --- | --- |\n| R1 | `x/y.cpp` "t" H1 |\n'
    assert not list(broken('d', row, {'t'}, {'H1'}, lambda f: f == 'x/y.cpp')) and not list(safety(row, {'H1'}))
    for bad in (row.replace('y.cpp', 'z.cpp'), row.replace('"t"', '"u"'), row.replace('H1', 'H2')):
        assert list(broken('d', bad, {'t'}, {'H1'}, lambda f: f == 'x/y.cpp')), bad
    for bad in (row.replace('H1', ''), row.replace('`', ''), row.replace('"', '')):
        assert list(safety(bad, {'H1'})), bad
    head = '| a | b | c | d | e |\n| --- | --- | --- | --- | --- |\n'
    good = head + ''.join(f'| MASVS-{a}-{n} | b | met | `f` | |\n' for a, count in CONTROLS.items() for n in range(1, count + 1))
    assert not list(security(good)), list(security(good))
    for bad in (good.replace('MASVS-CODE-4', 'MASVS-CODE-3'), good.replace('met', 'fine', 1), good.replace('`f`', 'f', 1)):
        assert list(security(bad))
    print('a link that leads nowhere is seen')


def main(argument):
    if argument == '--self-test':
        self_test()
        return 0
    source = Path(argument)
    tests = tests_in(source)
    for file in (source / 'tests').rglob('*.java'):
        tests.update(re.findall(r'void (\w+)\(', file.read_text(encoding='utf-8')))
    hazards = set(re.findall(r'^## (H\d+)', (source / 'core/protocol/HAZARDS.md').read_text(encoding='utf-8'), re.M))
    wrong = []
    for name in ('core/protocol/SAFETY.md', 'platform/SECURITY.md'):
        text = (source / name).read_text(encoding='utf-8')
        wrong += broken(Path(name).name, text, tests, hazards, lambda f: (source / f).is_file())
        wrong += security(text) if name.endswith('SECURITY.md') else safety(text, hazards)
    print('\n'.join(wrong) or 'every file, test and hazard that the safety case and the security table name is there')
    return 1 if wrong else 0


sys.exit(main(sys.argv[1]))
