#!/usr/bin/python3
"""Export, import, back-up, restore and deletion, with the tools a person would use beside them.

Usage: cli_exchange_test.py PATH-OF-FIRSTDEW-CLI
"""
import contextlib
import csv
import json
import os
import sqlite3
import stat
import subprocess
import unittest

from cli import CliTest


class Exchange(CliTest):
    def setUp(self):
        super().setUp()
        self.word = self.folder / 'word'
        self.word.write_text('a word nobody knows\n', encoding='utf-8')
        self.word.chmod(0o600)
        self.record()

    def record(self):
        for day, level in (('2026-03-01', 'dry'), ('2026-03-02', 'clammy'), ('2026-03-03', 'wet')):
            self.ok('checkin', '--store', self.store, '--date', day, '--site', 'hands', '--level', level, '--with', 'heat,stress')
        self.ok('session', '--store', self.store, '--date', '2026-03-03', '--site', 'hand-foot', '--waveform', 'pulsed',
                '--peak', '11.5', '--note', 'a "quoted", Ünïcode note\nwith two lines')

    def export(self, form, name, *more):
        out = self.folder / name
        self.ok('export', '--store', self.store, '--format', form, '--out', out, *more)
        return out

    def test_json_into_a_new_store_and_out_again_is_the_same_file(self):
        first = self.export('json', 'one.json')
        self.assertEqual(stat.S_IMODE(os.stat(first).st_mode), 0o600)
        document = json.loads(first.read_text(encoding='utf-8'))
        self.assertEqual((document['format'], document['version'], len(document['facts'])), ('firstdew-record', 1, 4))
        self.store = str(self.folder / 'new.db')
        self.assertEqual(self.ok('import', first, '--store', self.store)['added'], 4)
        self.assertEqual(self.export('json', 'two.json').read_bytes(), first.read_bytes())

    def test_tables_are_read_by_another_csv_reader_and_come_back_whole(self):
        tables = self.export('csv', 'tables')
        self.assertEqual(sorted(p.name for p in tables.iterdir()), ['check-in.csv', 'columns.csv', 'session.csv'])
        for table in tables.iterdir():
            raw = table.read_bytes()
            self.assertEqual(raw.count(b'\n') - raw.count(b'\r\n'), 1 if table.name == 'session.csv' else 0)
        with open(tables / 'session.csv', newline='', encoding='utf-8') as file:
            row, = csv.DictReader(file, strict=True)
        self.assertEqual((row['peak_ma'], row['comfortable_ma'], row['note']), ('11.5', '', 'a "quoted", Ünïcode note\nwith two lines'))
        first = self.export('json', 'one.json').read_bytes()
        self.store = str(self.folder / 'new.db')
        self.assertEqual(self.ok('import', tables, '--store', self.store)['added'], 4)
        self.assertEqual(self.export('json', 'two.json').read_bytes(), first)

    def test_a_dry_run_changes_nothing_and_duplicates_are_known(self):
        one = self.export('json', 'one.json')
        self.ok('checkin', '--store', self.store, '--date', '2026-03-04', '--site', 'hands', '--level', 'dry')
        two = self.export('json', 'two.json')
        self.store = str(self.folder / 'new.db')
        self.ok('import', one, '--store', self.store)
        before = self.files()
        self.assertEqual(self.ok('import', two, '--store', self.store, '--dry-run'),
                         {'read': 5, 'added': 1, 'known': 4, 'dry_run': True})
        self.assertEqual(self.files(), before)
        done = self.ok('import', two, '--store', self.store)
        self.assertEqual((done['added'], done['known']), (1, 4))
        self.assertEqual(self.ok('verify', '--store', done['kept'])['facts'], 4)
        self.assertEqual(self.ok('import', two, '--store', self.store)['added'], 0)

    def test_a_table_typed_by_hand_is_taken_once(self):
        table = self.folder / 'diary.csv'
        table.write_text('kind,happened,site,level,with\ncheck-in,2026-02-01T08:00,feet,dry,\ncheck-in,2026-02-02T08:00,feet,wet,heat\n',
                         encoding='utf-8')
        self.assertEqual(self.ok('import', table, '--store', self.store)['added'], 2)
        self.assertEqual(self.ok('import', table, '--store', self.store)['known'], 2)

    def test_a_bad_line_anywhere_adds_nothing(self):
        good = self.export('json', 'one.json').read_text(encoding='utf-8')
        other = str(self.folder / 'new.db')
        for text, saying in ((good.replace('"wet"', '"damp"'), 'line 4, is.level'), (good[:-30], 'line 5'), ('', 'line 1'),
                             (good.replace('11.5', '115'), 'line 5, is.peak_ma'), (good.replace('"version":1', '"version":9'), 'update'),
                             ('kind,happened,site,level,with\ncheck-in,2026-02-01T08:00,feet,dry,\n"', 'line 3')):
            bad = self.folder / 'bad.json'
            bad.write_text(text, encoding='utf-8')
            self.refused(1, 'import', bad, '--store', other, saying=saying)
            self.refused(1, 'import', bad, '--store', self.store, saying=saying)
        bad.write_text(good.replace('"wet"', '"dripping"'), encoding='utf-8')
        self.refused(1, 'import', bad, '--store', self.store, saying='another content')
        bad.write_bytes(b'kind,happened,text\nquestion,2026-02-01T08:00,\xff\n')
        self.refused(1, 'import', bad, '--store', self.store, saying='UTF-8')
        self.refused(1, 'import', self.folder / 'none.json', '--store', self.store, saying='cannot be read')
        (self.folder / 'empty').mkdir()
        self.refused(1, 'import', self.folder / 'empty', '--store', self.store, saying='no table')
        self.refused(2, 'import', '--store', self.store)

    def test_export_refuses_what_it_must(self):
        out = self.export('json', 'one.json')
        self.refused(1, 'export', '--store', self.store, '--format', 'json', '--out', out, saying='--force')
        self.refused(2, 'export', '--store', self.store, '--format', 'xlsx', '--out', self.folder / 'x', saying='csv')
        self.refused(1, 'export', '--store', self.folder / 'no.db', '--format', 'json', '--out', self.folder / 'x', saying='no such store')
        self.refused(1, 'export', '--store', self.store, '--format', 'json', '--out', self.folder / 'no' / 'x', saying='cannot be written')
        self.refused(1, 'export', '--store', self.store, '--format', 'csv', '--out', out, saying='is a file')
        self.refused(1, 'export', '--store', self.store, '--format', 'json', '--out', self.folder / 'x', '--person', 'p7', saying="'p7'")
        self.export('json', 'one.json', '--force')

    def gpg(self, *args):
        home = self.folder / 'gnupg'
        home.mkdir(mode=0o700, exist_ok=True)
        env = dict(os.environ, GNUPGHOME=str(home))
        self.addCleanup(subprocess.run, ['gpgconf', '--kill', 'all'], env=env, check=False)
        subprocess.run(['gpg', '--batch', '--quiet', '--yes', '--pinentry-mode', 'loopback', '--passphrase-file', self.word, *args],
                       env=env, check=True)

    def test_a_back_up_opens_with_gpg_and_one_from_gpg_is_restored(self):
        record = self.export('json', 'one.json')
        self.ok('backup', '--store', self.store, '--out', self.folder / 'b.pgp', '--passphrase-file', self.word)
        self.gpg('-o', self.folder / 'opened.json', '-d', self.folder / 'b.pgp')
        self.assertEqual((self.folder / 'opened.json').read_bytes(), record.read_bytes())

        self.gpg('-o', self.folder / 'theirs.pgp', '--symmetric', self.folder / 'opened.json')
        for back_up in ('b.pgp', 'theirs.pgp'):
            self.store = str(self.folder / f'{back_up}.db')
            self.assertEqual(self.ok('restore', '--store', self.store, '--in', self.folder / back_up, '--passphrase-file', self.word)['facts'], 4)
            self.assertEqual(self.export('json', f'{back_up}.json').read_bytes(), record.read_bytes())

    def test_restoring_keeps_the_present_record_beside_the_restored_one(self):
        self.ok('backup', '--store', self.store, '--out', self.folder / 'b.pgp', '--passphrase-file', self.word)
        self.ok('checkin', '--store', self.store, '--date', '2026-03-04', '--site', 'hands', '--level', 'dry')
        done = self.ok('restore', '--store', self.store, '--in', self.folder / 'b.pgp', '--passphrase-file', self.word)
        self.assertEqual(self.ok('verify', '--store', self.store)['facts'], 4)
        self.assertEqual(self.ok('verify', '--store', done['kept'])['facts'], 5)

    def test_a_back_up_that_is_not_whole_touches_nothing(self):
        self.ok('backup', '--store', self.store, '--out', self.folder / 'b.pgp', '--passphrase-file', self.word)
        good = (self.folder / 'b.pgp').read_bytes()
        bad = self.folder / 'bad.pgp'
        wrong = self.folder / 'wrong'
        wrong.write_text('another word', encoding='utf-8')
        wrong.chmod(0o600)
        call = ('restore', '--store', self.store, '--in', bad, '--passphrase-file')
        bad.write_bytes(good)
        self.refused(1, *call, wrong, saying='passphrase')
        for content in (good[:-1], good[:len(good) // 2], good + b'x', b'', b'Dear doctor',
                        good[:200] + bytes([good[200] ^ 4]) + good[201:]):
            bad.write_bytes(content)
            self.refused(1, *call, self.word, saying='bad.pgp')
        bad.unlink()
        self.refused(1, *call, self.word, saying='cannot be read')
        wrong.write_text('\n', encoding='utf-8')
        self.refused(1, 'backup', '--store', self.store, '--out', self.folder / 'c.pgp', '--passphrase-file', wrong, saying='empty')
        self.refused(1, 'backup', '--store', self.store, '--out', self.folder / 'b.pgp', '--passphrase-file', self.word, saying='--force')
        self.refused(2, 'backup', '--store', self.store, '--out', self.folder / 'c.pgp', saying='--passphrase-file')

    def test_forgetting_is_asked_for_twice_and_final(self):
        with contextlib.closing(sqlite3.connect(self.store)) as db:
            (who,), = db.execute('SELECT DISTINCT person FROM fact').fetchall()
        self.refused(1, 'forget', '--store', self.store, '--person', who, saying='--yes')
        self.refused(2, 'forget', '--store', self.store, '--yes', saying='--everything')
        self.refused(1, 'forget', '--store', self.store, '--person', 'p9', '--yes', saying="'p9'")
        self.assertIn('quoted', self.every_byte())
        self.assertEqual(self.ok('forget', '--store', self.store, '--person', who, '--yes'), {'deleted': 4})
        self.assertNotIn('quoted', self.every_byte())
        self.assertEqual(self.ok('verify', '--store', self.store)['facts'], 0)
        self.ok('forget', '--store', self.store, '--everything', '--yes')
        self.assertEqual([p for p in self.files() if p.startswith('store')], [])

    def every_byte(self):
        return b''.join(self.files().values()).decode('latin-1')


if __name__ == '__main__':
    unittest.main()
