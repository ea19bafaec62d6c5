#!/usr/bin/python3
"""The prescriber's page in every language: words, digits, direction and type within the file.

Usage: cli_languages_test.py PATH-OF-FIRSTDEW-CLI
"""
import re
import subprocess
import unicodedata
import unittest

from cli import CliTest

# What each page has to say; the lists come from the translations by hand, so that a page left in English shows.
SAID = {'en': ('Iontophoresis summary', 'Hands', 'Keeping dry', '1 December 2025'),
        'de': ('Bericht zur Iontophorese', 'Hände', 'Trockenphase', '1. Dezember 2025'),
        'es': ('Resumen de iontoforesis', 'Manos', 'Se mantiene seca', '1 de diciembre de 2025'),
        'fr': ('Synthèse d’iontophorèse', 'Mains', 'Maintien au sec', '1er décembre 2025'),
        'pt_BR': ('Resumo da iontoforese', 'Mãos', 'Em manutenção', '1 de dezembro de 2025'),
        'ar': ('ملخص', 'اليدان', 'جفاف', '2025')}


def words(pdf, *options):
    text = subprocess.run(['pdftotext', *options, str(pdf), '-'], capture_output=True, text=True, check=True).stdout
    # The file keeps the shapes of joined letters; the letters themselves are asked for.
    return unicodedata.normalize('NFKC', text)


class Summary(CliTest):
    def page(self, language):
        self.ok('demo', '--out', self.store, '--today', '2026-03-02')
        out = self.folder / f'{language}.pdf'
        self.ok('summary', '--store', self.store, '--from', '2025-12-01', '--to', '2026-03-02', '--out', out, '--language', language)
        return out

    def test_every_language_speaks_for_itself(self):
        for language, said in SAID.items():
            with self.subTest(language=language):
                self.store = str(self.folder / f'{language}.db')
                text = words(self.page(language))
                for part in said:
                    self.assertIn(part, text)
                if language != 'en':
                    self.assertNotIn('summary', text)

    def test_arabic_reads_from_the_right_with_the_digits_of_the_meter(self):
        out = self.page('ar')
        self.assertNotRegex(words(out), '[٠-٩]')
        boxes = words(out, '-bbox')
        width = float(boxes.split('page width="')[1].split('"')[0])
        letters = [tuple(float(v) for v in found) for found in re.findall(r'<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)"', boxes)]
        # The first line: what it is at the right margin, its days at the left one.
        line = [(left, right) for left, top, right in letters if top < min(t for _, t, _ in letters) + 6]
        self.assertGreater(max(right for _, right in line), width * 0.9)
        self.assertLess(min(left for left, _ in line), width * 0.15)
        fonts = subprocess.run(['pdffonts', str(out)], capture_output=True, text=True, check=True).stdout
        self.assertIn('NotoSansArabic', fonts)

    def test_an_unknown_language_is_refused(self):
        self.ok('demo', '--out', self.store, '--today', '2026-03-02')
        self.refused(2, 'summary', '--store', self.store, '--from', '2025-12-01', '--to', '2026-03-02',
                     '--out', self.folder / 'x.pdf', '--language', 'tlh', saying='tlh')


if __name__ == '__main__':
    unittest.main()
