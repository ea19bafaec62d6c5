#!/usr/bin/python3
"""What the tests left open in the decisions of the rules, from what llvm-cov exports.

Usage: decisions.py EXPORT.json REASONS.txt
A condition is left open if it was never true, never false, or, among others in one decision, never turned it alone.
Prints each that is left open with its line, and the shares of each folder. REASONS.txt names what cannot be reached,
one a line: FILE | CONDITION | WHAT IS OPEN | REASON. Exit 0 only if it names all that is open and nothing else."""
import collections
import json
import sys
from pathlib import Path

SOURCE = Path(__file__).resolve().parents[2]
FOLDERS = ('diary', 'protocol', 'bath', 'situation')
TRUE, FALSE, ALONE = 'never true', 'never false', 'never alone'


def of_rules(function):
    """Whether that is a function of the folders that are judged."""
    return any(Path(function['filenames'][0]).is_relative_to(SOURCE / 'core' / folder) for folder in FOLDERS)


PART = 6  # what llvm calls a condition that is one of several in a decision


def conditions(function):
    """Conditions of one function: (file, from, to), how often it was true and false, and whether it is one of several."""
    whole = [record[:4] for record in function.get('mcdc_records', [])]
    for from_line, from_column, to_line, to_column, true, false, file, _, kind in function['branches']:
        if [from_line, from_column, to_line, to_column] not in whole:
            place = function['filenames'][file], (from_line, from_column), (to_line, to_column)
            yield place, true, false, kind == PART


def decisions(function):
    """Decisions of one function with several conditions: (file, from, to), then whether each turned it alone."""
    for from_line, from_column, to_line, to_column, *_, turned in function.get('mcdc_records', []):
        yield (function['filenames'][0], (from_line, from_column), (to_line, to_column)), turned


class Seen:
    """What was seen of all conditions. A function that the compiler made several times counts once. That a switch meets
    a value of which it names no case is not asked: the compiler sees to it that every value is named."""

    def __init__(self, functions):
        self.true, self.false, self.alone = collections.Counter(), collections.Counter(), {}
        for function in filter(of_rules, functions):
            inside = []
            for place, true, false, part in conditions(function):
                self.true[place] += true
                self.false[place] += false
                inside += [place] * part
            for (file, begin, end), turned in decisions(function):
                parts = sorted(p for p in inside if p[0] == file and begin <= p[1] and p[2] <= end)
                if len(parts) != len(turned):
                    raise ValueError(f'{file}:{begin[0]}: {len(turned)} conditions counted, {len(parts)} found')
                for place, one in zip(parts, turned):
                    self.alone[place] = self.alone.get(place, False) or one

    def judged(self):
        """(place, what, whether it was seen) of everything that is asked."""
        for place in sorted(self.true):
            if is_switch(place):
                continue
            yield place, TRUE, self.true[place] > 0
            yield place, FALSE, self.false[place] > 0
            if place in self.alone:
                yield place, ALONE, self.alone[place]


def is_switch(place):
    file, (line, begin), _ = place
    return Path(file).read_text(encoding='utf-8').splitlines()[line - 1][:begin - 1].rstrip().endswith('switch (')


def text_of(place):
    """The condition as the source has it, in one line."""
    file, (first, begin), (last, end) = place
    lines = Path(file).read_text(encoding='utf-8').splitlines()[first - 1:last]
    lines[-1] = lines[-1][:end - 1]
    lines[0] = lines[0][begin - 1:]
    return ' '.join(' '.join(lines).split())


def reasons(path):
    """How often each condition is excused."""
    out = collections.Counter()
    for line in path.read_text(encoding='utf-8').splitlines():
        if line and not line.startswith('#'):
            file, condition, what, reason = line.split(' | ')
            if what not in (TRUE, FALSE, ALONE) or not reason.strip():
                raise ValueError(f'{path}: {line}')
            out[file, condition, what] += 1
    return out


def main():
    export, listed = Path(sys.argv[1]), Path(sys.argv[2])
    seen = Seen(json.loads(export.read_text(encoding='utf-8'))['data'][0]['functions'])
    excused = reasons(listed)
    asked, reached, wrong = collections.Counter(), collections.Counter(), 0
    for place, what, was in seen.judged():
        file = Path(place[0]).resolve().relative_to(SOURCE)
        kind = 'alone' if what == ALONE else 'outcome'
        asked[file.parts[1], kind] += 1
        reached[file.parts[1], kind] += was
        if was:
            continue
        key = str(file), text_of(place), what
        said = excused[key] > 0
        excused[key] -= 1
        wrong += not said
        print(f'{"reasoned" if said else "OPEN":8}  {file}:{place[1][0]}  {what}: {key[1]}')
    for key, count in excused.items():
        for _ in range(count):
            wrong += 1
            print('NOT OPEN, yet excused:', ' | '.join(key))
    for folder in FOLDERS:
        print(f'core/{folder}:', ', '.join(
            f'{reached[folder, kind]} of {asked[folder, kind]} {name} ({100 * reached[folder, kind] / asked[folder, kind]:.1f} %)'
            for kind, name in (('outcome', 'outcomes of conditions'), ('alone', 'conditions turned their decision alone'))))
    return 1 if wrong else 0


if __name__ == '__main__':
    sys.exit(main())
