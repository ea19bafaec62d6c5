#!/usr/bin/python3
"""How long a spell holds by the dose before it, against R's survreg: an accelerated failure time whose power is held at
a half (an offset there, `--dose-power` here), and the power that R finds most likely.

Usage: dose_against_r.py PATH-OF-FIRSTDEW-CLI
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
FAMILIES = ('weibull', 'lognormal')


def spells(number):
    """Invented spells, seen on the next whole day, some topped up while still dry."""
    rng = random.Random(number)
    median, shape, power = rng.uniform(5, 25), rng.uniform(2, 5), rng.choice((0, 0.5, 1))
    out = []
    for _ in range(40):
        dose = rng.choice((0.25, 0.5, 1, 1, 1, 1.5))
        time = median * dose ** power * (-math.log(1 - rng.random()) / math.log(2)) ** (1 / shape)
        stop = math.ceil(rng.uniform(0.5, 3) * median)
        out.append((math.floor(time), math.floor(time) + 1, dose) if time < stop else (stop, None, dose))
    return out


class AgainstR(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = pathlib.Path(folder.name)

    def fit(self, rows, family, power):
        path = self.folder / 'spells.csv'
        path.write_text('left,right,dose\n' + ''.join(f"{a},{'' if b is None else b},{d}\n" for a, b, d in rows), encoding='utf-8')
        done = subprocess.run([CLI, '--json', 'fit', path, '--family', family, '--dose-power', repr(power)],
                              capture_output=True, text=True, check=True)
        return json.loads(done.stdout)

    def test_the_fit_with_doses_is_that_of_r(self):
        sets = [spells(number) for number in range(SETS)]
        rows = ['set,left,right,dose'] + [f"{i},{a},{'' if b is None else b},{d}" for i, s in enumerate(sets) for a, b, d in s]
        done = subprocess.run(['Rscript', '--vanilla', HERE / 'dose_against_r.R'], input='\n'.join(rows) + '\n',
                              capture_output=True, text=True, check=True)
        theirs = [[float(x) for x in line.split(',')] for line in done.stdout.splitlines()]
        self.assertEqual(len(theirs), SETS * len(FAMILIES))
        for n, (location, log_scale, loglik, power, best) in enumerate(theirs):
            rows, family = sets[n // len(FAMILIES)], FAMILIES[n % len(FAMILIES)]
            with self.subTest(set=n // len(FAMILIES), family=family):
                held = self.fit(rows, family, 0.5)
                estimate = held['estimate']
                ours = ((math.log(estimate['scale']), -math.log(estimate['shape'])) if family == 'weibull'
                        else (estimate['meanlog'], math.log(estimate['sdlog'])))
                self.assertAlmostEqual(ours[0], location, delta=1e-4)
                self.assertAlmostEqual(ours[1], log_scale, delta=1e-4)
                self.assertAlmostEqual(held['loglik'], loglik, delta=1e-4)
                # No power tells these spells better than the one that R found.
                self.assertAlmostEqual(self.fit(rows, family, power)['loglik'], best, delta=1e-4)
                for beside in (power - 0.2, power + 0.2):
                    self.assertLess(self.fit(rows, family, beside)['loglik'], best)


if __name__ == '__main__':
    unittest.main()
