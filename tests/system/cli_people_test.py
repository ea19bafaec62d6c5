#!/usr/bin/python3
"""Two people never mix: ids drawn at random, imports that check who is meant, and stores of earlier versions.

Usage: cli_people_test.py PATH-OF-FIRSTDEW-CLI
"""
import contextlib
import json
import os
import sqlite3
import unittest
import zlib

from cli import CliTest

DAY = '2026-03-04'
TABLE = '''CREATE TABLE fact(
    sequence INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE CHECK(length(id) BETWEEN 1 AND 64),
    person TEXT NOT NULL CHECK(length(person) BETWEEN 1 AND 64),
    kind TEXT NOT NULL,
    happened_day INTEGER NOT NULL,
    happened_minute INTEGER NOT NULL CHECK(happened_minute BETWEEN 0 AND 1439),
    recorded_ms INTEGER NOT NULL,
    corrects TEXT NOT NULL DEFAULT '',
    body TEXT NOT NULL CHECK(json_valid(body)),
    seal INTEGER NOT NULL
) STRICT'''


def person(name, birth):
    return {'name': name, 'birth': birth, 'adult': ''}


def fact(number, who, kind, body, **more):
    return {'id': f'{number:032x}', 'person': who, 'kind': kind, 'happened': f'{DAY}T08:00', 'recorded_ms': 1772000000000 + number,
            **more, 'is': body}


def check_in(number, who='p1', level='dry', **more):
    return fact(number, who, 'check-in', {'site': 'hands', 'level': level, 'with': []}, **more)


def record(*facts):
    return json.dumps({'format': 'firstdew-record', 'version': 1, 'facts': list(facts)})


def first_version(file, *facts):
    """A store as version 1 of the schema kept it."""
    with contextlib.closing(sqlite3.connect(file, isolation_level=None)) as db:
        db.execute('PRAGMA application_id = 0x66646577')
        db.execute(TABLE)
        db.execute('PRAGMA user_version = 1')
        for f in facts:
            body = json.dumps(f['is'], separators=(',', ':'), sort_keys=True, ensure_ascii=False)
            row = [f['id'], f['person'], f['kind'], 20516, 480, f['recorded_ms'], f.get('corrects', ''), body]
            row.append(zlib.crc32('\x1f'.join(map(str, row)).encode()))
            db.execute('INSERT INTO fact(id, person, kind, happened_day, happened_minute, recorded_ms, corrects, body, seal) '
                       'VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?)', row)


class People(CliTest):
    def write(self, *facts, name='file.json'):
        file = self.folder / name
        file.write_text(record(*facts), encoding='utf-8')
        return file

    def facts(self, store=None):
        out = self.folder / 'now.json'
        self.ok('export', '--store', store or self.store, '--format', 'json', '--out', out, '--force')
        return json.loads(out.read_text(encoding='utf-8'))['facts']

    def persons(self, store=None):
        return sorted({f['person'] for f in self.facts(store)})


class NewPersons(People):
    CALL = ('checkin', '--date', DAY, '--site', 'hands', '--level', 'dry', '--store')

    def test_ids_are_drawn_at_random(self):
        ids = set()
        for name in ('a.db', 'b.db'):
            self.ok(*self.CALL, self.folder / name)
            self.ok(*self.CALL, self.folder / name)
            only, = self.persons(self.folder / name)
            self.assertRegex(only, r'\A[0-9a-f]{32}\Z')
            ids.add(only)
        self.assertEqual(len(ids), 2)

    def test_a_name_is_recorded_and_finds_the_person(self):
        self.ok(*self.CALL, self.store, '--person', 'anna')
        self.ok(*self.CALL, self.store, '--person', 'ben', '--new-person')
        self.ok(*self.CALL, self.store, '--person', 'anna')
        for one in self.persons():
            self.assertRegex(one, r'\A[0-9a-f]{32}\Z')
        names = {f['person']: f['is']['name'] for f in self.facts() if f['kind'] == 'person'}
        self.assertEqual(sorted(names.values()), ['anna', 'ben'])
        for who, name in names.items():
            count = 3 if name == 'anna' else 2
            self.assertEqual(len([f for f in self.facts() if f['person'] == who]), count)
            self.ok(*self.CALL, self.store, '--person', who)
        self.refused(1, *self.CALL, self.store, saying='anna')

    def test_the_invented_person_has_an_id_of_her_own(self):
        self.ok('demo', '--out', self.store, '--today', '2026-03-05')
        only, = self.persons()
        self.assertRegex(only, r'\A[0-9a-f]{32}\Z')


class Imports(People):
    def test_another_name_or_birth_date_stops(self):
        who = 'ab' * 16
        self.ok('import', self.write(fact(1, who, 'person', person('Anna', '1990-01-02')), check_in(2, who)), '--store', self.store)
        for other in (person('Ben', '1990-01-02'), person('Anna', '2012-05-06')):
            file = self.write(fact(11, who, 'person', other), check_in(12, who))
            self.refused(1, 'import', file, '--store', self.store, saying='--as-new-person')
            self.refused(1, 'import', file, '--store', self.store, '--dry-run', saying='line 1')
        self.assertEqual(self.persons(), [who])
        self.ok('import', file, '--store', self.store, '--as-new-person')
        self.assertEqual(len(self.persons()), 2)
        mine = [f['id'] for f in self.facts() if f['person'] == who]
        self.assertEqual(mine, [f'{1:032x}', f'{2:032x}'])

    def test_a_name_written_otherwise_or_corrected_is_the_same_person(self):
        who = 'ab' * 16
        self.ok('import', self.write(fact(1, who, 'person', person('Ana', '1990-01-02'))), '--store', self.store)
        self.ok('import', self.write(fact(3, who, 'person', person(' ANA ', '1990-01-02'))), '--store', self.store)
        later = fact(4, who, 'person', person('Anna', '1990-01-02'), corrects=f'{1:032x}')
        self.ok('import', self.write(fact(1, who, 'person', person('Ana', '1990-01-02')), later), '--store', self.store)
        self.assertEqual(self.persons(), [who])

    def test_p1_of_another_store_is_not_the_person_here(self):
        self.ok('import', self.write(fact(1, 'p1', 'person', person('Anna', '1990-01-02')), check_in(2)), '--store', self.store)
        anna, = self.persons()
        self.assertRegex(anna, r'\A[0-9a-f]{32}\Z')
        for stranger in ([check_in(12, level='wet')], [fact(11, 'p1', 'person', person('Ben', '1985-01-02')), check_in(12)]):
            file = self.write(*stranger)
            self.refused(1, 'import', file, '--store', self.store, saying='--as-new-person')
        self.ok('import', file, '--store', self.store, '--as-new-person')
        self.assertEqual(len(self.persons()), 2)
        self.assertEqual(len([f for f in self.facts() if f['person'] == anna]), 2)

    def test_p1_is_known_by_a_fact_it_shares_or_by_name_and_birth_date(self):
        self.ok('import', self.write(fact(1, 'p1', 'person', person('Anna', '1990-01-02')), check_in(2)), '--store', self.store)
        self.assertEqual(self.ok('import', self.write(check_in(2), check_in(3)), '--store', self.store)['added'], 1)
        self.ok('import', self.write(fact(31, 'p1', 'person', person('Anna', '1990-01-02')), check_in(32)), '--store', self.store)
        self.assertEqual(len(self.persons()), 1)

    def test_rows_that_name_nobody_go_to_the_only_person(self):
        self.ok('import', self.write(check_in(2)), '--store', self.store)
        table = self.folder / 'diary.csv'
        table.write_text('kind,happened,site,level,with\ncheck-in,2026-02-01T08:00,feet,dry,\n', encoding='utf-8')
        self.ok('import', table, '--store', self.store)
        self.assertEqual(len(self.persons()), 1)


class EarlierVersions(People):
    def setUp(self):
        super().setUp()
        self.old = [fact(1, 'p1', 'person', person('Anna', '1990-01-02')), check_in(2), check_in(3, 'p2', 'wet'),
                    check_in(4, level='clammy', corrects=f'{2:032x}'), check_in(5, 'carla')]
        first_version(self.store, *self.old)

    def migrate(self):
        self.ok('checkin', '--store', self.store, '--date', DAY, '--site', 'feet', '--level', 'dry', '--person', 'Anna')

    def test_a_store_of_the_first_version_is_read_as_it_is(self):
        before = self.files()
        self.assertEqual(self.ok('verify', '--store', self.store)['persons'], 3)
        self.assertEqual(self.files(), before)

    def test_persons_get_ids_of_their_own_and_a_copy_is_kept(self):
        self.migrate()
        now = self.facts()
        self.assertEqual([f['id'] for f in now[:5]], [f['id'] for f in self.old])
        self.assertEqual([f['person'] for f in now], [f'{1:032x}', f'{1:032x}', f'{3:032x}', f'{1:032x}', 'carla', f'{1:032x}'])
        self.assertEqual(self.ok('verify', '--store', self.store + '.before-version-2.copy')['facts'], 5)
        self.assertTrue(self.ok('verify', '--store', self.store)['ok'])

    def test_an_export_of_the_first_version_still_comes_home(self):
        self.migrate()
        done = self.ok('import', self.write(*self.old, check_in(9)), '--store', self.store)
        self.assertEqual((done['known'], done['added']), (5, 1))
        self.assertEqual(self.persons(), [f'{1:032x}', f'{3:032x}', 'carla'])

    def test_a_back_up_of_the_first_version_gives_the_same_ids(self):
        self.migrate()
        persons = self.persons()
        new = self.folder / 'new.db'
        self.ok('import', self.write(*self.old), '--store', new)
        self.assertEqual(self.persons(new), persons)

    def test_repair_from_a_copy_of_the_first_version_makes_nobody_twice(self):
        self.migrate()
        with contextlib.closing(sqlite3.connect(self.store, isolation_level=None)) as db:
            db.execute('UPDATE fact SET happened_day = 1 WHERE sequence IN (1, 4)')
        done = self.ok('verify', '--store', self.store, '--repair')
        self.assertEqual((done['facts'], done['repaired']['from_copy'], done['persons']), (6, 2, 3))
        self.assertEqual(self.persons(), [f'{1:032x}', f'{3:032x}', 'carla'])

    def test_damage_still_shows_after_it(self):
        with contextlib.closing(sqlite3.connect(self.store, isolation_level=None)) as db:
            db.execute('UPDATE fact SET happened_day = 1 WHERE sequence = 2')
        self.refused_ok_to_copy('checkin', '--store', self.store, '--date', DAY, '--site', 'feet', '--level', 'dry', '--person', 'Anna')
        self.assertEqual(self.ok('verify', '--store', self.store, '--repair')['facts'], 4)

    def refused_ok_to_copy(self, *args):
        done = self.run_cli(*args)
        self.assertEqual(done.returncode, 1)
        self.assertIn('is damaged', done.stderr)


class Texts(People):
    """What steers a screen or a printer instead of being read is taken out where a text comes in."""
    EVIL = 'ab\u202ecd\u2066e\x07\x1b[31m\x9bf\x7f\ng\u200fh'
    GOOD = 'abcde[31mf\ng\u200fh'

    def test_on_import_once_and_for_all(self):
        file = self.write(fact(1, 'p1', 'question', {'text': self.EVIL}))
        self.ok('import', file, '--store', self.store)
        self.assertEqual(self.facts()[0]['is']['text'], self.GOOD)
        self.assertEqual(self.ok('import', file, '--store', self.store)['known'], 1)

    def test_on_recording(self):
        self.ok('session', '--store', self.store, '--date', DAY, '--site', 'feet', '--waveform', 'direct', '--note', self.EVIL)
        self.assertEqual(self.facts()[-1]['is']['note'], self.GOOD)
        out = self.folder / 'f.json'
        self.ok('export', '--store', self.store, '--format', 'fhir', '--out', out)
        self.assertNotRegex(out.read_text(encoding='utf-8'), r'\\u00(0[0-8]|1|7f)|\\u202|[\x7f-\x9f\u202a-\u202e\u2066-\u2069]')

    def test_in_a_store_of_an_earlier_version(self):
        first_version(self.store, fact(1, 'p1', 'question', {'text': 'ab\u202ecd'}), check_in(2))
        self.ok('checkin', '--store', self.store, '--date', DAY, '--site', 'feet', '--level', 'dry')
        self.assertEqual(self.facts()[0]['is']['text'], 'abcd')

    def test_a_care_sheet_that_holds_them_is_refused(self):
        call = ('caresheet', 'new', '--given', DAY, '--sites', 'hands', '--out', self.folder / 's.json')
        for who in ('Dr.\u202eA', 'Dr.\nA', 'Dr.\rA', 'Dr.\u2028A', 'Dr.\x07A'):
            self.refused(1, *call, '--who', who, saying='who')
        self.refused(1, *call, '--who', 'Dr. A', '--notes', 'x\u202ey', saying='notes')
        self.ok(*call, '--who', 'Dr. A', '--notes', 'two\nlines')

    def test_a_formula_is_text_to_a_spreadsheet_and_comes_back_as_it_was(self):
        texts = ['=1+1', '+49', '-x', '@me', '\tt', '\rr', '\n=n', "'=q", "''+", "'plain", 'plain', '']
        file = self.write(*(fact(i, 'ab' * 16, 'question', {'text': t}) for i, t in enumerate(texts, 1)))
        self.ok('import', file, '--store', self.store)
        tables = self.folder / 'tables'
        self.ok('export', '--store', self.store, '--format', 'csv', '--out', tables)
        import csv
        with open(tables / 'question.csv', newline='', encoding='utf-8') as table:
            cells = [row['text'] for row in csv.DictReader(table, strict=True)]
        for cell in cells:
            self.assertFalse(cell[:1] in tuple('=+-@\t\r\n'), cell)
        new = self.folder / 'new.db'
        self.ok('import', tables, '--store', new)
        self.assertEqual(sorted(f['is']['text'] for f in self.facts(new)), sorted(texts))


if __name__ == '__main__':
    unittest.main()
