#!/usr/bin/python3
"""What a very large record costs. It is imported, opened, judged, exported and printed in time that grows as its length,
and the largest files that are accepted take no more memory than core/exchange/FORMATS.md states.

Usage: large.py FIRSTDEW-CLI [FACTS]...     default: 100000 300000 1000000; fewer show the growth, not the largest files
Prints a line for each command and size: seconds of processor, and peak memory. Writes large.json beside build/bench's
figures. Exit 1 if the time for each fact grows by more than GROWTH from the smallest to the largest record, if an import,
restore or back-up takes more memory than stated, or if what is too large is not refused."""
import json
import os
import pathlib
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).resolve().parent
sys.path.insert(0, str(HERE.parent / 'system'))
import bounds  # noqa: E402

GROWTH = 1.4  # sorting and a deeper tree take a little more for each fact
EXPORT_MEMORY = 25  # times the record as JSON; exports are made in one piece
PART = 500_000  # facts in a file: under the 128 MB that a reader accepts
LARGEST = 1_000_000
BACK_UP = 0.7  # of that: of facts as short as here more is above 128 MB
TODAY = '2026-03-02'
PERSON = '0' * 31 + '1'
LEVELS = ('dry', 'dry', 'dry', 'clammy')


def fact(number):
    """Check-ins of ten years of three sites, over and over: most days hold many reports. No two of the first millions are alike."""
    day, minute = number % 3650, number // 3650 % 1440
    year, of_year = 2016 + day // 365, day % 365
    happened = f'{year}-{1 + of_year // 31:02d}-{1 + of_year % 28:02d}T{minute // 60:02d}:{minute % 60:02d}'
    kind = {'site': ('hands', 'feet', 'armpits')[number % 3], 'level': LEVELS[number // 7 % 4], 'with': []}
    return {'person': PERSON, 'kind': 'check-in', 'happened': happened, 'recorded_ms': 1451606400000 + number * 1000, 'is': kind}


def write(folder, facts):
    """The files to import, and how large they are together."""
    files, size = [], 0
    for begin in range(0, facts, PART):
        file = folder / f'{begin}.json'
        with file.open('w', encoding='utf-8') as out:
            out.write('{"format":"firstdew-record","version":1,"facts":[\n')
            if begin == 0:
                person = {'name': 'Long', 'birth': '1990-01-01', 'adult': ''}
                out.write(json.dumps({'person': PERSON, 'kind': 'person', 'happened': '2016-01-01T08:00', 'recorded_ms': 1451606400000, 'is': person}) + ',\n')
            for n in range(begin, min(begin + PART, facts)):  # one by one: what this process holds would count for its children
                out.write((',\n' if n > begin else '') + json.dumps(fact(n), separators=(',', ':')))
            out.write('\n]}\n')
        files.append(file)
        size += file.stat().st_size
    return files, size


def run(cli, *arguments, refused=False):
    """Seconds of processor and peak memory in bytes of one call, which must succeed, or be refused."""
    pid = os.fork()
    if pid == 0:
        os.environ['QT_QPA_PLATFORM'] = 'offscreen'
        os.dup2(os.open(os.devnull, os.O_WRONLY), 1)
        if refused:
            os.dup2(1, 2)
        os.execv(cli, [cli, *map(str, arguments)])
    _, status, usage = os.wait4(pid, 0)
    if os.waitstatus_to_exitcode(status) != (1 if refused else 0):
        sys.exit(f'large.py: {arguments[0]} {"was not refused" if refused else "failed"}')
    return usage.ru_utime + usage.ru_stime, usage.ru_maxrss * 1024


def prints(cli):
    """Whether the program was built with the app, and so makes pages."""
    return '\n  summary ' in subprocess.run([cli, '--help'], capture_output=True, text=True, check=True).stdout


def measure(cli, facts):
    """For each command its seconds and peak memory, and the memory that it may take."""
    with tempfile.TemporaryDirectory(dir=SCRATCH) as name:
        folder = pathlib.Path(name)
        store = folder / 'store.db'
        files, size = write(folder, facts)
        costs = [run(cli, 'import', file, '--store', store) for file in files]
        kept = subprocess.run([cli, 'verify', '--store', store], capture_output=True, text=True, check=True).stdout
        if str(facts + 1) not in kept.split():  # and the person
            sys.exit(f'large.py: of {facts} facts the store has: {kept}')
        may = bounds.most(files[0].stat().st_size, facts)
        found = {'import': (sum(c[0] for c in costs), max(c[1] for c in costs), may)}
        for what, call in (('verify', ['verify', '--store', store]), ('open and judge', ['outlook', '--store', store, '--today', TODAY]),
                           ('reminders', ['due', '--store', store, '--at', f'{TODAY}T20:00']),
                           ('page for the prescriber', ['summary', '--store', store, '--from', '2016-01-01', '--to', TODAY, '--out', folder / 'out.pdf']),
                           *((f'export {form}', ['export', '--store', store, '--format', form, '--out', folder / f'out.{form}'])
                             for form in ('csv', 'json', 'fhir', 'ics'))):
            if call[0] != 'summary' or prints(cli):
                found[what] = (*run(cli, *call), EXPORT_MEMORY * size)
        return found


def growth(first, last, times):
    """Of the time for each fact."""
    return last / first / times


def linear(cli, counts):
    bad, told, first, last = 0, {}, None, None
    for facts in counts:
        last = measure(cli, facts)
        first = first or last
        print(f'{facts} facts')
        for what, (seconds, memory, may) in last.items():
            grown = growth(first[what][0], seconds, facts / counts[0])
            wrong = grown > GROWTH or memory > may
            bad += wrong
            told[what] = {'seconds': seconds, 'growth': grown, 'MB': memory / bounds.MB}
            print(f'  {what:24} {seconds:8.2f} s, {seconds / facts * 1e6:6.2f} µs a fact (× {grown:.2f}) {memory / bounds.MB:7.0f} MB{"  TOO MUCH" if wrong else ""}', flush=True)
    return bad, told


def largest(cli, most):
    """Files of each kind of up to so many facts, of the shapes that take the most memory; and those that are one fact too large."""
    bad, told, record_facts, long = 0, {}, int(most * BACK_UP), int(most * 0.03)
    with tempfile.TemporaryDirectory(dir=SCRATCH) as name:
        folder = pathlib.Path(name)
        word = folder / 'word'
        word.write_text('a long passphrase\n')
        word.chmod(0o600)
        record, sealed = bounds.named_json(folder / 'named.json', record_facts), folder / 'sealed.pgp'
        secret = ['--passphrase-file', word]
        for what, file, facts, call in (
                ('the shortest facts', bounds.nameless_json(folder / 'nameless.json', most), most, ['import', folder / 'nameless.json', '--store', folder / 'a.db']),
                ('the shortest rows', bounds.narrow_table(folder / 'rows.csv', most), most, ['import', folder / 'rows.csv', '--store', folder / 'b.db']),
                ('long texts', bounds.named_json(folder / 'long.json', long, 'x' * 4_000), long, ['import', folder / 'long.json', '--store', folder / 'c.db']),
                ('the largest record', record, record_facts, ['import', record, '--store', folder / 'd.db']),
                ('its back-up', record, record_facts, ['backup', '--store', folder / 'd.db', '--out', sealed, *secret]),
                ('restored anew', record, record_facts, ['restore', '--store', folder / 'e.db', '--in', sealed, *secret]),
                ('restored over it', record, record_facts, ['restore', '--store', folder / 'd.db', '--in', sealed, *secret])):
            size = file.stat().st_size
            seconds, memory = run(cli, *call)
            may = bounds.most(size, facts)
            bad += memory > may
            told[what] = {'MB': memory / bounds.MB, 'most': may / bounds.MB, 'file': size / bounds.MB}
            print(f'{what:20} {size / bounds.MB:5.0f} MB, {facts} facts: {seconds:6.1f} s, {memory / bounds.MB:5.0f} MB of {may / bounds.MB:.0f}'
                  f'{"  TOO MUCH" if memory > may else ""}', flush=True)
        for what, file in () if most < LARGEST else (('a fact too many', bounds.nameless_json(folder / 'more.json', LARGEST + 1)),
                           ('a row too many', bounds.narrow_table(folder / 'more.csv', LARGEST + 1)),
                           ('a file too large', bounds.named_json(folder / 'large.json', 1_000_000))):
            _, memory = run(cli, 'import', file, '--store', folder / 'f.db', refused=True)
            wrong = memory > bounds.most(min(file.stat().st_size, 128 * bounds.MB), LARGEST)
            bad += wrong
            print(f'{what:20} refused, {memory / bounds.MB:.0f} MB{"  TOO MUCH" if wrong else ""}')
    return bad, told


def main(cli, *sizes):
    cli = str(pathlib.Path(cli).resolve())
    counts = [int(s) for s in sizes] or [100_000, 300_000, 1_000_000]
    bad, figures = linear(cli, counts)
    worse, memory = largest(cli, min(counts[-1], LARGEST))
    (SCRATCH / 'large.json').write_text(json.dumps({'facts': counts[-1], 'linear': figures, 'largest': memory}, indent=1), encoding='utf-8')
    return 1 if bad + worse else 0


SCRATCH = HERE.parents[1] / 'build' / 'bench'  # on a disk: a store is on a disk
if __name__ == '__main__':
    SCRATCH.mkdir(parents=True, exist_ok=True)
    sys.exit(main(*sys.argv[1:]))
