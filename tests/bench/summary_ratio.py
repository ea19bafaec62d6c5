#!/usr/bin/python3
"""What the prescriber's page costs in time and memory, as a ratio to the page of an empty record by the same writer.

Usage: summary_ratio.py PATH-OF-FIRSTDEW-CLI [FOLDER]     the pages stay in FOLDER"""
import datetime
import hashlib
import json
import os
import pathlib
import statistics
import subprocess
import sys
import tempfile

TODAY = '2026-03-02'
RUNS = 7
DAYS = 730  # of the invented person's record, five times over: ten years


def shifted(value, days):
    """Every date in it, moved."""
    if isinstance(value, dict):
        return {k: v if k == 'birth' else shifted(v, days) for k, v in value.items()}
    if isinstance(value, list):
        return [shifted(v, days) for v in value]
    if isinstance(value, str) and len(value) >= 10 and value[4:5] == '-' and value[7:8] == '-':
        try:
            day = datetime.date.fromisoformat(value[:10])
        except ValueError:
            return value
        return (day + datetime.timedelta(days)).isoformat() + value[10:]
    return value


def ten_years(document):
    facts = []
    for copy in range(5):
        for fact in document['facts']:
            moved = shifted(fact, -DAYS * copy)
            moved['id'] = hashlib.md5(f'{copy}{fact["id"]}'.encode()).hexdigest()
            if fact.get('corrects'):
                moved['corrects'] = hashlib.md5(f'{copy}{fact["corrects"]}'.encode()).hexdigest()
            moved['recorded_ms'] = fact['recorded_ms'] - DAYS * copy * 86_400_000
            facts.append(moved)
    return {**document, 'facts': facts}


def cost(*command):
    """Processor seconds and largest resident kilobytes of one run."""
    child = subprocess.Popen([str(c) for c in command], stdout=subprocess.DEVNULL)
    _, status, usage = os.wait4(child.pid, 0)
    assert status == 0, command
    return usage.ru_utime + usage.ru_stime, usage.ru_maxrss


def main(cli, folder):
    def run(*args):
        subprocess.run([cli, *map(str, args)], check=True, stdout=subprocess.DEVNULL)
    demo, bare, long = folder / 'demo.db', folder / 'bare.db', folder / 'ten-years.db'
    run('demo', '--out', demo, '--today', TODAY)
    run('export', '--store', demo, '--format', 'json', '--out', folder / 'demo.json')
    document = json.loads((folder / 'demo.json').read_text(encoding='utf-8'))
    (folder / 'ten.json').write_text(json.dumps(ten_years(document)), encoding='utf-8')
    run('import', folder / 'ten.json', '--store', long)
    run('checkin', '--store', bare, '--date', '2026-03-01', '--site', 'hands', '--level', 'dry')
    pages = {'bare page': (bare, '2026-03-01'), 'a year': (demo, '2025-03-02'), 'ten years': (long, '2016-03-05')}
    measured = {}
    for name, (store, start) in pages.items():
        out = folder / f'{name.replace(" ", "-")}.pdf'
        runs = [cost(cli, 'summary', '--store', store, '--from', start, '--to', '2026-03-01', '--out', out) for _ in range(RUNS)]
        measured[name] = [statistics.median(r[i] for r in runs) for i in (0, 1)]
    floor = measured['bare page']
    for name, (seconds, kilobytes) in measured.items():
        print(f'{name:10} processor time {seconds / floor[0]:5.2f} x, memory {kilobytes / floor[1]:5.2f} x   ({seconds * 1000:.0f} ms, {kilobytes / 1024:.0f} MB)')


if len(sys.argv) < 2:
    sys.exit(__doc__)
if len(sys.argv) > 2:
    pathlib.Path(sys.argv[2]).mkdir(parents=True, exist_ok=True)
    main(sys.argv[1], pathlib.Path(sys.argv[2]))
else:
    with tempfile.TemporaryDirectory() as scratch:
        main(sys.argv[1], pathlib.Path(scratch))
