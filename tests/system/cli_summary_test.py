#!/usr/bin/python3
"""The invented person's record and the prescriber's page from the command line, read back by independent programs.

Usage: cli_summary_test.py PATH-OF-FIRSTDEW-CLI
"""
import json
import re
import subprocess
import unittest

from cli import CliTest


def tool(*args):
    return subprocess.run([str(a) for a in args], check=True, capture_output=True, text=True).stdout


class Demo(CliTest):
    def test_the_invented_record_is_whole_and_the_same_each_time(self):
        facts = self.ok('demo', '--out', self.store, '--today', '2026-03-02')['facts']
        health = self.ok('verify', '--store', self.store)
        self.assertEqual((health['ok'], health['facts']), (True, facts))
        self.assertGreater(facts, 1000)
        again = str(self.folder / 'again.db')
        self.ok('demo', '--out', again, '--today', '2026-03-02')
        a, b = (self.folder / 'a.json', self.folder / 'b.json')
        self.ok('export', '--store', self.store, '--format', 'json', '--out', a)
        self.ok('export', '--store', again, '--format', 'json', '--out', b)
        self.assertEqual(a.read_bytes(), b.read_bytes())

    def test_it_ends_the_day_before_the_day_asked_for(self):
        self.ok('demo', '--out', self.store, '--today', '2030-01-15')
        csv = self.folder / 'csv'
        self.ok('export', '--store', self.store, '--format', 'json', '--out', csv)
        days = re.findall(r'"happened":\s*"(\d{4}-\d\d-\d\d)', csv.read_text(encoding='utf-8'))
        self.assertEqual(max(days), '2030-01-14')

    def test_what_is_there_is_never_written_over(self):
        self.ok('demo', '--out', self.store, '--today', '2026-03-02')
        self.refused(1, 'demo', '--out', self.store, saying='is a store or belongs to one; nothing was written')
        self.refused(2, 'demo', '--out', self.folder / 'x.db', '--today', '2026-02-30')
        self.refused(2, 'demo')


class Summary(CliTest):
    def setUp(self):
        super().setUp()
        self.ok('demo', '--out', self.store, '--today', '2026-03-02')
        self.pdf = self.folder / 'page.pdf'
        self.call = ('summary', '--store', self.store, '--from', '2025-12-01', '--to', '2026-03-01', '--out', self.pdf)

    def test_the_page_is_sound_and_can_be_read_out(self):
        self.assertEqual(self.ok(*self.call), {'out': str(self.pdf), 'pages': 2})
        self.assertIn('No syntax or stream encoding errors', tool('qpdf', '--check', self.pdf))
        text = tool('pdftotext', '-layout', self.pdf, '-')
        for wanted in ('Iontophoresis summary', 'Mira Santt', 'adult, 32 years', '1 December 2025 to 1 March 2026', 'It works', 'Hands', 'Feet', 'HDSS',
                       '16.5 mA · Direct current ·'):
            self.assertIn(wanted, text)
        self.assertLess(text.index('Hands'), text.index('Feet'))
        fonts = tool('pdffonts', self.pdf).splitlines()[2:]
        self.assertTrue(fonts)
        for line in fonts:
            self.assertRegex(line, r' yes +(yes|no) +(yes|no) +\d', 'not embedded')
        self.assertRegex(tool('pdfinfo', self.pdf), r'Title: +Iontophoresis summary')

    def test_whoever_copies_its_words_gets_all_of_them(self):
        # A typeface that puts another shape for a bracket beside a figure leaves it without a character.
        self.ok(*self.call)
        text = ' '.join(tool('pdftotext', self.pdf, '-').split())
        self.assertRegex(text, r'median \d+ days \(80 %: \d+ to \d+\)')
        self.assertIn('2026;15:640', text)

    def test_other_treatments_stand_on_the_page(self):
        fresh = self.folder / 'fresh.db'
        self.ok('checkin', '--store', fresh, '--date', '2026-02-01', '--site', 'feet', '--level', 'wet')
        self.ok('other', '--store', fresh, '--what', 'tablets', '--name', 'Invented', '--from', '2026-01-05', '--until', '2026-02-07')
        self.ok('summary', '--store', fresh, '--from', '2026-02-01', '--to', '2026-02-28', '--out', self.pdf)
        self.assertIn('Tablets (Invented): 5 January 2026 to 7 February 2026', ' '.join(tool('pdftotext', self.pdf, '-').split()))

    def test_a_taught_session_stands_on_the_second_page(self):
        fresh = self.folder / 'fresh.db'
        self.ok('taught', '--store', fresh, '--site', 'feet', '--date', '2026-01-05', '--who', 'Nurse Invented', '--waveform', 'pulsed', '--level', '9',
                '--ticks', 'when-to-stop')
        self.ok('session', '--store', fresh, '--date', '2026-02-05', '--site', 'feet', '--waveform', 'pulsed')
        self.ok('summary', '--store', fresh, '--from', '2026-02-01', '--to', '2026-02-28', '--out', self.pdf)
        text = ' '.join(tool('pdftotext', '-f', '2', self.pdf, '-').split())
        self.assertRegex(text, 'Taught: .*5 January 2026, with .*Nurse Invented.*Pulsed current: 9 mA agreed')
        self.assertIn('Seen: Knows when to stop and whom to call.', text)

    def test_every_circumstance_is_counted_under_its_own_name(self):
        words = re.split(', | or ', re.search(r'circumstances: (.*)', self.run_cli('checkin', '--help').stdout)[1])
        self.assertIn('exertion', words)
        fresh = self.folder / 'fresh.db'
        for day, word in enumerate(words, 1):
            self.ok('checkin', '--store', fresh, '--date', f'2026-02-{day:02}', '--site', 'feet', '--level', 'wet', '--with', word)
        self.ok('summary', '--store', fresh, '--from', '2026-02-01', '--to', '2026-02-28', '--out', self.pdf)
        text = ' '.join(tool('pdftotext', self.pdf, '-').split())
        self.assertIn(', '.join(f"{word.replace('-', ' ').capitalize()} 1" for word in words), text)

    def test_the_sessions_of_two_years_are_on_the_second_page(self):
        answer = self.ok('summary', '--store', self.store, '--from', '2024-03-02', '--to', '2026-03-01', '--out', self.pdf)
        self.assertEqual(answer['pages'], 2)
        self.assertRegex(tool('pdfinfo', self.pdf), r'Pages: +2')
        self.assertNotIn('mA·min', tool('pdftotext', '-layout', '-l', '1', self.pdf, '-'))
        second = tool('pdftotext', '-layout', '-f', '2', self.pdf, '-')
        self.assertRegex(second, r'20 Feb 2026 +Both feet +Direct current +18\.5 mA +17\.5 mA +501 mA·min +Strong')

    def test_every_language_is_named_in_the_document_which_is_fit_for_archives(self):
        for language in ('en', 'de', 'es', 'ar'):
            self.ok(*self.call, '--force', '--language', language)
            tree = json.loads(tool('qpdf', '--json', '--json-key=qpdf', self.pdf))['qpdf'][1]
            catalog = tree['obj:' + tree['trailer']['value']['/Root']]['value']
            self.assertTrue(catalog['/Lang'].removeprefix('u:').startswith(language), catalog['/Lang'])
            # PDF/A-1 (ISO 19005-1): an output intent, metadata that say so, no transparency, no encryption.
            self.assertIn('/OutputIntents', catalog)
            raw = self.pdf.read_bytes()
            self.assertRegex(raw, rb'pdfaid:part>1<|pdfaid:part="1"')
            self.assertNotIn('/Encrypt', tree['trailer']['value'])
            opacities = [v for o in tree.values() for k, v in self.dictionary(o).items() if k in ('/CA', '/ca')]
            self.assertTrue(all(v == 1 for v in opacities), opacities)

    @staticmethod
    def dictionary(thing):
        inside = thing.get('value', thing.get('stream', {}).get('dict', {}))
        return inside if isinstance(inside, dict) else {}

    def test_what_was_never_asked_is_not_said_to_be_clear(self):
        one = str(self.folder / 'one.db')
        self.ok('checkin', '--store', one, '--date', '2026-03-01', '--site', 'hands', '--level', 'dry')
        self.ok('summary', '--store', one, '--from', '2026-02-01', '--to', '2026-03-01', '--out', self.pdf)
        text = tool('pdftotext', '-layout', self.pdf, '-')
        self.assertIn('The health questions have not been answered yet.', text)
        self.assertNotIn('nothing answered with yes', text)

    def first_page(self, *more):
        self.ok(*self.call, '--force', *more)
        return ' '.join(tool('pdftotext', '-layout', '-l', '1', self.pdf, '-').split())

    def test_a_burn_and_a_reading_above_the_limit_come_before_everything_else(self):
        self.assertNotIn('Stop and look', self.first_page())
        fact = {'person': 'p1', 'recorded_ms': 1772400000000}
        burn = {**fact, 'id': 'e' * 32, 'happened': '2026-02-27T09:00', 'kind': 'side-effect', 'is': {'site': 'feet', 'skin': ['burn'], 'note': ''}}
        extra = self.folder / 'extra.json'
        self.ok('export', '--store', self.store, '--format', 'json', '--out', extra)
        document = json.loads(extra.read_text(encoding='utf-8'))
        burn['person'] = document['facts'][0]['person']
        extra.write_text(json.dumps({**document, 'facts': [burn]}), encoding='utf-8')
        self.ok('import', extra, '--store', self.store)
        self.ok('session', '--store', self.store, '--date', '2026-02-28', '--site', 'hands', '--waveform', 'direct', '--peak', '23', '--comfortable', '15')
        text = self.first_page()
        for wanted in ('Stop and look', 'Look at the skin (Feet): a burn was noted on 27 February 2026. No session there until you have.',
                       'The meter was above the limit in 1 session, on 28 February 2026.', '28 February: Both hands · 23 mA with a limit of 20 mA'):
            self.assertIn(wanted, text)
        self.assertLess(text.index('Stop and look'), text.index('Keeping dry'))

    def test_the_page_says_what_is_never_small_in_german(self):
        text = self.first_page('--language', 'de')
        self.assertIn('Haut 20. Februar: Füße · Trockene Haut', text)
        self.assertNotIn('trockenheit', text)

    def test_paper(self):
        self.ok(*self.call)
        self.assertRegex(tool('pdfinfo', self.pdf), r'Page size: +59[45]\.?\d* x 84[12]\.?\d* pts')
        self.ok(*self.call, '--force', '--paper', 'letter')
        self.assertRegex(tool('pdfinfo', self.pdf), r'Page size: +612 x 792 pts')

    def test_an_empty_period_is_a_page_too(self):
        self.ok('summary', '--store', self.store, '--from', '2020-01-01', '--to', '2020-01-31', '--out', self.pdf)
        self.assertIn('Iontophoresis summary', tool('pdftotext', '-layout', self.pdf, '-'))

    def test_wrong_input_is_refused_and_nothing_written(self):
        self.refused(2, 'summary', '--store', self.store, '--from', '2026-03-02', '--to', '2026-03-01', '--out', self.pdf, saying='turn them round')
        self.refused(2, *self.call, '--paper', 'napkin', saying='a4, letter')
        self.refused(2, 'summary', '--store', self.store, '--from', 'yesterday', '--to', '2026-03-01', '--out', self.pdf, saying='--from')
        self.refused(1, *self.call, '--person', 'nobody', saying='nobody')
        self.refused(1, 'summary', '--store', self.folder / 'none.db', '--from', '2025-12-01', '--to', '2026-03-01', '--out', self.pdf)
        self.refused(1, *self.call[:-1], self.folder / 'no/such/folder/page.pdf')


if __name__ == '__main__':
    unittest.main()
