#!/usr/bin/python3
"""The verbs that write and check a store: what they record, and that they refuse what they must.

Usage: cli_store_test.py PATH-OF-FIRSTDEW-CLI
"""
import contextlib
import os
import sqlite3
import stat
import unittest

from cli import CliTest


class Recording(CliTest):
    def test_a_check_in_makes_the_store_and_is_in_it(self):
        answer = self.ok('checkin', '--store', self.store, '--date', '2026-03-05', '--site', 'hands', '--level', 'clammy',
                         '--with', 'heat,stress', '--at', '07:30')
        self.assertRegex(answer['id'], r'\A[0-9a-f]{32}\Z')
        self.assertEqual(stat.S_IMODE(os.stat(self.store).st_mode), 0o600)
        with contextlib.closing(sqlite3.connect(self.store)) as db:
            rows = db.execute('SELECT id, kind, happened_minute, body FROM fact').fetchall()
        self.assertEqual(rows, [(answer['id'], 'check-in', 450,
                                 '{"level":"clammy","site":"hands","with":["heat","stress"]}')])

    def test_a_session_is_logged_and_the_store_is_whole(self):
        self.ok('checkin', '--store', self.store, '--date', '2026-03-04', '--site', 'feet', '--level', 'wet')
        answer = self.ok('session', '--store', self.store, '--date', '2026-03-05', '--site', 'feet', '--waveform', 'direct',
                         '--peak', '12.5', '--comfortable', '12', '--completed', 'no')
        self.assertIn('id', answer)
        self.assertEqual(answer['warnings'], [])
        health = self.ok('verify', '--store', self.store)
        self.assertEqual((health['ok'], health['facts'], health['kinds']), (True, 2, {'check-in': 1, 'session': 1}))

    def test_another_treatment_is_noted_with_its_days_and_listed(self):
        call = ('other', '--store', self.store)
        answer = self.ok(*call, '--what', 'botulinum', '--name', 'invented', '--site', 'hands,armpits', '--from', '2026-01-05', '--until', '2026-03-01')
        self.ok(*call, '--what', 'tablets', '--from', '2026-02-01')
        listed = self.ok(*call)['treatments']
        self.assertEqual(listed, [
            {'id': answer['id'], 'what': 'botulinum', 'name': 'invented', 'sites': ['hands', 'armpits'], 'from': '2026-01-05', 'until': '2026-03-01'},
            {'id': listed[1]['id'], 'what': 'tablets', 'name': '', 'sites': [], 'from': '2026-02-01', 'until': None}])
        self.assertIn('2026-02-01 to now', self.run_cli(*call).stdout)
        self.refused(2, *call, '--what', 'magic', '--from', '2026-01-05', saying='botulinum, tablets, cream, other')
        self.refused(2, *call, '--what', 'cream', saying='--from')
        self.refused(2, *call, '--what', 'cream', '--from', '2026-01-05', '--until', '2026-01-04', saying='turn them round')

    def test_a_taught_session_is_noted_with_what_was_seen_and_listed(self):
        call = ('taught', '--store', self.store)
        given = (*call, '--site', 'hands', '--date', '2026-03-05', '--who', 'the nurse', '--waveform', 'direct')
        answer = self.ok(*given, '--ticks', 'out-of-water,turned-up-slowly', '--level', '8')
        self.assertEqual(self.ok(*call)['taught'], [
            {'id': answer['id'], 'date': '2026-03-05', 'site': 'hands', 'who': 'the nurse', 'ticks': ['turned-up-slowly', 'out-of-water'],
             'waveform': 'direct', 'level_ma': 8.0}])
        self.assertIn('8 mA agreed', self.run_cli(*call).stdout)
        self.refused(1, *given, '--ticks', 'out-of-water', '--level', '15.5', saying='above the limit of 15 mA')  # no birth date: as for children
        self.refused(1, *given, saying='tick what was seen')
        self.refused(1, *call, '--site', 'hands', '--date', '2026-03-05', '--who', ' ', '--waveform', 'direct', '--ticks', 'out-of-water', saying='who watched')
        self.refused(1, *call, '--site', 'armpits', '--date', '2026-03-05', '--who', 'nurse', '--waveform', 'direct', '--ticks', 'out-of-water', saying='pulsed')
        self.refused(2, *given, '--ticks', 'juggled', saying='skin-and-jewellery')
        self.refused(2, *call, '--site', 'hands', '--who', 'nurse', '--waveform', 'direct', '--ticks', 'out-of-water', saying='--date')
        self.refused(2, *call, '--site', 'hands', '--date', '2026-03-05', '--who', 'nurse', '--ticks', 'out-of-water', saying='--waveform')
        self.assertEqual(len(self.ok(*call)['taught']), 1)

    def test_a_reading_above_the_limit_was_seen_and_is_kept_with_a_warning(self):
        answer = self.ok('session', '--store', self.store, '--date', '2026-03-05', '--site', 'feet', '--waveform', 'direct',
                         '--peak', '26')
        self.assertEqual(len(answer['warnings']), 1)
        self.assertIn('26 mA was above the limit', answer['warnings'][0])

    def test_a_second_session_of_the_day_is_a_slip_unless_said_otherwise(self):
        call = ('session', '--store', self.store, '--date', '2026-03-05', '--waveform', 'direct', '--site')
        self.ok(*call, 'hand-foot')
        self.refused(1, *call, 'hand-foot', saying='--again')
        self.refused(1, *call, 'hands', saying='hand-foot on 2026-03-05 is logged already')
        self.ok(*call, 'armpits')
        self.ok(*call, 'hand-foot', '--again')
        self.assertEqual(self.ok('verify', '--store', self.store)['facts'], 3)

    def test_a_second_person_is_announced_and_then_has_to_be_named(self):
        call = ('checkin', '--store', self.store, '--date', '2026-03-05', '--site', 'hands', '--level', 'dry')
        self.ok(*call, '--person', 'anna')
        self.ok(*call)
        self.refused(1, *call, '--person', 'ben', saying='--new-person')
        self.ok(*call, '--person', 'ben', '--new-person')
        self.refused(1, *call, saying='several people')
        self.refused(1, *call, '--person', 'ben', '--new-person', saying='not in this store yet')
        self.refused(1, *call, '--new-person', saying='--person')
        self.ok(*call, '--person', 'ben')
        self.assertEqual(self.ok('verify', '--store', self.store)['persons'], 2)

    def test_the_day_may_be_tomorrow_for_zones_to_the_east_and_no_later(self):
        call = ('checkin', '--store', self.store, '--site', 'hands', '--level', 'dry', '--date')
        self.ok(*call, '2026-03-06')
        self.refused(1, *call, '2026-03-07', saying='has not come yet')


class BadInput(CliTest):
    def test_recording_refuses_with_one_line_and_makes_no_store(self):
        check_in = {'--store': self.store, '--date': '2026-03-05', '--site': 'hands', '--level': 'dry'}
        session = {'--store': self.store, '--date': '2026-03-05', '--site': 'feet', '--waveform': 'direct'}
        for verb, good, changes in (
                ('checkin', check_in, [
                    (2, {'--date': '2026-02-29'}, 'no date'), (2, {'--date': '5.3.2026'}, 'no date'),
                    (1, {'--date': '2027-03-05'}, 'not come yet'), (1, {'--date': '1926-03-05'}, '50 years'),
                    (2, {'--site': 'hand-foot'}, 'hands, feet, armpits'), (2, {'--site': ''}, 'none of'),
                    (2, {'--level': 'damp'}, 'dry, clammy, wet, dripping'), (2, {'--with': 'heat,rain'}, "'rain'"),
                    (2, {'--at': '24:00'}, 'HH:MM'), (2, {'--at': '7:5'}, 'HH:MM'),
                    (1, {'--person': '../x'}, 'person'), (1, {'--person': 'x' * 65}, 'person'),
                    (1, {'--store': self.folder}, 'folder'), (1, {'--store': self.folder / 'no' / 'store.db'}, 'cannot be opened'),
                    (1, {'--store': ''}, ''), (2, {'--date': None}, '--date'), (2, {'--colour': 'red'}, '--colour')]),
                ('session', session, [
                    (1, {'--peak': '-1'}, 'no possible reading'), (1, {'--peak': 'nan'}, 'no possible reading'),
                    (1, {'--peak': '1e9'}, 'no possible reading'), (1, {'--peak': 'inf'}, 'no possible reading'),
                    (2, {'--peak': 'twelve'}, '--peak'), (1, {'--peak': '1e999'}, 'no possible reading'), (1, {'--comfortable': '100.5'}, 'no possible reading'),
                    (1, {'--peak': '10', '--comfortable': '11'}, 'above the peak'),
                    (2, {'--completed': 'maybe'}, 'neither yes nor no'), (2, {'--waveform': 'alternating'}, 'direct, pulsed'),
                    (2, {'--site': 'face'}, 'hand-foot'), (1, {'--note': '\udcff'}, 'UTF-8')])):
            for code, change, saying in changes:
                options = {k: v for k, v in {**good, **change}.items() if v is not None}
                self.refused(code, verb, *(str(x) for pair in options.items() for x in pair), saying=saying)

    def test_the_store_in_use_is_left_as_it_was(self):
        self.ok('checkin', '--store', self.store, '--date', '2026-03-04', '--site', 'feet', '--level', 'wet')
        self.refused(1, 'checkin', '--store', self.store, '--date', '2026-03-05', '--site', 'feet', '--level', 'dry', '--person', 'p9',
                     saying="nobody called 'p9'")
        self.refused(1, 'session', '--store', self.store, '--date', '2026-03-05', '--site', 'feet', '--waveform', 'direct', '--peak', '-3')

    def test_what_is_no_store_is_named(self):
        for verb in (('verify',), ('checkin', '--date', '2026-03-05', '--site', 'hands', '--level', 'dry')):
            letter = self.folder / 'letter.txt'
            letter.write_text('Dear doctor, ' * 100, encoding='utf-8')
            self.refused(1, *verb, '--store', letter, saying='is not a Firstdew store')
        self.refused(1, 'verify', '--store', self.store, saying='no such store')
        self.refused(2, 'verify', saying='--store')

    def test_a_damaged_store_is_told_by_verify_and_exit_code(self):
        self.ok('checkin', '--store', self.store, '--date', '2026-03-04', '--site', 'feet', '--level', 'wet')
        with contextlib.closing(sqlite3.connect(self.store, isolation_level=None)) as db:
            db.execute("UPDATE fact SET happened_day = happened_day + 1")
        done = self.run_cli('--json', 'verify', '--store', self.store)
        self.assertEqual(done.returncode, 1)
        self.assertIn('"ok": false', done.stdout)
        self.refused(1, 'checkin', '--store', self.store, '--date', '2026-03-05', '--site', 'feet', '--level', 'wet',
                     saying='is damaged')

    def test_a_damaged_store_is_mended_as_far_as_it_can_be(self):
        for day in range(1, 5):
            self.ok('checkin', '--store', self.store, '--date', f'2026-03-0{day}', '--site', 'feet', '--level', 'wet')
        with contextlib.closing(sqlite3.connect(self.store, isolation_level=None)) as db:
            db.execute("UPDATE fact SET happened_day = happened_day + 1 WHERE sequence = 2")
        done = self.ok('verify', '--store', self.store, '--repair')
        self.assertEqual((done['ok'], done['facts']), (True, 3))
        self.assertTrue(os.path.exists(done['repaired']['aside']))
        self.assertNotIn('repaired', self.ok('verify', '--store', self.store, '--repair'))
        self.refused(1, 'verify', '--store', self.folder / 'none.db', '--repair', saying='no such store')


if __name__ == '__main__':
    unittest.main()
