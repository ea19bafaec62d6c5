#!/usr/bin/python3
"""What the outlook forecasts, against people who are simulated here, in plain Python, without a line of the app's own rehearsal.
Their diaries go through `import`, and `outlook` is asked as a script would ask it. The simulator knows when each dry spell
would have ended, also those that a session ended before.

Usage: people_against_forecast.py PATH-OF-FIRSTDEW-CLI                       the small test
       people_against_forecast.py PATH-OF-FIRSTDEW-CLI --large [PEOPLE]      a table of all worlds, as in core/outlook/COSTS.md
All numbers of the people are invented, in the range of common practice.
"""
import concurrent.futures
import dataclasses
import datetime
import math
import os
import random
import sys
import unittest

import invented

CLI = os.path.abspath(sys.argv.pop(1)) if len(sys.argv) > 1 else 'firstdew-cli'
FIRST = datetime.date(2023, 1, 2)
WARM_UP = 6  # spells before the first question: somebody whose rhythm nobody can know yet


@dataclasses.dataclass
class World:
    times: str = 'weibull'
    calm: float = 0.02  # dry days reported clammy
    stirred: float = 0.15  # the same on days with heat or exertion
    missed: float = 0.10  # clammy days reported dry
    gaps: float = 0.15  # days without a check-in
    hot: float = 0.0  # days in runs of hot days, of which the diary knows nothing; half of the dry ones feel clammy
    season: float = 0.0
    ar1: float = 0.0
    weekends: float = 0.0
    takes: float = 0.8  # a session on damp skin dries it


WORLDS = {
    'default': World(),
    'false reports on 6 % of calm and 30 % of stirred days': World(calm=0.06, stirred=0.30),
    'hot runs, 10 % of days': World(hot=0.10),
    'gamma times': World(times='gamma'),
    'log-logistic times': World(times='log-logistic'),
    'AR(1) of 0.7': World(ar1=0.7),
    'season of 0.5': World(season=0.5),
    'combined': World(hot=0.05, season=0.3, ar1=0.5, weekends=0.2),
}


class Person:
    def __init__(self, world, number):
        self.world, self.dice = world, random.Random(f'{number} {world}')
        self.median = 10 * math.exp(self.dice.gauss(0, 0.6))
        self.shape = 3 * math.exp(self.dice.gauss(0, 0.25))
        self.phase = self.dice.uniform(0, 2 * math.pi)
        self.session_first = self.dice.random() < 0.5  # before the check-in of the day
        self.drift = self.dice.gauss(0, 0.2)
        self.hot_until = -1

    def spell(self, day):
        """Days until dampness begins after a session on that day."""
        w = self.world
        self.drift = w.ar1 * self.drift + self.dice.gauss(0, 0.2 * math.sqrt(1 - w.ar1 ** 2))
        median = self.median * (1 + w.season * math.sin(2 * math.pi * day / 365 + self.phase))
        if w.ar1:
            median *= math.exp(self.drift)
        u = self.dice.random()
        if w.times == 'weibull':
            return median * (-math.log(1 - u) / math.log(2)) ** (1 / self.shape)
        # The spread of the Weibull of that shape: its coefficient of variation.
        first, second = (math.gamma(1 + k / self.shape) for k in (1, 2))
        variance = second / first ** 2 - 1
        if w.times == 'gamma':
            k = 1 / variance
            return median * self.dice.gammavariate(k, 1) / (k - 1 / 3 + 0.03 / k)  # divided by its median, nearly
        sigma = math.sqrt(math.log(1 + variance))
        return median * (u / (1 - u)) ** (sigma * math.sqrt(3) / math.pi)

    def said(self, day, damp):
        """The check-in of that day, or None."""
        w, dice = self.world, self.dice
        weekend = date(day).weekday() >= 5
        if day > self.hot_until and dice.random() < w.hot / 4:
            self.hot_until = day + 3
        if dice.random() < w.gaps + (w.weekends if weekend else 0):
            return None
        stirred = dice.random() < 0.10
        if damp:
            level = 'dry' if dice.random() < w.missed else 'clammy'
        else:
            false = w.stirred if stirred else w.calm
            if day <= self.hot_until:
                false = max(false, 0.5)
            level = 'clammy' if dice.random() < false else 'dry'
        return level, ['heat'] if stirred else []


@dataclasses.dataclass
class Asked:
    """What was said on the evening after a session, in days from then, and what was true."""
    length: float  # days until dampness begins
    dried: bool  # by that session
    earliest: int  # of the interval of 80 %
    latest: float
    chances: list  # (days ahead, chance that dampness has begun)


def asked(said, day, length, dried):
    def ahead(date):
        return (datetime.date.fromisoformat(date) - FIRST).days - day
    dates = said['forecast']
    return Asked(length, dried, ahead(dates['0.1']), ahead(dates['0.9']) if dates.get('0.9') else math.inf,
                 [(ahead(c['date']), c['begun']) for c in said['next_days']])


def date(day):
    return FIRST + datetime.timedelta(days=day)


def life(world, number, days):
    person = Person(world, number)
    diary = invented.Diary(FIRST)
    diary.session(FIRST)
    start, spells, damp, out = 0, 0, False, []
    while start < days:
        dried = not damp or person.dice.random() < world.takes
        length = person.spell(start) if dried else 0.5
        damp_from = start + math.ceil(length)  # dampness has begun by the check-in of that day
        spells += 1
        if spells > WARM_UP:
            out.append(asked(diary.outlook(CLI, date(start)), start, length, dried))
        # Half of the spells are topped up on a day that knows nothing of their end.
        topped = start + 1 + person.dice.randrange(max(2, round(2 * person.median))) if person.dice.random() < 0.5 else math.inf
        day = start
        treats = False
        while not treats and day < start + 400:
            day += 1
            damp = day >= damp_from
            report = person.said(day, damp)
            # Who sees dampness reports it and then treats; a session that was planned may come before the check-in.
            before = person.session_first and day >= topped
            treats = day >= topped or (damp and report is not None and report[0] == 'clammy')
            if before and report:
                report = ('dry', report[1])
            if treats and before:
                diary.session(date(day), 18)
            if report:
                diary.check_in(date(day), *report, hour=20)
            if treats and not before:
                diary.session(date(day), 21)
        start = day
    return out


def lives(world, people, days):
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        return [a for of_one in pool.map(lambda number: life(world, number, days), range(people)) for a in of_one]


@dataclasses.dataclass
class Verdict:
    """Shares of all. A spell has one chance of 10 at most to end on a day before the interval, and one to end after it. The dates
    are told for a session that dried the skin, the chances for any."""
    spells: int
    early: float
    late: float
    told: float
    came: float


def judge(spells, stretch=1.0):
    """`stretch` pretends that all spells were so much longer than they were."""
    dried = [a for a in spells if a.dried]
    ends = [math.ceil(a.length * stretch) for a in dried]
    chances = [(p, math.ceil(a.length * stretch if a.dried else a.length) <= ahead) for a in spells for ahead, p in a.chances]
    return Verdict(len(dried), sum(end < a.earliest for end, a in zip(ends, dried)) / len(dried),
                   sum(end > a.latest for end, a in zip(ends, dried)) / len(dried),
                   sum(p for p, _ in chances) / len(chances), sum(b for _, b in chances) / len(chances))


def right(verdict):
    """Within three standard errors of the binomial; the chances of one spell count as one draw."""
    tail = 0.1 + 3 * math.sqrt(0.1 * 0.9 / verdict.spells)
    apart = 3 * math.sqrt(verdict.told * (1 - verdict.told) / verdict.spells)
    return verdict.early <= tail and verdict.late <= tail and abs(verdict.told - verdict.came) <= apart


class AgainstPeople(unittest.TestCase):
    def test_what_is_forecast_comes_as_often_as_it_was_said(self):
        spells = lives(WORLDS['default'], 10, 300)
        self.assertGreater(len(spells), 150)
        verdict = judge(spells)
        print(verdict)
        self.assertTrue(right(verdict), verdict)
        # The same answers are wrong for people who stay dry for longer or less long than they said.
        for stretch in (0.6, 1.6):
            with self.subTest(stretch=stretch):
                self.assertFalse(right(judge(spells, stretch)), judge(spells, stretch))


if __name__ == '__main__':
    if '--large' in sys.argv:
        people = sys.argv[sys.argv.index('--large') + 1:]
        print('| world | spells | ended before the interval of 80 % | in it | after it | chance told | came |')
        print('| --- | ---: | ---: | ---: | ---: | ---: | ---: |')
        for name, world in WORLDS.items():
            v = judge(lives(world, int(people[0]) if people else 60, 730))
            shares = [v.early, 1 - v.early - v.late, v.late, v.told, v.came]
            print(f'| {name} | {v.spells} | ' + ' | '.join(f'{100 * share:.1f} %' for share in shares) + ' |', flush=True)
    else:
        unittest.main()
