#!/usr/bin/python3
"""Makes the records of people who do not exist, as a nurse would receive them: one JSON file each.

Usage: caseload.py FOLDER [--people N] [--today DATE] [--seed N]
Twelve kinds of histories come in turn, from "not begun" to "a burn that nobody has seen". Everything in them is invented.
"""
import argparse
import datetime
import json
import pathlib
import random

NAMES = ('Ansgar', 'Birke', 'Corvin', 'Dunja', 'Edda', 'Falk', 'Gesche', 'Hauke', 'Imre', 'Jorid', 'Kalle', 'Levke', 'Malte', 'Nele', 'Onno')
ROWS = ('pregnancy', 'powered-implant', 'metal-implant', 'metal-iud', 'heart-rhythm-or-epilepsy', 'tumour-or-thrombosis',
        'loss-of-sensation', 'eczema-at-site', 'large-wound', 'fixed-braces')
SEVEN = (1, 2, 4, 7, 10, 15, 22)


class Person:
    def __init__(self, rng, number, today):
        self.rng, self.today, self.facts = rng, today, []
        self.id = self.draw()
        self.name = f'{NAMES[number % len(NAMES)]} {number + 1}'
        self.add(200, 8, 'person', name=self.name, birth=f'{rng.randint(1960, 2004)}-05-14', adult='')
        self.add(200, 8, 'machine', name='Invented set', direct=True, pulsed=True, swap='leads', remote=False, power='mains')

    def draw(self):
        return ''.join(self.rng.choice('0123456789abcdef') for _ in range(32))

    def add(self, ago, hour, kind, **body):
        when = datetime.datetime.combine(self.today - datetime.timedelta(days=ago), datetime.time(hour))
        self.facts.append({'id': self.draw(), 'person': self.id, 'happened': when.strftime('%Y-%m-%dT%H:%M'),
                           'recorded_ms': int((when - datetime.datetime(1970, 1, 1)).total_seconds() * 1000), 'kind': kind, 'is': body})

    def screened(self, ago, yes=()):
        self.add(ago, 9, 'screening', full=True, asked=list(ROWS), yes=list(yes))

    def course(self, ago, plan='seven', site='hands'):
        self.add(ago, 9, 'course', site=site, plan=plan, days=[], start=str(self.today - datetime.timedelta(days=ago)), free=[])

    def session(self, ago, site='hands', skin=()):
        self.add(ago, 18, 'session', site=site, waveform='direct', comfortable_ma=round(self.rng.uniform(8, 15), 1), completed=True,
                 skin=list(skin), machine='', bath='', note='')

    def check_in(self, ago, level='dry', site='hands'):
        self.add(ago, 12, 'check-in', site=site, level=level, **{'with': []})

    def score(self, ago, score, site='hands'):
        self.add(ago, 10, 'hdss', site=site, score=score)

    def whole_course(self, first_ago, before, after):
        """Seven sessions that began so long ago, judged and gone on from."""
        self.screened(first_ago)
        self.score(first_ago, before)
        self.course(first_ago)
        for day in SEVEN:
            self.session(first_ago - day + 1)
        self.score(first_ago - 22, after)
        self.add(first_ago - 23, 11, 'review-done', site='hands', keep_going=True)

    def document(self):
        facts = sorted(self.facts, key=lambda f: (f['recorded_ms'], f['id']))
        return json.dumps({'format': 'firstdew-record', 'version': 1, 'facts': facts}, indent=1)


def not_begun(p):
    p.add(4, 8, 'site-use', site='hands', in_use=True)
    p.screened(4)


def in_course(p):
    p.screened(5)
    p.course(5)
    for ago in (5, 4, 2):
        p.session(ago)
    p.check_in(1, 'clammy')


def stopped_in_course(p):
    ago = p.rng.randint(9, 20)
    p.screened(ago + 3)
    p.course(ago + 3)
    p.session(ago + 3)
    p.session(ago)
    p.check_in(2, 'wet')


def keeps_dry(p):
    p.whole_course(60, 4, 1)
    p.session(3)
    p.check_in(1)


def no_response(p):
    p.screened(25)
    p.score(25, 3)
    p.course(25, 'daily')
    day, done = 25, 0
    while done < 10:
        if (p.today - datetime.timedelta(days=day)).weekday() < 5:
            p.session(day)
            done += 1
        day -= 1
    p.score(5, 3)
    p.check_in(1, 'wet')


def burned(p):
    p.whole_course(60, 4, 2)
    p.session(4, skin=['burn'])
    p.check_in(1)


def burn_seen(p):
    p.whole_course(60, 4, 2)
    p.session(4, skin=['blister'])
    p.add(3, 15, 'skin-clearance', site='hands', who='Dr Invented', given=str(p.today - datetime.timedelta(days=3)))
    p.check_in(1)


def stop_answer(p):
    p.add(6, 8, 'site-use', site='feet', in_use=True)
    p.screened(6, yes=('powered-implant',))


def overdue(p):
    ago = p.rng.randint(8, 14)
    p.whole_course(70, 4, 1)
    p.session(ago + 12)
    p.check_in(ago + 1, 'clammy')
    p.check_in(ago, 'clammy')
    p.score(1, 2)


def silent(p):
    p.whole_course(120, 3, 1)
    p.add(p.rng.randint(22, 60), 12, 'pause', site='hands', paused=True)


def two_files(p):
    """The older file tells of a course that stopped; the newer one, of how it went on."""
    p.screened(14)
    p.course(14)
    p.session(14)
    older = p.document()
    for ago in (12, 9, 6, 4, 2):
        p.session(ago)
    return older


def two_sites(p):
    p.screened(12)
    p.course(12, site='hands')
    p.session(12)
    p.session(10, site='feet', skin=['blister'])
    p.check_in(1, 'wet')


KINDS = (not_begun, in_course, stopped_in_course, keeps_dry, no_response, burned, burn_seen, stop_answer, overdue, silent, two_files, two_sites)


def main():
    options = argparse.ArgumentParser()
    options.add_argument('folder', type=pathlib.Path)
    options.add_argument('--people', type=int, default=60)
    options.add_argument('--today', type=datetime.date.fromisoformat, default=datetime.date(2026, 3, 5))
    options.add_argument('--seed', type=int, default=1)
    o = options.parse_args()
    o.folder.mkdir(parents=True, exist_ok=True)
    rng = random.Random(o.seed)
    for number in range(o.people):
        person = Person(rng, number, o.today)
        older = KINDS[number % len(KINDS)](person)
        if older:
            (o.folder / f'{number + 1:02}-before.json').write_text(older, encoding='utf-8')
        (o.folder / f'{number + 1:02}.json').write_text(person.document(), encoding='utf-8')


if __name__ == '__main__':
    main()
