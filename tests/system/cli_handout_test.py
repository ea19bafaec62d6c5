#!/usr/bin/python3
"""A care sheet as a page to hand over, read back by independent programs.

Usage: cli_handout_test.py PATH-OF-FIRSTDEW-CLI
"""
import json
import re
import subprocess
import unittest

from cli import CliTest

LANGUAGES = ('en', 'de', 'es', 'fr', 'pt_BR', 'ar')


def tool(*args):
    # A space between a number and its unit does not break; here it is one like any other.
    return subprocess.run([str(a) for a in args], check=True, capture_output=True, text=True).stdout.replace('\u00a0', ' ')


class Handout(CliTest):
    def setUp(self):
        super().setUp()
        self.sheet, self.pdf = self.folder / 'sheet.json', self.folder / 'plan.pdf'
        self.make('--plan', 'seven')

    def make(self, *more):
        self.ok('caresheet', 'new', '--who', 'Dr Vance', '--given', '2026-03-02', '--sites', 'hands', '--direct-limit', '12', '--contact',
                'Nurse Invented, 555 0100', '--review', '2026-04-13', '--out', self.sheet, '--force', *more)

    def printed(self, *more):
        self.assertEqual(self.ok('handout', self.sheet, '--out', self.pdf, '--force', *more), {'out': str(self.pdf), 'pages': 1})
        return ' '.join(tool('pdftotext', '-layout', self.pdf, '-').split())

    def lowest(self):
        """The bottom of the text above the footer, and the top of the footer, in points."""
        words = re.findall(r'yMin="([\d.]+)".*?yMax="([\d.]+)">(.*?)</word>', tool('pdftotext', '-bbox', self.pdf, '-'))
        tops = sorted({float(top) for top, _, _ in words})
        foot = max(tops)
        # Letters of two scripts on one line have boxes of their own heights.
        return max(float(bottom) for top, bottom, _ in words if float(top) < foot - 9), foot

    def test_the_page_says_what_the_sheet_says(self):
        text = self.printed('--start', '2026-03-05', '--name', 'Mira Santt')
        for wanted in ('Your treatment plan', 'For: Mira Santt', 'From Dr Vance, 2 March 2026', 'Both hands, Direct current: at most 12 mA', '2 times 10 minutes',
                       'Thu 5 Mar', 'Fri 6 Mar', 'Thu 26 Mar', 'When to stop', 'Call: Nurse Invented, 555 0100', 'Review: 13 April 2026'):
            self.assertIn(wanted, text)
        self.assertIn('No syntax or stream encoding errors', tool('qpdf', '--check', self.pdf))
        self.assertRegex(tool('pdfinfo', self.pdf), r'Pages: +1\b')
        for line in tool('pdffonts', self.pdf).splitlines()[2:]:
            self.assertRegex(line, r' yes +(yes|no) +(yes|no) +\d', 'not embedded')

    def test_without_a_first_day_the_days_are_counted(self):
        text = self.printed()
        self.assertIn('Day 1 Day 2 Day 4 Day 7 Day 10 Day 15', text)
        self.assertIn('Day 1 is the day of your first session.', text)

    def test_trays_and_pads_are_drawn_each_and_a_child_is_not_alone(self):
        text = self.printed()
        self.assertIn('Both hands in the water: somebody stays beside you.', text)
        self.ok('caresheet', 'new', '--who', 'nurse', '--given', '2026-03-02', '--sites', 'hands,feet,armpits', '--waveform', 'pulsed', '--age', 'child',
                '--out', self.sheet, '--force')
        text = self.printed('--age', 'child')
        for wanted in ('Each session: Both hands', 'Each session: Armpits', 'An adult stays beside the child the whole time.',
                       'Both hands, Pulsed current: at most 20 mA', 'Armpits, Pulsed current: at most 12 mA', 'Firstdew tells you when the next one is due.'):
            self.assertIn(wanted, text)
        self.assertNotIn('Direct current', text)

    def test_the_drawings_need_no_transparency(self):
        # PDF/A-1 has none (ISO 19005-1, 6.4).
        self.printed()
        plain = self.folder / 'plain.pdf'
        subprocess.run(['qpdf', '--qdf', '--object-streams=disable', self.pdf, plain], check=True)
        raw = plain.read_bytes()
        self.assertFalse([m for m in re.findall(rb'/SMask (\S+)', raw) if m != b'/None'])
        self.assertFalse([a for a in re.findall(rb'/[cC][aA] ([\d.]+)', raw) if float(a) != 1])

    def test_a_long_sheet_stays_above_the_footer_in_every_language(self):
        days = ','.join(str(1 + 2 * i) for i in range(60))
        self.make('--sites', 'armpits', '--waveform', 'pulsed', '--plan', 'prescribed', '--days', days, '--notes', 'Words and more words. ' * 36, '--at-no-response', 'Call me. ' * 80)
        for language in LANGUAGES:
            for paper in ('a4', 'letter'):
                with self.subTest(language=language, paper=paper):
                    self.printed('--language', language, '--paper', paper, '--start', '2026-03-05')
                    bottom, foot = self.lowest()
                    self.assertLess(bottom, foot)

    def test_bad_input(self):
        self.refused(2, 'handout', self.sheet, '--out', self.pdf, '--paper', 'a3')
        self.refused(2, 'handout', self.sheet, '--out', self.pdf, '--language', 'tlh')
        self.refused(2, 'handout', self.sheet, '--out', self.pdf, '--start', 'soon')
        self.refused(1, 'handout', self.folder / 'nowhere.json', '--out', self.pdf)
        wrong = self.folder / 'wrong.json'
        wrong.write_text(json.dumps({'format': 'other'}), encoding='utf-8')
        self.refused(1, 'handout', wrong, '--out', self.pdf, saying='this is no care sheet')
        self.assertFalse(self.pdf.exists())
        self.printed()
        self.refused(1, 'handout', self.sheet, '--out', self.pdf)


if __name__ == '__main__':
    unittest.main()
