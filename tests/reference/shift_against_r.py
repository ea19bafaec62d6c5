#!/usr/bin/python3
"""That dry spells are getting shorter, against a permutation test in R. Invented people treat when dampness shows; half of
them have spells that halve. Their diaries go through `import`, and `outlook` says what was found.

Usage: shift_against_r.py PATH-OF-FIRSTDEW-CLI
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
PEOPLE = 20 # of each kind
BEFORE, AFTER = 16, 9 # spells
FIRST = datetime.date(2024, 1, 1)


def spells(number, changes):
    rng = random.Random(number)
    median, shape = rng.uniform(6, 16), rng.uniform(2.5, 4)
    return [max(1, math.ceil(median * (0.5 if changes and i >= BEFORE else 1) *
                             (-math.log(1 - rng.random()) / math.log(2)) ** (1 / shape))) for i in range(BEFORE + AFTER)]


def diary(days):
    """A session on the evening of each damp day, and a check-in every day. Gives the diary and the last day."""
    out, day = invented.Diary(FIRST), FIRST
    out.session(day)
    for length in days:
        for ago in range(1, length + 1):
            out.check_in(day + datetime.timedelta(days=ago), 'dry' if ago < length else 'clammy')
        day += datetime.timedelta(days=length)
        out.session(day)
    return out, day


class AgainstR(unittest.TestCase):
    def found(self, days):
        kept, today = diary(days)
        return kept.outlook(CLI, today)['shortening']

    def test_what_is_found_is_what_r_finds(self):
        sets = [spells(number, changes) for changes in (True, False) for number in range(PEOPLE)]
        rows = ['set,days'] + [f'{i},{d}' for i, days in enumerate(sets) for d in days]
        done = subprocess.run(['Rscript', '--vanilla', HERE / 'shift_against_r.R'], input='\n'.join(rows) + '\n',
                              capture_output=True, text=True, check=True)
        theirs = [[float(x) for x in line.split(',')] for line in done.stdout.splitlines()]
        self.assertEqual(len(theirs), len(sets))
        count = {True: 0, False: 0}
        for i, (days, (difference, before, p)) in enumerate(zip(sets, theirs)):
            ours = self.found(days)
            changed = i < PEOPLE
            with self.subTest(person=i, ours=ours, p=p):
                count[changed] += ours['since'] is not None
                if ours['since']:
                    self.assertLess(difference, 0)
                    self.assertLess(p, 0.1)  # the two tests weigh the spells differently
                    self.assertLess(ours['now'], ours['before'])
                    # The same spell, give or take four.
                    since = (datetime.date.fromisoformat(ours['since']) - FIRST).days
                    mine = [sum(days[:n]) for n in range(len(days))].index(since)
                    self.assertLessEqual(abs(mine - before), 4)
                elif p < 0.002:
                    self.assertGreater(difference, math.log(0.6))
        self.assertGreaterEqual(count[True], 0.8 * PEOPLE)
        self.assertLessEqual(count[False], 0.1 * PEOPLE)
        print(f'found: {count[True]} of {PEOPLE} with a change, {count[False]} of {PEOPLE} without')


if __name__ == '__main__':
    unittest.main()
