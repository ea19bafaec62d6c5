#!/usr/bin/python3
"""Writes the table of what was tried and what it cost into tests/bench/README.md, between its two marks.

Runs the fault tests of build/test; takes the rest from the last runs of tests/fuzz/run.sh, tests/mutation/mutate.py,
tests/coverage.sh decisions and platform/linux/bench.sh. What was not run here keeps the row of the last time it was, and says so where it never was.

Usage: figures.py [TEST-PROGRAM (build/test/tests/core/test_journal)]"""
import collections
import json
import os
import pathlib
import re
import subprocess
import sys
import tempfile

SOURCE = pathlib.Path(__file__).resolve().parents[1]
sys.path.insert(0, str(SOURCE / 'tests' / 'bench'))
BEGIN, END = '<!-- figures: tests/figures.py -->', '<!-- end of figures -->'
NOT_RUN = 'not run'


def faults(program):
    """What the fault tests tried, and whether anything was lost: a test that finds a loss fails."""
    with tempfile.TemporaryDirectory() as folder:
        tally = pathlib.Path(folder) / 'tally'
        run = subprocess.run([program, '[fault]'], env={**os.environ, 'FIRSTDEW_TALLY': str(tally)}, capture_output=True, text=True, check=False)
        tried = collections.Counter()
        for line in tally.read_text(encoding='utf-8').splitlines():
            what, count = line.split('\t')
            tried[what] += int(count)
    lost = '0' if run.returncode == 0 else 'see ' + str(program)
    for what, count in sorted(tried.items()):
        yield what, str(count), f'lost or silently wrong: {lost}'


def fuzzing():
    for name in ('caresheet', 'record', 'table', 'backup', 'journal', 'engine'):
        log = SOURCE / 'build' / 'fuzz' / f'fuzz_{name}.log'
        text = log.read_text(errors='replace') if log.exists() else ''
        units, seconds = (re.search(pattern, text) for pattern in (r'number_of_executed_units: *(\d+)', r'Done \d+ runs in (\d+) second'))
        result = 'crashes and leaks: 0' if units and seconds else 'see build/fuzz' if text else ''
        yield f'fuzz, {name}', f'{units.group(1)} inputs in {seconds.group(1)} s' if units and seconds else NOT_RUN, result


def mutation():
    log = SOURCE / 'build' / 'mutation' / 'last.txt'
    last = log.read_text(encoding='utf-8').splitlines()[-1] if log.exists() else ''
    counts = re.match(r'(\d+) lines broken of (\d+) that can be, seed (\d+): (\d+) caught', last)
    yield 'lines of the rules broken', f'{counts.group(1)} of {counts.group(2)}, seed {counts.group(3)}' if counts else NOT_RUN, \
        f'caught: {counts.group(4)}' if counts else ''


def decisions():
    log = SOURCE / 'build' / 'decisions' / 'last.txt'
    text = log.read_text(encoding='utf-8') if log.exists() else ''
    for folder in ('diary', 'protocol', 'bath', 'situation'):
        found = re.search(rf'^core/{folder}: (.*)', text, re.M)
        reasoned, left = (len(re.findall(rf'^{word} +core/{folder}/', text, re.M)) for word in ('reasoned', 'OPEN'))
        yield f'conditions of core/{folder}', found.group(1) if found else NOT_RUN, f'not reached: {reasoned} with a reason, {left} without'


def costs():
    file = SOURCE / 'build' / 'bench' / 'figures.json'
    figures = json.loads(file.read_text(encoding='utf-8')) if file.exists() else {}
    import bench
    for name, (what, side, bound) in bench.BOUNDS.items():
        value = figures.get(name)
        missed = value is not None and (value > bound if side == 'most' else value < bound)
        yield what, NOT_RUN if value is None else f'{value:.2f}', f'at {side} {bound}' + (': missed' if missed else '')
    if 'session' in figures:
        app, floor = figures['session']['app'], figures['session']['floor']
        yield 'a running session / an empty window', f'{app[0]:.2f} / {floor[0]:.2f} processor s a minute', f'{app[1]:.1f} / {floor[1]:.1f} wake-ups a second'


def main():
    program = pathlib.Path(sys.argv[1] if len(sys.argv) > 1 else SOURCE / 'build/test/tests/core/test_journal')
    page = SOURCE / 'tests' / 'bench' / 'README.md'
    text = page.read_text(encoding='utf-8')
    head, rest = text.split(BEGIN)
    earlier = {line.split(' | ')[0]: line for line in rest.split(END)[0].splitlines()}
    rows = ['| what | tried or measured | result |', '| --- | --- | --- |']
    for what, tried, result in (row for part in (faults(program), fuzzing(), mutation(), decisions(), costs()) for row in part):
        row = f'| {what} | {tried} | {result} |'
        rows.append(earlier.get(f'| {what}', row) if tried == NOT_RUN else row)
    page.write_text(f'{head}{BEGIN}\n' + '\n'.join(rows) + f'\n{END}{rest.split(END)[1]}', encoding='utf-8')
    print('\n'.join(rows))


if __name__ == '__main__':
    main()
