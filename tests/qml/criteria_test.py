#!/usr/bin/python3
"""Every success criterion of WCAG 2.2, levels A and AA, has its line in qml/ACCESSIBILITY.md, and every test named there exists.

Usage: criteria_test.py ROOT"""
import pathlib
import re
import sys

# Of WCAG 2.2 (W3C Recommendation, 5 October 2023), levels A and AA; 4.1.1 is obsolete.
CRITERIA = '''1.1.1 1.2.1 1.2.2 1.2.3 1.2.4 1.2.5 1.3.1 1.3.2 1.3.3 1.3.4 1.3.5 1.4.1 1.4.2 1.4.3 1.4.4 1.4.5 1.4.10 1.4.11 1.4.12 1.4.13
2.1.1 2.1.2 2.1.4 2.2.1 2.2.2 2.3.1 2.4.1 2.4.2 2.4.3 2.4.4 2.4.5 2.4.6 2.4.7 2.4.11 2.5.1 2.5.2 2.5.3 2.5.4 2.5.7 2.5.8
3.1.1 3.1.2 3.2.1 3.2.2 3.2.3 3.2.4 3.2.6 3.3.1 3.3.2 3.3.3 3.3.4 3.3.7 3.3.8 4.1.2 4.1.3'''.split()


def faults(root):
    text = (root / 'qml/ACCESSIBILITY.md').read_text(encoding='utf-8')
    rows = {m[1]: (m[2].strip(), m[3]) for m in re.finditer(r'^\| (\d\.\d\.\d+) [^|]*\|([^|]*)\|(.*)\|$', text, re.M)}
    for criterion in CRITERIA:
        if criterion not in rows:
            yield f'{criterion}: no line'
    for criterion, (result, held) in rows.items():
        if result not in ('pass', 'not here'):
            yield f'{criterion}: {result!r} is neither a pass nor a reason'
        if result == 'pass' and not re.search(r'"[^"]+"|`[^`]+`', held):
            yield f'{criterion}: nothing holds it'
    cases = set()
    for file in (root / 'tests').rglob('*.cpp'):
        # A title may go over several lines.
        for case in re.finditer(r'TEST_CASE\(\s*((?:"(?:[^"\\]|\\.)*"\s*)+)', file.read_text(encoding='utf-8')):
            cases.add(''.join(re.findall(r'"((?:[^"\\]|\\.)*)"', case[1])))
    for name in re.findall(r'"([^"]+)"', text):
        if name not in cases and name != 'NAME':
            yield f'no test is called "{name}"'
    made = '\n'.join(f.read_text(encoding='utf-8') for f in (root / 'tests').rglob('CMakeLists.txt'))
    for name in re.findall(r'`([a-z_-]+)`', '\n'.join(h for _, h in rows.values())):
        if not re.search(rf'\b{re.escape(name)}\b', made):
            yield f'no test is called {name}'


def main():
    found = list(faults(pathlib.Path(sys.argv[1])))
    print('\n'.join(found))
    sys.exit(1 if found else 0)


main()
