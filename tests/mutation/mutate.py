#!/usr/bin/python3
"""Breaks lines of the rules, one at a time, and asks the core tests whether they notice.

Usage: mutate.py [--seed N] [--count N] [--jobs N] [--headers] [--again] [--only FILE:LINE]
The lines are drawn by the seed from core/diary, core/protocol, core/bath and core/situation, and so is what is broken in
each: an operator swapped, a constant changed by one, a negation lost, an enumerator replaced by the next one, or a
statement left out. Lines of headers are drawn with --headers alone: each has every test built again. The tree itself is not touched: every worker breaks a copy of its own under build/mutation. What does
not compile is drawn again. A line that survives is listed with the reason from argued.txt, if somebody found that it
makes no difference; it counts as survived all the same. With --again what the last run caught is not broken once more,
for a look at the rest after tests were added. Exit 0 only if 95 of a hundred were caught."""
import argparse
import concurrent.futures
import json
import os
import queue
import random
import re
import resource
import shutil
import subprocess
import sys
import time
from pathlib import Path

SOURCE = Path(__file__).resolve().parents[2]
BUILD = SOURCE / 'build' / 'mutation'
# Which test programs judge a folder, the nearest first.
JUDGES = {'diary': ['diary', 'protocol', 'bath', 'situation'], 'protocol': ['protocol', 'bath', 'situation'],
          'bath': ['bath', 'protocol', 'situation'], 'situation': ['situation', 'protocol']}
# What the core builds from.
PARTS = ('CMakeLists.txt', 'core', 'tests/CMakeLists.txt', 'tests/core', 'platform/cli', 'demo-data')
SHARE = 0.95
TOO_LONG_S = 60    # of the processor: an endless loop is noticed by whoever waits,
TOO_LARGE = 4 << 30  # and so is one that fills the memory


def blanked(text):
    """The same text with comments, strings and preprocessor lines as blanks of the same length."""
    def blank(match):
        return re.sub(r'[^\n]', ' ', match.group(0))
    return re.sub(r'//[^\n]*|/\*.*?\*/|"(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])\'|^#[^\n]*|FIRSTDEW_TOKENS\([^;]*;', blank, text, flags=re.S | re.M)


def enums():
    """Members of every enumeration of core, by its name; a name that is used twice with other members is left out."""
    found = {}
    for header in (SOURCE / 'core').rglob('*.h'):
        for name, body in re.findall(r'enum class (\w+)[^{;]*\{([^}]*)\}', blanked(header.read_text(encoding='utf-8'))):
            members = re.findall(r'(\w+)\s*(?:=[^,]*)?(?:,|$)', body.strip())
            found[name] = members if found.get(name, members) == members else []
    return found


SWAPPED = {'<': '<=', '<=': '<', '>': '>=', '>=': '>', '==': '!=', '!=': '==', '&&': '||', '||': '&&', '+': '-', '-': '+'}
STATEMENT = re.compile(r'\s+(?:[\w.\->\[\]*]+ [-+*]?= [^;]*|(?:\+\+|--)[\w.\->]+|(?!return|throw|using|static_assert)[\w.\->:]+\([^;]*\));\s*$')


def ways(line, before, members):
    """Every way to break this line: (what is done, the line after)."""
    for match in re.finditer(r'(?<= )(<|<=|>|>=|==|!=|&&|\|\||\+|-)(?= )', line):
        yield 'operator', line[:match.start()] + SWAPPED[match.group()] + line[match.end():]
    for match in re.finditer(r"(?<![\w.'])\d[\d']*(?![\w.'])", line):
        for change in (1, -1):
            value = int(match.group().replace("'", '')) + change
            if value >= 0:
                yield 'constant', line[:match.start()] + str(value) + line[match.end():]
    for match in re.finditer(r'(?<![\w)])!(?=[\w(])', line):
        yield 'negation', line[:match.start()] + line[match.end():]
    for match in re.finditer(r'\b(\w+)::(\w+)\b', line):
        names = members.get(match.group(1), [])
        if match.group(2) in names and not line.lstrip().startswith('case '):
            other = names[(names.index(match.group(2)) + 1) % len(names)]
            yield 'enumerator', line[:match.start(2)] + other + line[match.end(2):]
    if STATEMENT.match(line) and before.rstrip().endswith((';', '{', '}', ')', 'else', ':')):
        yield 'statement', re.match(r'\s*', line).group() + ';'


def candidates(headers):
    """(file, line number, what, line before, line after) of all there is to break, one list a line."""
    members = enums()
    out = []
    for folder in JUDGES:
        for file in sorted((SOURCE / 'core' / folder).glob('*.*')):
            if file.suffix not in (('.cpp', '.h') if headers else ('.cpp',)):
                continue
            text = file.read_text(encoding='utf-8')
            lines, bare = text.split('\n'), blanked(text).split('\n')
            for n, line in enumerate(bare):
                if re.match(r'\s*(using|namespace|template|enum|#)', line):
                    continue
                found = []
                for what, after in ways(line, bare[n - 1] if n else '', members):
                    # Blanks stand where the text was: put the change, and only that, into the real line.
                    start = len(os.path.commonprefix([line, after]))
                    end = len(os.path.commonprefix([line[start:][::-1], after[start:][::-1]]))
                    changed = lines[n][:start] + after[start:len(after) - end] + lines[n][len(line) - end:]
                    found.append((what, after if what == 'statement' else changed))
                if found:
                    out.append((file.relative_to(SOURCE), n + 1, lines[n], found))
    return out


def mirror(source, target):
    """Makes target like source, and leaves alone what is like it already, so that it is not built again."""
    if source.is_file():
        if not target.exists() or target.read_bytes() != source.read_bytes():
            target.parent.mkdir(parents=True, exist_ok=True)
            shutil.copyfile(source, target)
        return
    names = {entry.name for entry in source.iterdir() if entry.name != '__pycache__'} if source.exists() else set()
    for gone in {entry.name for entry in target.iterdir()} - names if target.is_dir() else set():
        (shutil.rmtree if (target / gone).is_dir() else Path.unlink)(target / gone)
    for name in names:
        mirror(source / name, target / name)


class Worker:
    """A copy of the tree with a build of its own."""

    def __init__(self, number):
        self.tree = BUILD / str(number)
        self.build = self.tree / 'build' / 'test'  # as deep as the real one, so that a compiler cache knows what is whole
        for part in PARTS:
            mirror(SOURCE / part, self.tree / part)
        subprocess.run(['cmake', '-S', self.tree, '-B', self.build, '-G', 'Ninja', '-DCMAKE_BUILD_TYPE=Debug', '-DFIRSTDEW_APP=OFF',
                        '-DCMAKE_CXX_FLAGS_DEBUG=-O0', *(['-DCMAKE_EXE_LINKER_FLAGS=-fuse-ld=mold'] if shutil.which('mold') else [])],
                       check=True, stdout=subprocess.DEVNULL)
        programs = sorted({f'test_{judge}' for judges in JUDGES.values() for judge in judges})
        subprocess.run(['ninja', '-C', self.build, '-j2', *programs], check=True, stdout=subprocess.DEVNULL)
        for judge in JUDGES:
            if not self.judged(judge):
                raise SystemExit(f'mutate.py: test_{judge} fails on the unbroken tree')

    def judged(self, judge):
        """Whether this test program passes: True, False, or None where it cannot be built."""
        program = f'test_{judge}'
        # A broken line is of no use in a compiler cache.
        if subprocess.run(['ninja', '-C', self.build, '-j2', program], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
                          env={**os.environ, 'CCACHE_DISABLE': '1'}).returncode:
            return None
        path = next(p for p in self.build.rglob(program) if p.is_file() and os.access(p, os.X_OK))

        def bounded():
            resource.setrlimit(resource.RLIMIT_CPU, (TOO_LONG_S, TOO_LONG_S))
            resource.setrlimit(resource.RLIMIT_AS, (TOO_LARGE, TOO_LARGE))
        return subprocess.run([path, '--abort'], cwd=self.build, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
                              preexec_fn=bounded).returncode == 0

    def breaks(self, file, number, after):
        """The program that notices, '' if none does, None where the line does not compile."""
        path = self.tree / file
        whole = path.read_text(encoding='utf-8')
        lines = whole.split('\n')
        lines[number - 1] = after
        path.write_text('\n'.join(lines), encoding='utf-8')
        try:
            for judge in JUDGES[file.parts[1]]:
                passed = self.judged(judge)
                if passed is None:
                    return None
                if not passed:
                    return f'test_{judge}'
            return ''
        finally:
            path.write_text(whole, encoding='utf-8')


def argued():
    """Reasons by (file, broken line) as argued.txt has them: three lines each, and an empty one."""
    out = {}
    for block in (Path(__file__).parent / 'argued.txt').read_text(encoding='utf-8').split('\n\n'):
        lines = [line for line in block.split('\n') if line and not line.startswith('#')]
        if len(lines) == 3:
            out[lines[0].strip(), lines[1].strip()] = lines[2].strip()
    return out


def name_of(one):
    file, number, _, (_, after) = one
    return f'{file}:{number} {after.strip()}'


def outcome(one, noticed, reasons):
    file, number, line, (what, after) = one
    text = f'{"caught by " + noticed if noticed else "SURVIVED":26} {file}:{number} {what}'
    if not noticed:
        reason = reasons.get((str(file), after.strip()), 'nobody has said why this makes no difference')
        text += f'\n      was: {line.strip()}\n      now: {after.strip()}\n      {reason}'
    return text


def main():
    ask = argparse.ArgumentParser()
    ask.add_argument('--seed', type=int, default=27)
    ask.add_argument('--count', type=int, default=100)
    ask.add_argument('--jobs', type=int, default=os.cpu_count())
    ask.add_argument('--headers', action='store_true', help='lines of headers as well')
    ask.add_argument('--again', action='store_true', help='what the last run caught stands')
    ask.add_argument('--only', help='FILE:LINE, every way to break that line')
    given = ask.parse_args()
    began = time.monotonic()
    pool = candidates(given.headers or given.only)
    chance = random.Random(given.seed)
    if given.only:
        file, number = given.only.rsplit(':', 1)
        drawn = [(f, n, line, way) for f, n, line, found in pool if (str(f), str(n)) == (file, number) for way in found]
        given.count = len(drawn)
    else:
        chance.shuffle(pool)
        drawn = [(f, n, line, chance.choice(found)) for f, n, line, found in pool]
    reasons = argued()
    BUILD.mkdir(parents=True, exist_ok=True)
    caught_list = BUILD / 'caught.json'
    known = json.loads(caught_list.read_text(encoding='utf-8')) if given.again and caught_list.exists() else {}
    kept = open(BUILD / 'last.txt', 'w', encoding='utf-8')

    def say(text):
        for to in (kept, sys.stdout):
            print(text, file=to, flush=True)
    free = queue.Queue()
    for number in range(given.jobs):
        free.put(Worker(number))

    def judge(one):
        file, number, _, (_, after) = one
        if name_of(one) in known:
            return known[name_of(one)]
        worker = free.get()
        try:
            return worker.breaks(file, number, after)
        finally:
            free.put(worker)

    done = []
    rest = iter(drawn)
    with concurrent.futures.ThreadPoolExecutor(given.jobs) as threads:
        while len(done) < given.count:
            batch = [one for _, one in zip(range(given.count - len(done)), rest)]
            if not batch:
                break
            for one, noticed in zip(batch, threads.map(judge, batch)):
                if noticed is None:
                    continue
                done.append((one, noticed))
                if noticed:
                    known[name_of(one)] = noticed
                    caught_list.write_text(json.dumps(known, indent=1), encoding='utf-8')
                say(outcome(one, noticed, reasons))
    caught = sum(1 for _, noticed in done if noticed)
    say(f'{len(done)} lines broken of {len(pool)} that can be, seed {given.seed}: {caught} caught, {len(done) - caught} survived '
          f'({time.monotonic() - began:.0f} s)')
    return 0 if done and caught >= SHARE * len(done) else 1


if __name__ == '__main__':
    sys.exit(main())
