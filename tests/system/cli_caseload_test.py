#!/usr/bin/python3
"""The caseload: who needs a call, and why, of sixty invented people; compared with an oracle that knows no forecast.

Usage: cli_caseload_test.py PATH-OF-FIRSTDEW-CLI PATH-OF-CASELOAD.PY
"""
import datetime
import json
import os
import pathlib
import subprocess
import sys
import unittest

MAKER = os.path.abspath(sys.argv.pop(2)) if len(sys.argv) > 2 else 'caseload.py'

from cli import CliTest  # noqa: E402

TODAY = datetime.date(2026, 3, 5)  # of the standing clock
SESSIONS = {'seven': 7, 'daily': 10}
RANK = ('skin-event', 'health-answer', 'stopped-in-course', 'no-response', 'overdue', 'silent', 'doing-well')
STOPS = {'pregnancy', 'powered-implant', 'metal-implant', 'metal-iud', 'heart-rhythm-or-epilepsy', 'tumour-or-thrombosis', 'loss-of-sensation'}


def day(fact):
    return datetime.date.fromisoformat(fact['happened'][:10])


def ago(date):
    return (TODAY - date).days


class Oracle:
    """The rules of the caseload by dates alone."""

    def __init__(self, facts):
        self.facts = sorted(facts, key=lambda f: f['happened'])

    def of(self, kind, site=None):
        return [f for f in self.facts if f['kind'] == kind and (site is None or f['is']['site'] == site)]

    def sites(self):
        return [s for s in ('hands', 'feet') if any(self.of(k, s) for k in ('site-use', 'session', 'check-in'))]

    def why(self):
        out = []
        for site in self.sites():
            out += self.site(site)
        newest = max(day(f) for f in self.facts)
        if ago(newest) >= 21:
            out.append(('silent', None, newest))
        return sorted(out or [('doing-well', None, newest)], key=lambda w: (RANK.index(w[0]), w[2]))

    def site(self, site):
        out, sessions, courses = [], self.of('session', site), self.of('course', site)
        harmed = [f for f in sessions if set(f['is']['skin']) & {'burn', 'blister'}]
        seen = [f for f in self.of('skin-clearance', site) if harmed and f['happened'] > harmed[-1]['happened']]
        if harmed and not seen:
            out.append(('skin-event', site, day(harmed[-1])))
        yes = [f for f in self.of('screening') if set(f['is']['yes']) & STOPS]
        if yes and not sessions and not courses:
            out.append(('health-answer', site, day(yes[0])))
        if self.of('pause', site):
            return out
        last = day(sessions[-1]) if sessions else None
        if courses and not self.of('review-done', site):
            began = datetime.date.fromisoformat(courses[-1]['is']['start'])
            done = len({day(s) for s in sessions if day(s) >= began})
            scores = self.of('hdss', site)
            if done < SESSIONS[courses[-1]['is']['plan']]:
                if ago(max(began, last or began)) >= 7:
                    out.append(('stopped-in-course', site, max(began, last or began)))
            elif done >= 10 and len(scores) > 1 and scores[-1]['is']['score'] >= scores[0]['is']['score'] and ago(day(scores[-1])) <= 14:
                out.append(('no-response', site, last))
            return out
        reports = [f for f in self.of('check-in', site) if not last or day(f) > last]
        if len(reports) > 1 and all(r['is']['level'] != 'dry' for r in reports[-2:]) and ago(day(reports[-1])) >= 7:
            out.append(('overdue', site, day(reports[-1])))
        return out


class Caseload(CliTest):
    def setUp(self):
        super().setUp()
        self.people = self.folder / 'people'
        subprocess.run([sys.executable, MAKER, self.people, '--today', str(TODAY)], check=True)

    def documents(self):
        return {p.name: json.loads(p.read_text(encoding='utf-8'))['facts'] for p in sorted(self.people.glob('*.json'))}

    def test_somebody_whose_dry_spells_are_getting_shorter_is_named(self):
        facts, person = [], 'd' * 32

        def add(when, hour, kind, **body):
            facts.append({'id': f'{len(facts):032x}', 'person': person, 'happened': f'{when}T{hour:02}:00',
                          'recorded_ms': 1700000000000 + len(facts), 'kind': kind, 'is': body})
        lengths = [11 + i % 4 for i in range(16)] + [5 + i % 3 for i in range(9)]
        on = TODAY - datetime.timedelta(days=sum(lengths))
        add(on, 8, 'person', name='Invented', birth='1980-05-14', adult='')
        changed = None
        for i, length in enumerate(lengths):
            changed = on if i == 16 else changed
            add(on, 20, 'session', site='hands', waveform='direct', completed=True, skin=[], machine='', bath='', note='')
            for age in range(1, length + 1):
                add(on + datetime.timedelta(days=age), 12, 'check-in', site='hands', level='dry' if age < length else 'clammy', **{'with': []})
            on += datetime.timedelta(days=length)
        add(on, 20, 'session', site='hands', waveform='direct', completed=True, skin=[], machine='', bath='', note='')
        folder = self.folder / 'shorter'
        folder.mkdir()
        (folder / 'one.json').write_text(json.dumps({'format': 'firstdew-record', 'version': 1, 'facts': facts}), encoding='utf-8')
        one, = self.ok('caseload', folder)['people']
        why, = one['why']
        self.assertEqual((why['kind'], why['site'], one['call']), ('shorter', 'hands', True))
        self.assertLessEqual(abs((datetime.date.fromisoformat(why['since']) - changed).days), 14)

    def test_as_the_oracle_says(self):
        kept = {}
        for name, facts in self.documents().items():
            newest = max(f['recorded_ms'] for f in facts)
            person = facts[0]['person']
            if person not in kept or newest > kept[person][0]:
                kept[person] = (newest, name, facts)
        answer = self.ok('caseload', self.people)
        self.assertEqual(answer['unread'], [])
        self.assertEqual(len(answer['people']), 60)
        reasons = set()
        for one in answer['people']:
            _, name, facts = kept[one['person']]
            told = [(w['kind'], w['site'], datetime.date.fromisoformat(w['since'])) for w in one['why']]
            with self.subTest(person=one['name'], file=one['file']):
                self.assertEqual(one['file'], name)
                self.assertEqual(told, Oracle(facts).why())
                self.assertEqual(one['call'], told[0][0] != 'doing-well')
                self.assertEqual(one['since'], str(told[0][2]))
            reasons |= {w[0] for w in told}
        self.assertEqual(reasons, set(RANK))
        order = [(RANK.index(p['why'][0]['kind']), p['since'], p['name']) for p in answer['people']]
        self.assertEqual(order, sorted(order))

    def test_nothing_is_written_and_what_cannot_be_read_is_named(self):
        files = sorted(self.people.glob('*.json'))
        store = self.people / 'store.db'
        self.ok('import', files[0], '--store', store)
        files[0].unlink()
        word = self.folder / 'word'
        word.write_text('a long passphrase\n', encoding='utf-8')
        word.chmod(0o600)
        other = self.folder / 'other.db'
        self.ok('import', files[1], '--store', other)
        self.ok('backup', '--store', other, '--out', self.people / 'back-up.pgp', '--passphrase-file', word)
        files[1].unlink()
        (self.people / 'holiday.txt').write_text('no record', encoding='utf-8')
        before = self.files()
        answer = self.ok('caseload', self.people, '--passphrase-file', word)
        self.assertEqual(len(answer['people']), 60)
        self.assertEqual([u['file'] for u in answer['unread']], ['holiday.txt'])
        self.assertEqual(self.files(), before)
        without = self.ok('caseload', self.people)
        self.assertEqual([u['file'] for u in without['unread']], ['back-up.pgp', 'holiday.txt'])
        self.assertEqual(len(without['people']), 59)
        text = self.run_cli('caseload', self.people)
        self.assertIn('not read: back-up.pgp: is no store and no record in JSON; if it is a back-up, give its passphrase', text.stdout)

    def test_bad_input(self):
        self.refused(1, 'caseload', self.folder / 'nowhere', saying='name a folder that can be read')
        self.refused(2, 'caseload')
        empty = self.folder / 'empty'
        empty.mkdir()
        self.assertEqual(self.ok('caseload', empty), {'people': [], 'unread': []})


if __name__ == '__main__':
    unittest.main()
