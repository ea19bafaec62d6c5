#!/usr/bin/python3
"""What a day (one reminder, one check-in) and a session cost a phone, counted: bytes written, wake-ups, instructions.

Usage: counts.py COUNTED                    bytes and wake-ups against their budgets, twice; part of the tests
       counts.py COUNTED --instructions     instructions too, by callgrind; platform/linux/counts.sh builds and calls it
       counts.py COUNTED --arm64 SYSROOT    the same of an arm64 build under qemu-aarch64 with a counting plugin
A count is the difference of two runs of the same program, so that its start is in none. Exit 1 where a count is above
its budget, or differs from run to run by more than SAME."""
import pathlib
import re
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).resolve().parent
SAME = 0.01
DAYS, SESSIONS = 4, 2
TIMES = {'day': DAYS, 'session': SESSIONS}
# As counted on 29 November 2026, and a twentieth more. Raise one only with a reason in the commit message.
BUDGETS = {
    'bytes written': {'day': 34_600, 'session': 772_000},
    'wake-ups': {'day': 1.25, 'session': 24_100},  # two sites are asked about at one time; every fourth day something else is due
    'instructions': {'day': 202_000_000, 'session': 346_000_000},
    'instructions on arm64': {'day': 85_400_000, 'session': 156_000_000},
}


def output(*command):
    done = subprocess.run([str(c) for c in command], capture_output=True, text=True, check=False)
    if done.returncode != 0:
        sys.exit(f'counts.py: {" ".join(map(str, command))}: {done.stderr}')
    return done.stdout, done.stderr


class Counter:
    def __init__(self, counted, folder, how, sysroot):
        self.counted, self.folder, self.how, self.sysroot = counted, folder, how, sysroot
        self.plugin = folder / 'instructions.so'
        if how == 'arm64':
            output('cc', '-shared', '-fPIC', '-O2', '-o', self.plugin, HERE / 'instructions.c')

    def emulator(self):
        return ['qemu-aarch64', '-L', self.sysroot] if self.how == 'arm64' else []

    def figures(self, what, times):
        """What one run prints, with its instructions where they are counted; on a store of its own."""
        store = self.folder / 'store.db'
        for file in self.folder.glob('store.db*'):
            file.unlink()
        output(*self.emulator(), self.counted, 'make', store)
        before = {'plain': [], 'callgrind': ['valgrind', '--tool=callgrind', f'--callgrind-out-file={self.folder}/callgrind'],
                  'arm64': [*self.emulator(), '-plugin', self.plugin]}[self.how]
        out, err = output(*before, self.counted, what, store, times)
        told = {name.replace('_', ' '): int(value) for name, value in (line.split() for line in out.splitlines())}
        if self.how == 'plain':
            return told
        # What is written then is partly written by the program that counts.
        label = 'instructions on arm64' if self.how == 'arm64' else 'instructions'
        return {label: int(re.search(r'(?:Collected : |instructions )(\d+)', err).group(1))}

    def costs(self, what):
        """Of one day or one session."""
        times = TIMES[what]
        none, some = self.figures(what, 0), self.figures(what, times)
        return {name: (some[name] - none[name]) / times for name in some}


def counted_twice(counter, what):
    first, second = counter.costs(what), counter.costs(what)
    return [(name, first[name], second[name]) for name in first]


def judged(what, name, first, second):
    """Prints a count; whether it is wrong."""
    budget, apart = BUDGETS.get(name, {}).get(what), abs(first - second) / max(first, 1)
    wrong = (budget is not None and max(first, second) > budget) or apart > SAME
    most = '' if budget is None else f', at most {budget:,}'
    print(f'a {what}: {first:,.10g} {name}{most}; from run to run {100 * apart:.2f} %{"  WRONG" if wrong else ""}')
    return wrong


def main():
    if len(sys.argv) not in (2, 3, 4):
        sys.exit(__doc__)
    counted = pathlib.Path(sys.argv[1]).resolve()
    how = {'': 'plain', '--instructions': 'callgrind', '--arm64': 'arm64'}[(sys.argv[2:3] or [''])[0]]
    bad = 0
    with tempfile.TemporaryDirectory() as name:
        for each in ['arm64'] if how == 'arm64' else dict.fromkeys(['plain', how]):
            counter = Counter(counted, pathlib.Path(name), each, (sys.argv[3:4] or [''])[0])
            for what in TIMES:
                bad += sum(judged(what, *both) for both in counted_twice(counter, what))
    return 1 if bad else 0


sys.exit(main())
