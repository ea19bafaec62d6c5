#!/usr/bin/python3
"""Is a shorter session enough, against R's survreg: the ratio of `firstdew-cli fit --shorter`, its limits and its answer
over invented comparisons, and the power that is stated for them.

Usage: comparison_against_r.py PATH-OF-FIRSTDEW-CLI
"""
import json
import math
import os
import pathlib
import random
import subprocess
import sys
import tempfile
import unittest

HERE = pathlib.Path(__file__).resolve().parent
CLI = os.path.abspath(sys.argv.pop(1)) if len(sys.argv) > 1 else 'firstdew-cli'
PEOPLE = 150
PAIRS, SHAPE, MEDIAN, MISSED = 8, 3, 10, 0.15
STATED = 0.83  # share in which a ratio of 0.6 is found after 16 spells
LIMIT = 1.959963984540054


def spells(ratio, seed, topped_up=0.0):
    """Invented spells in random pairs, told on days with a check-in; some topped up while still dry."""
    rng, out = random.Random(seed), []
    for _ in range(PAIRS):
        for shorter in rng.sample((0, 1), 2):
            time = MEDIAN * (ratio if shorter else 1) * (-math.log(1 - rng.random()) / math.log(2)) ** (1 / SHAPE)
            stop = rng.randrange(4, 15) if rng.random() < topped_up else 1000
            left, right, day = 0, None, 0
            while right is None and day < stop:
                day += 1
                if rng.random() >= MISSED:
                    left, right = (left, day) if day >= time else (day, None)
            out.append((left, right, shorter))
    return out


def in_r(sets):
    rows = ['set,left,right,shorter'] + [f"{i},{a},{'' if b is None else b},{s}" for i, one in enumerate(sets) for a, b, s in one]
    done = subprocess.run(['Rscript', '--vanilla', HERE / 'comparison_against_r.R'], input='\n'.join(rows) + '\n',
                          capture_output=True, text=True, check=True)
    return [[float(x) for x in line.split(',')] for line in done.stdout.splitlines()]


class AgainstR(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = pathlib.Path(folder.name)

    def ours(self, rows):
        path = self.folder / 'spells.csv'
        path.write_text('left,right,shorter\n' + ''.join(f"{a},{'' if b is None else b},{s}\n" for a, b, s in rows), encoding='utf-8')
        done = subprocess.run([CLI, '--json', 'fit', path, '--family', 'weibull', '--shorter'], capture_output=True, text=True, check=True)
        return json.loads(done.stdout)

    def compare(self, sets):
        """Each set in both; returns the answers of R."""
        answers = in_r(sets)
        self.assertEqual(len(answers), len(sets))
        worst = 0
        for rows, (ratio, loglik, low, high, median, root) in zip(sets, answers):
            mine = self.ours(rows)
            for got, want in ((math.log(mine['ratio']), ratio), (mine['loglik'], loglik), (math.log(mine['limits'][0]), low),
                              (math.log(mine['limits'][1]), high), (math.log(mine['usual_median']), math.log(median))):
                self.assertAlmostEqual(got, want, delta=1e-4)
                worst = max(worst, abs(got - want))
            self.assertEqual(mine['plainly_less'], root < -3.3)
            as_long, less = math.exp(low) >= 0.7, high < 0
            self.assertEqual(mine['answer'], 'as-long' if as_long else 'less' if less else 'not-told')
            self.assertEqual(mine['limits'][1] < 1, root < -LIMIT)
        print(f'{len(sets)} comparisons; greatest difference {worst:.2g}')
        return answers

    def test_the_ratio_its_limits_and_the_answer_are_those_of_r(self):
        self.compare([spells(ratio, 100 * n + int(10 * ratio), 0.4) for n in range(12) for ratio in (0.5, 0.7, 1, 1.3)])

    def test_the_power_stated_is_that_of_survreg(self):
        answers = self.compare([spells(0.6, n) for n in range(PEOPLE)])
        found = sum(root < -LIMIT for *_, root in answers) / PEOPLE
        print(f'a ratio of 0.6 is found in {found:.1%} of {PEOPLE} comparisons of {2 * PAIRS} spells')
        self.assertAlmostEqual(found, STATED, delta=3 * math.sqrt(STATED * (1 - STATED) / PEOPLE))


if __name__ == '__main__':
    unittest.main()
