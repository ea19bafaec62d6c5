#!/usr/bin/python3
"""The care sheet: made, checked, shown and accepted; and its published schema held against our own reader.

Usage: cli_care_sheet_test.py PATH-OF-FIRSTDEW-CLI
"""
import json
import pathlib
import unittest

import jsonschema

from cli import CliTest

SCHEMA = json.loads((pathlib.Path(__file__).parents[2] / 'core/exchange/care-sheet.schema.json').read_text(encoding='utf-8'))
LEAST = {'format': 'firstdew-care-sheet', 'version': 1, 'who': 'Dr. Åse Invented', 'given': '2026-03-02', 'sites': ['hands']}
FULL = {**LEAST, 'sites': ['hands', 'hand-foot'], 'plan': 'prescribed', 'days': [1, 3, 8], 'waveform': 'direct',
        'direct_limit_ma': 12.5, 'pulsed_limit_ma': 18, 'raise_s': 90, 'lower_s': 30, 'swapping_s': 60,
        'review': '2026-04-13', 'notes': 'Begin at 5 mA.\nRing if it blisters.'}


class Schema(CliTest):
    def setUp(self):
        super().setUp()
        self.sheet = self.folder / 'sheet.json'
        self.validator = jsonschema.Draft202012Validator(SCHEMA, format_checker=jsonschema.FormatChecker())

    def write(self, sheet):
        self.sheet.write_text(json.dumps(sheet), encoding='utf-8')

    def test_the_schema_is_one(self):
        jsonschema.Draft202012Validator.check_schema(SCHEMA)

    def test_what_we_write_keeps_the_schema(self):
        self.ok('caresheet', 'new', '--who', 'Dr. Åse Invented', '--given', '2026-03-02', '--sites', 'hands,hand-foot', '--days', '1,3,8',
                '--waveform', 'direct', '--direct-limit', '12.5', '--pulsed-limit', 18, '--raise', 90, '--lower', 30, '--swapping', 60,
                '--review', '2026-04-13', '--notes', FULL['notes'], '--out', self.sheet)
        written = json.loads(self.sheet.read_text(encoding='utf-8'))
        self.validator.validate(written)
        self.assertEqual(written, FULL)

    def test_schema_and_reader_take_the_same_sheets(self):
        for change in ({}, {'direct_limit_ma': 20, 'pulsed_limit_ma': 30}, {'days': [1]}, {'notes': 'ä' * 800}, {'raise_s': 20, 'lower_s': 180},
                       {'sites': ['armpits'], 'waveform': 'pulsed'}):
            self.write({**FULL, **change})
            self.validator.validate({**FULL, **change})
            self.ok('caresheet', 'check', self.sheet)
        for plan in ('seven', 'mwf', 'daily'):
            self.write({**LEAST, 'plan': plan})
            self.validator.validate({**LEAST, 'plan': plan})
            self.ok('caresheet', 'check', self.sheet)

    def test_schema_and_reader_refuse_the_same_sheets(self):
        for base, change in (
                (FULL, {'direct_limit_ma': 20.5}), (FULL, {'pulsed_limit_ma': 30.1}), (FULL, {'direct_limit_ma': 0}),
                (FULL, {'direct_limit_ma': '12'}), (FULL, {'direct_limit_ma': None}), (FULL, {'sites': []}), (FULL, {'sites': ['face']}),
                (FULL, {'sites': ['hands', 'hands']}), (FULL, {'sites': ['armpits']}), (FULL, {'days': []}), (FULL, {'days': [2, 3]}),
                (FULL, {'days': [1, 367]}), (FULL, {'days': [1, 1]}), (FULL, {'days': [1, 2.5]}), (FULL, {'plan': 'seven'}), (FULL, {'plan': 'weekly'}),
                (LEAST, {'days': [1, 2]}), (LEAST, {'plan': 'prescribed'}), (FULL, {'raise_s': 19}), (FULL, {'lower_s': 181}),
                (FULL, {'swapping_s': 30.5}), (FULL, {'who': ''}), (FULL, {'who': ' \n'}), (FULL, {'who': 'w' * 121}), (FULL, {'notes': 'n' * 801}),
                (FULL, {'given': '2026-02-30'}), (FULL, {'review': '13.4.2026'}), (FULL, {'version': 2}), (FULL, {'format': 'x'}),
                (FULL, {'colour': 'red'}), (FULL, {'waveform': 'alternating'})):
            sheet = {**base, **change}
            self.write(sheet)
            with self.subTest(change=change):
                self.assertFalse(self.validator.is_valid(sheet))
            line = self.refused(1, 'caresheet', 'check', self.sheet, saying='sheet.json')
            self.assertIn(next(iter(change)) if change not in ({'plan': 'seven'}, {'plan': 'prescribed'}, {'sites': ['armpits']}) else ', ', line)
        for field in ('format', 'version', 'who', 'given', 'sites'):
            sheet = {k: v for k, v in FULL.items() if k != field}
            self.write(sheet)
            self.assertFalse(self.validator.is_valid(sheet))
            self.refused(1, 'caresheet', 'check', self.sheet, saying=field)


class Verb(CliTest):
    def setUp(self):
        super().setUp()
        self.sheet = self.folder / 'sheet.json'
        self.sheet.write_text(json.dumps(LEAST | {'direct_limit_ma': 12}), encoding='utf-8')

    def test_a_child_has_a_childs_limits(self):
        self.sheet.write_text(json.dumps(LEAST | {'direct_limit_ma': 18}), encoding='utf-8')
        self.ok('caresheet', 'check', self.sheet)
        self.refused(1, 'caresheet', 'check', self.sheet, '--age', 'child', saying='direct_limit_ma')

    def test_a_sheet_is_shown_with_what_it_changes_and_accepted(self):
        self.ok('checkin', '--store', self.store, '--date', '2026-03-04', '--site', 'hands', '--level', 'dry')
        shown = self.ok('caresheet', 'show', self.sheet, '--store', self.store)
        self.assertIn({'field': 'direct_limit_ma', 'sites': ['hands'], 'before': None, 'after': 12, 'loosens': False}, shown['changes'])
        self.assertEqual(self.ok('verify', '--store', self.store)['facts'], 1)
        self.ok('caresheet', 'accept', self.sheet, '--store', self.store)
        self.assertEqual(self.ok('verify', '--store', self.store)['kinds'], {'care-sheet': 1, 'check-in': 1, 'site-use': 1})
        self.assertNotIn('changes', self.ok('caresheet', 'show', self.sheet, '--store', self.store))
        # An age that is not known reads as a child's: what was good for an adult is refused.
        self.sheet.write_text(json.dumps(LEAST | {'direct_limit_ma': 18}), encoding='utf-8')
        self.refused(1, 'caresheet', 'accept', self.sheet, '--store', self.store, saying='direct_limit_ma')

    def test_a_sheet_that_allows_more_is_shown_as_that_and_taken_only_with_a_word_for_it(self):
        self.ok('checkin', '--store', self.store, '--date', '2026-03-04', '--site', 'hands', '--level', 'dry')
        self.ok('caresheet', 'accept', self.sheet, '--store', self.store)
        self.sheet.write_text(json.dumps(LEAST | {'given': '2026-03-03', 'direct_limit_ma': 14}), encoding='utf-8')
        shown = self.ok('caresheet', 'show', self.sheet, '--store', self.store)
        self.assertIn({'field': 'direct_limit_ma', 'sites': ['hands'], 'before': 12, 'after': 14, 'loosens': True}, shown['changes'])
        self.assertIn('direct_limit_ma: 12 mA -> 14 mA  ALLOWS MORE', self.run_cli('caresheet', 'show', self.sheet, '--store', self.store).stdout)
        self.refused(1, 'caresheet', 'accept', self.sheet, '--store', self.store, saying='--loosen')
        self.ok('caresheet', 'accept', self.sheet, '--store', self.store, '--loosen')
        # One given before the sheet in use changes nothing.
        self.sheet.write_text(json.dumps(LEAST | {'given': '2026-03-01', 'direct_limit_ma': 15}), encoding='utf-8')
        self.assertNotIn('changes', self.ok('caresheet', 'show', self.sheet, '--store', self.store))

    def test_an_accepted_sheet_is_the_course(self):
        self.ok('checkin', '--store', self.store, '--date', '2026-03-04', '--site', 'hands', '--level', 'wet')
        self.ok('caresheet', 'new', '--who', 'Nurse Invented', '--given', '2026-03-05', '--sites', 'hands', '--days', '1,3,6', '--pad', '30',
                '--at-no-response', 'Call the clinic.', '--out', self.sheet, '--force')
        begins = {'site': 'hands', 'plan': 'prescribed', 'sessions': 3, 'start': '2026-03-05', 'goes_on': False, 'replaces': False}
        self.assertEqual(self.ok('caresheet', 'show', self.sheet, '--store', self.store)['courses'], [begins])
        self.assertEqual(self.ok('caresheet', 'accept', self.sheet, '--store', self.store)['courses'], [begins])
        hands, = self.ok('outlook', '--store', self.store, '--today', '2026-03-05')['sites']
        self.assertEqual((hands['stage'], hands['next_session']), ('first-course', '2026-03-05'))
        self.ok('session', '--store', self.store, '--date', '2026-03-05', '--site', 'hands', '--waveform', 'direct')
        hands, = self.ok('outlook', '--store', self.store, '--today', '2026-03-06')['sites']
        self.assertEqual(hands['next_session'], '2026-03-07')
        # A new limit begins no course anew; other days do, in place of the course that runs.
        again = json.loads(self.sheet.read_text(encoding='utf-8'))
        self.sheet.write_text(json.dumps(again | {'direct_limit_ma': 9}), encoding='utf-8')
        self.assertNotIn('courses', self.ok('caresheet', 'accept', self.sheet, '--store', self.store))
        self.sheet.write_text(json.dumps(again | {'days': [1, 2]}), encoding='utf-8')
        self.assertIn('a course of 2 sessions for hands begins, in place of the one that runs',
                      self.run_cli('caresheet', 'accept', self.sheet, '--store', self.store, '--loosen').stdout)
        self.sheet.write_text(json.dumps(again | {'pad_cm2': 1}), encoding='utf-8')
        self.refused(1, 'caresheet', 'check', self.sheet, saying='pad_cm2')

    def test_a_level_agreed_is_one_of_the_current_prescribed_and_at_most_the_limit(self):
        new = ('caresheet', 'new', '--who', 'Nurse Invented', '--given', '2026-03-04', '--sites', 'hands', '--out', self.sheet, '--force')
        self.refused(1, *new, '--level', '8', saying='waveform')
        self.refused(1, *new, '--waveform', 'direct', '--level', '20.5', saying='level_ma')
        self.refused(1, *new, '--waveform', 'direct', '--direct-limit', '7', '--level', '8', saying='above the 7 mA that the sheet allows; lower it')
        self.ok(*new, '--waveform', 'direct', '--level', '8')
        self.ok('checkin', '--store', self.store, '--date', '2026-03-04', '--site', 'hands', '--level', 'wet')
        self.ok('caresheet', 'accept', self.sheet, '--store', self.store)
        self.assertIn('level_ma', self.run_cli('caresheet', 'show', self.sheet).stdout)
        self.sheet.write_text(json.dumps(json.loads(self.sheet.read_text(encoding='utf-8')) | {'given': '2026-03-05', 'level_ma': 9}), encoding='utf-8')
        self.refused(1, 'caresheet', 'accept', self.sheet, '--store', self.store, saying='--loosen')

    def test_the_code_is_drawn(self):
        self.ok('caresheet', 'show', self.sheet, '--qr', self.folder / 'code.svg')
        self.assertTrue((self.folder / 'code.svg').read_text(encoding='utf-8').startswith('<svg '))

    def test_bad_calls(self):
        new = ('caresheet', 'new', '--out', self.folder / 'x.json', '--who', 'Nurse', '--given', '2026-03-02', '--sites')
        self.refused(2, 'caresheet')
        self.refused(2, 'caresheet', 'burn', self.sheet)
        self.refused(2, *new, 'face', saying='--sites')
        self.refused(2, *new, 'hands', '--days', '1,x')
        self.refused(2, *new, 'hands', '--review', 'soon', saying='--review')
        self.refused(1, *new, 'hands', '--direct-limit', '25', saying='raises the limit')
        self.refused(1, *new, 'hands', '--direct-limit', 'nan', saying='direct_limit_ma')
        self.refused(1, *new, 'hands', '--raise', '5', saying='raise_s')
        self.refused(1, 'caresheet', 'show', self.folder / 'none.json', saying='cannot be read')
        self.refused(1, 'caresheet', 'accept', self.sheet, '--store', self.folder / 'none.db', saying='no such store')
        self.refused(1, 'caresheet', 'new', '--out', self.sheet, '--who', 'Nurse', '--given', '2026-03-02', '--sites', 'hands', saying='--force')


if __name__ == '__main__':
    unittest.main()
