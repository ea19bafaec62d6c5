#!/usr/bin/python3
"""Every hazard of core/protocol/HAZARDS.md names controls and tests, and each of them is there.

Usage: hazards.py SOURCE-FOLDER | --self-test"""
import re
import sys
from pathlib import Path

LEAST = 10  # hazards that the record has to hold


def tests_in(source):
    names = set()
    for file in (source / 'tests').rglob('*'):
        if file.suffix == '.cpp':
            joined = re.sub(r'"\s*\n\s*"', '', file.read_text(encoding='utf-8'))
            names.update(re.findall(r'TEST_CASE\("((?:[^"\\]|\\.)*)"', joined))
        elif file.suffix == '.py':
            names.update(re.findall(r'def (test_\w+)', file.read_text(encoding='utf-8')))
    return names


def problems(record, tests, exists):
    hazards = re.split(r'^## ', record, flags=re.M)[1:]
    if len(hazards) < LEAST:
        yield f'only {len(hazards)} hazards'
    for hazard in hazards:
        name = hazard.splitlines()[0]
        parts = dict(re.findall(r'^- (\w+): (.*)$', hazard, flags=re.M))
        for part in ('Cause', 'Harm', 'Control', 'Test', 'Left'):
            if not parts.get(part):
                yield f'{name}: no {part}'
        files = re.findall(r'`([^`]+)`', parts.get('Control', ''))
        named = re.findall(r'"([^"]+)"', parts.get('Test', ''))
        if not files or not named:
            yield f'{name}: no file or no test'
        yield from (f'{name}: no file {f}' for f in files if not exists(f))
        yield from (f'{name}: no test "{t}"' for t in named if t not in tests)


def self_test():
    good = ''.join(f'## H{i}\n- Cause: c\n- Harm: h\n- Control: `a`\n- Test: "t"\n- Left: l\n' for i in range(LEAST))
    assert not list(problems(good, {'t'}, lambda f: f == 'a'))
    for bad in (good.replace('`a`', '`b`', 1), good.replace('"t"', '"u"', 1), good.replace('- Left: l\n', '', 1), good[:100]):
        assert list(problems(bad, {'t'}, lambda f: f == 'a')), bad
    print('a record with a hole is seen')


def main(argument):
    if argument == '--self-test':
        self_test()
        return 0
    source = Path(argument)
    record = (source / 'core/protocol/HAZARDS.md').read_text(encoding='utf-8')
    wrong = list(problems(record, tests_in(source), lambda f: (source / f).is_file()))
    print('\n'.join(wrong) or f"{record.count('## H')} hazards, each with its controls and tests")
    return 1 if wrong else 0


if __name__ == '__main__':
    sys.exit(main(sys.argv[1]))
