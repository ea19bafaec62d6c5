#!/usr/bin/python3
"""A person's errors of reporting, against hidden Markov models in R (package msm). Invented people have a session every
twelfth day and say every day how the skin feels, each with one of the sets of errors. Their diaries go through `import`,
and `outlook` says which set it has come to.

Usage: reporting_against_r.py PATH-OF-FIRSTDEW-CLI
"""
import datetime
import math
import os
import pathlib
import random
import subprocess
import sys
import unittest

import invented

HERE = pathlib.Path(__file__).resolve().parent
CLI = os.path.abspath(sys.argv.pop(1)) if len(sys.argv) > 1 else 'firstdew-cli'
# Said clammy on dry skin, said dry on clammy skin, and the set's chance at first.
SETS = ((0.02, 0.10, 0.84), (0.06, 0.10, 0.10), (0.01, 0.05, 0.04), (0.02, 0.25, 0.02))
PEOPLE = 2 # of each set
SPELLS, GAP = 50, 12
LEVELS = ('dry', 'clammy', 'wet')
FIRST = datetime.date(2024, 1, 1)


def spoken(number, wrong, missed):
    """What is said on the days after each session: 0 dry, 1 clammy, 2 wet."""
    rng = random.Random(number)
    says = ((1 - wrong, wrong * 0.75, wrong * 0.25), (missed, (1 - missed) * 0.83, (1 - missed) * 0.17), (0.02, 0.13, 0.85))
    out = []
    for _ in range(SPELLS):
        ends = 8 * (-math.log(1 - rng.random()) / math.log(2)) ** (1 / 3)
        state, said = 0, []
        for day in range(1, GAP + 1):
            if state == 1 and rng.random() < 0.25:
                state = 2
            if state == 0 and day >= ends:
                state = 1
            said.append(rng.choices((0, 1, 2), says[state])[0])
        out.append(said)
    return out


def diary(spells):
    """Check-ins at noon, and a session on the evening of each last day. Gives the diary and the last day."""
    out, day = invented.Diary(FIRST), FIRST
    out.session(FIRST)
    for said in spells:
        for level in said:
            day += datetime.timedelta(days=1)
            out.check_in(day, LEVELS[level])
        out.session(day)
    return out, day


class AgainstR(unittest.TestCase):
    def errors(self, spells):
        kept, today = diary(spells)
        return kept.outlook(CLI, today)['errors']

    def test_the_set_that_wins_is_the_one_that_r_finds_most_likely(self):
        people = [(i, spoken(10 * i + n, *SETS[i][:2])) for i in range(len(SETS)) for n in range(PEOPLE)]
        rows = ['set,spell,day,said']
        for number, (_, spells) in enumerate(people):
            for i, said in enumerate(spells):
                rows += [f'{number},{i},{day},{level + 1}' for day, level in enumerate([0] + said)]
        done = subprocess.run(['Rscript', '--vanilla', HERE / 'reporting_against_r.R'], input='\n'.join(rows) + '\n',
                              capture_output=True, text=True, check=True)
        theirs = [[float(x) for x in line.split(',')] for line in done.stdout.splitlines()]
        self.assertEqual(len(theirs), len(people))
        decided = 0
        for number, ((truth, spells), logliks) in enumerate(zip(people, theirs)):
            weights = [math.exp(l - max(logliks)) * s[2] for l, s in zip(logliks, SETS)]
            chances = [w / sum(weights) for w in weights]
            ours = self.errors(spells)
            with self.subTest(person=number, truth=truth, ours=ours, chances=chances):
                for name, at in (('false_calm', 0), ('missed', 1)):
                    mean = sum(c * s[at] for c, s in zip(chances, SETS))
                    span = max(s[at] for s in SETS) - min(s[at] for s in SETS)
                    # R knows the chances of dampness from all spells, ours by each spell those before it.
                    self.assertAlmostEqual(ours[name], mean, delta=0.2 * span)
                decided += max(chances) > 0.9
        self.assertGreaterEqual(decided, len(people) // 2)
        print(f'{decided} of {len(people)} people with a set of more than nine tenths')


if __name__ == '__main__':
    unittest.main()
