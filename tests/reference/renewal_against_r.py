#!/usr/bin/python3
"""When to treat while still dry, against R's optimize and integrate: age replacement (Barlow & Hunter, Operations
Research 1960;8:90-100) with the Weibull that `firstdew-cli fit` finds in invented intervals.

Usage: renewal_against_r.py PATH-OF-FIRSTDEW-CLI
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
SETS = 12
COSTS = (0.5, 1, 2, 5)


def intervals(number):
    """Invented times of shape 1.5 to 6, seen on the next whole day."""
    rng = random.Random(number)
    median, shape = rng.uniform(3, 40), rng.uniform(1.5, 6)
    times = [median * (-math.log(1 - rng.random()) / math.log(2)) ** (1 / shape) for _ in range(60)]
    return [(math.floor(t), math.floor(t) + 1) for t in times]


class AgainstR(unittest.TestCase):
    def test_the_age_and_its_cost_are_those_of_r(self):
        rows, ours = ['shape,scale,damp,age'], []
        with tempfile.TemporaryDirectory() as folder:
            for number in range(SETS):
                path = pathlib.Path(folder) / f'{number}.csv'
                path.write_text('left,right\n' + ''.join(f'{a},{b}\n' for a, b in intervals(number)), encoding='utf-8')
                for damp in COSTS:
                    done = subprocess.run([CLI, '--json', 'fit', path, '--family', 'weibull', '--return-cost', str(damp)],
                                          capture_output=True, text=True, check=True)
                    answer = json.loads(done.stdout)
                    ours.append(answer['replacement'])
                    estimate = answer['estimate']
                    rows.append(f"{estimate['shape']!r},{estimate['scale']!r},{damp},{ours[-1]['age']}")
        done = subprocess.run(['Rscript', '--vanilla', HERE / 'renewal_against_r.R'], input='\n'.join(rows) + '\n',
                              capture_output=True, text=True, check=True)
        theirs = [[float(x) for x in line.split(',')] for line in done.stdout.splitlines()]
        self.assertEqual(len(theirs), len(ours))
        worst = 0
        for row, mine, (best_age, best_cost, before, at, after) in zip(rows[1:], ours, theirs):
            with self.subTest(row):
                worst = max(worst, abs(mine['rate'] / at - 1))
                self.assertLess(abs(mine['rate'] / at - 1), 1e-4)
                self.assertGreaterEqual(at, best_cost * (1 - 1e-9))
                self.assertLessEqual(at, min(before, after) * (1 + 1e-9))
                self.assertLessEqual(abs(mine['age'] - best_age), 1)
        print(f'{len(ours)} decisions; greatest relative difference of the cost: {worst:.2g}')


if __name__ == '__main__':
    unittest.main()
