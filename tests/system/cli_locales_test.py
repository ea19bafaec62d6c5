#!/usr/bin/python3
"""The command line says, writes and reads the same under every locale: a comma for a point, another letter i, other digits.

Usage: cli_locales_test.py PATH-OF-FIRSTDEW-CLI
"""
import os
import pathlib
import subprocess
import tempfile
import unittest

from cli import CLI, NOW_MS, CliTest

LOCALES = {'de_DE': 'decimal comma', 'tr_TR': 'dotless i', 'ar_EG': 'right to left'}


class Locales(CliTest):
    @classmethod
    def setUpClass(cls):
        folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(folder.cleanup)
        cls.locales = folder.name
        for name in LOCALES:
            subprocess.run(['localedef', '-i', name, '-f', 'UTF-8', f'{folder.name}/{name}.UTF-8'], check=True, capture_output=True)

    def under(self, locale, folder, *args):
        env = dict(os.environ, FIRSTDEW_NOW_MS=str(NOW_MS), LC_ALL=locale, LANG=locale, LOCPATH=self.locales)
        done = subprocess.run([CLI, *map(str, args)], capture_output=True, text=True, env=env, check=False, cwd=folder)
        return done.returncode, done.stdout, done.stderr

    def story(self, locale):
        """All that the calls said and wrote."""
        with tempfile.TemporaryDirectory() as name:
            folder = pathlib.Path(name)
            (folder / 'trace.csv').write_text('second,milliamp\n0,0\n60,12.5\n600,12.5\n660,0\n', encoding='utf-8')
            said = [self.under(locale, folder, *call.split()) for call in (
                'demo --out s.db --today 2026-03-05',
                'verify --store s.db --json', 'outlook --store s.db --today 2026-03-05', '--json outlook --store s.db --today 2026-03-05',
                'dose trace.csv --site feet --waveform direct --age adult',
                'weigh --site hands --before-mg 100.5 --after-mg 180.25 --minutes 2.5 --height 170.5 --weight 60.25',
                'script --site feet --waveform direct --age adult',
                'caresheet new --who Iris --given 2026-03-01 --sites hands,feet --direct-limit 12.5 --out sheet.json',
                'caresheet show sheet.json --store s.db', 'export --store s.db --format json --out r.json',
                'export --store s.db --format fhir --out f.json', 'export --store s.db --format ics --out c.ics',
                'export --store s.db --format csv --out tables', 'import tables --store t.db', 'import r.json --store u.db',
                'export --store u.db --format json --out again.json', 'verify --store nothing.db')]
            files = {str(p.relative_to(folder)): p.read_bytes() for p in folder.rglob('*') if p.is_file() and '.db' not in p.name}
            return said, files

    def test_the_locales_are_what_they_are_called(self):
        done = subprocess.run(['locale', 'decimal_point'], env=dict(os.environ, LC_ALL='de_DE.UTF-8', LOCPATH=self.locales),
                              capture_output=True, text=True, check=True)
        self.assertEqual(done.stdout, ',\n')

    def test_no_answer_and_no_file_depends_on_it(self):
        said, files = self.story('C.UTF-8')
        self.assertEqual([code for code, _, _ in said], [0] * (len(said) - 1) + [1], said)
        self.assertEqual(files['r.json'], files['again.json'])
        for name in LOCALES:
            with self.subTest(locale=name):
                other, written = self.story(f'{name}.UTF-8')
                self.assertEqual(other, said)
                self.assertEqual(written, files)


if __name__ == '__main__':
    unittest.main()
