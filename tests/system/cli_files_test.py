#!/usr/bin/python3
"""Files around a store: what may be written where, what belongs to which store, and what reading leaves untouched.

Usage: cli_files_test.py PATH-OF-FIRSTDEW-CLI FAILING-STAT-LIBRARY
"""
import contextlib
import json
import os
import pwd
import sqlite3
import stat
import subprocess
import sys
import tempfile
import unittest

SHIM = os.path.abspath(sys.argv.pop(2)) if len(sys.argv) > 2 else None

from cli import CLI, NOW_MS, CliTest  # noqa: E402

DAY = '2026-03-04'


class Files(CliTest):
    def setUp(self):
        super().setUp()
        self.word = self.folder / 'word'
        self.word.write_text('a long passphrase\n', encoding='utf-8')
        self.word.chmod(0o600)

    def check_in(self, store=None, *more, date=DAY, level='wet'):
        return self.ok('checkin', '--store', store or self.store, '--date', date, '--site', 'feet', '--level', level, *more)

    def facts(self, store=None):
        return self.ok('verify', '--store', store or self.store)['facts']

    def modes(self):
        return {str(p): (p.lstat().st_mode, p.lstat().st_ino) for p in sorted(self.folder.rglob('*'))}


class Out(Files):
    """What `--out` names is never a store or what belongs to one, only a regular file, and replaced only with --force."""

    def setUp(self):
        super().setUp()
        self.check_in()
        self.sheet = self.folder / 'sheet.json'
        self.ok('caresheet', 'new', '--who', 'Dr. A', '--given', DAY, '--sites', 'hands', '--out', self.sheet)

    def writers(self, out):
        """Every call that writes a file of the caller's choice."""
        store = ('--store', self.store)
        return {
            'export json': ('export', *store, '--format', 'json', '--out', out, '--force'),
            'export fhir': ('export', *store, '--format', 'fhir', '--out', out, '--force'),
            'export ics': ('export', *store, '--format', 'ics', '--out', out, '--force'),
            'export csv': ('export', *store, '--format', 'csv', '--out', out, '--force'),
            'backup': ('backup', *store, '--out', out, '--passphrase-file', self.word, '--force'),
            'caresheet new': ('caresheet', 'new', '--who', 'Dr. A', '--given', DAY, '--sites', 'hands', '--out', out, '--force'),
            'caresheet show': ('caresheet', 'show', self.sheet, '--qr', out, '--force'),
            'demo': ('demo', '--out', out),
        }

    def refuse_all(self, out):
        for name, call in self.writers(out).items():
            with self.subTest(verb=name, out=str(out)):
                self.refused(1, *call)

    def test_the_store_itself_is_never_replaced(self):
        self.refuse_all(self.store)
        self.assertEqual(self.facts(), 1)

    def test_nor_by_another_name_of_it(self):
        os.link(self.store, self.folder / 'hard')
        os.symlink(self.store, self.folder / 'soft')
        os.symlink(self.folder, self.folder / 'around')
        for other in (self.folder / 'hard', self.folder / 'soft', self.folder / 'around' / 'store.db', f'{self.folder}/./store.db'):
            self.refuse_all(other)

    def test_nor_what_belongs_to_it_there_or_to_come(self):
        for suffix in ('-wal', '-shm', '-journal', '.before-import.copy', '.before-restore.copy', '.damaged.copy', '.notices'):
            self.refuse_all(self.store + suffix)

    def test_nor_another_store(self):
        other = self.folder / 'other.db'
        self.check_in(other)
        self.refuse_all(other)
        self.refuse_all(f'{other}-wal')

    def test_the_passphrase_file_is_no_place_for_the_back_up(self):
        self.refused(1, 'backup', '--store', self.store, '--out', self.word, '--passphrase-file', self.word, '--force')

    def test_only_regular_files(self):
        os.mkfifo(self.folder / 'pipe')
        (self.folder / 'sub').mkdir()
        os.symlink(self.folder / 'pipe', self.folder / 'link')
        os.symlink(self.folder / 'nowhere', self.folder / 'dangling')
        # No device itself is named here: a fault would replace it for the whole machine.
        for out in (self.folder / 'pipe', self.folder / 'link', self.folder / 'dangling'):
            self.refuse_all(out)
            self.assertTrue(os.path.lexists(out))
        self.assertTrue((self.folder / 'pipe').is_fifo())
        for name, call in self.writers(self.folder / 'sub').items():
            if name != 'export csv':
                with self.subTest(verb=name):
                    self.refused(1, *call)

    def test_nothing_is_replaced_without_force(self):
        there = self.folder / 'letter.txt'
        there.write_text('Dear doctor', encoding='utf-8')
        for name, call in self.writers(there).items():
            with self.subTest(verb=name):
                self.refused(1, *[a for a in call if a != '--force'])
        self.ok('export', '--store', self.store, '--format', 'json', '--out', there, '--force')
        self.assertIn('firstdew-record', there.read_text(encoding='utf-8'))

    def test_a_neighbour_that_ends_in_part_stays(self):
        neighbour = self.folder / 'record.json.part'
        neighbour.write_text('mine', encoding='utf-8')
        self.ok('export', '--store', self.store, '--format', 'json', '--out', self.folder / 'record.json')
        self.assertEqual(neighbour.read_text(encoding='utf-8'), 'mine')

    def test_new_files_and_folders_are_for_their_owner_whatever_the_umask(self):
        for mask in (0o000, 0o277):
            folder = self.folder / f'{mask:o}'
            folder.mkdir()
            before = os.umask(mask)
            try:
                self.check_in(folder / 's.db')
                self.ok('export', '--store', self.store, '--format', 'csv', '--out', folder / 'tables')
                self.ok('export', '--store', self.store, '--format', 'json', '--out', folder / 'r.json')
                self.ok('backup', '--store', self.store, '--out', folder / 'b.pgp', '--passphrase-file', self.word)
                self.ok('caresheet', 'show', self.sheet, '--qr', folder / 'q.svg')
                self.ok('demo', '--out', folder / 'demo.db')
            finally:
                os.umask(before)
            for path in folder.rglob('*'):
                self.assertEqual(stat.S_IMODE(path.stat().st_mode), 0o700 if path.is_dir() else 0o600, path)


class Reading(Files):
    """Reading leaves every file as it is and needs no right to write."""

    def readers(self, store):
        out = tempfile.TemporaryDirectory()
        self.addCleanup(out.cleanup)
        os.chmod(out.name, 0o777)
        store = ('--store', store)
        return [('verify', *store), ('outlook', *store, '--today', '2026-03-05'), ('due', *store, '--at', '2026-03-05T20:00'),
                *(('export', *store, '--format', f, '--out', f'{out.name}/{f}') for f in ('csv', 'json', 'fhir', 'ics')),
                ('backup', *store, '--out', f'{out.name}/b.pgp', '--passphrase-file', self.word)]

    def test_verify_changes_nothing_of_a_file_that_is_no_store(self):
        letter = self.folder / 'letter.txt'
        letter.write_text('Dear doctor, ' * 100, encoding='utf-8')
        letter.chmod(0o644)
        before = self.modes()
        self.refused(1, 'verify', '--store', letter, saying='is not a Firstdew store')
        self.refused(1, 'checkin', '--store', letter, '--date', DAY, '--site', 'feet', '--level', 'wet')
        self.assertEqual(self.modes(), before)

    def test_reading_a_store_changes_nothing_of_it(self):
        self.check_in()
        os.chmod(self.store, 0o640)
        before, files = self.modes(), self.files()
        for call in self.readers(self.store):
            self.ok(*call)
            self.assertEqual(self.modes(), before, call)
        self.assertEqual(self.files(), files)

    def unprivileged(self, *args):
        """The call by somebody whom rights bind."""
        nobody = pwd.getpwnam('nobody')
        become = dict(user=nobody.pw_uid, group=nobody.pw_gid, extra_groups=[]) if os.geteuid() == 0 else {}
        env = dict(os.environ, FIRSTDEW_NOW_MS=str(NOW_MS), LC_ALL='C.UTF-8')
        return subprocess.run([CLI, '--json', *map(str, args)], capture_output=True, text=True, env=env, check=False, **become)

    def read_only(self, folder):
        """Every file readable by all and writable by nobody, also the folder."""
        self.folder.chmod(0o755)
        for path in folder.rglob('*'):
            path.chmod(0o444)
        folder.chmod(0o555)
        self.addCleanup(folder.chmod, 0o755)

    def all_read(self, store, facts):
        self.word.chmod(0o600)
        if os.geteuid() == 0:
            os.chown(self.word, pwd.getpwnam('nobody').pw_uid, -1)
        for call in self.readers(store):
            done = self.unprivileged(*call)
            with self.subTest(call=call):
                self.assertEqual(done.returncode, 0, done.stderr)
                if call[0] == 'verify':
                    self.assertEqual(json.loads(done.stdout)['facts'], facts)

    def test_a_read_only_folder_is_read(self):
        folder = self.folder / 'frozen'
        folder.mkdir()
        self.check_in(folder / 's.db')
        self.read_only(folder)
        self.all_read(folder / 's.db', 1)

    def test_a_log_that_was_left_behind_is_read_too(self):
        folder = self.folder / 'frozen'
        folder.mkdir()
        self.check_in(folder / 'first.db')
        with contextlib.closing(sqlite3.connect(folder / 'first.db')) as live:  # as long as it is open, the log stays
            live.execute('SELECT count(*) FROM fact').fetchone()
            self.check_in(folder / 'first.db', date='2026-03-03')
            for suffix in ('', '-wal'):
                (folder / f's.db{suffix}').write_bytes((folder / f'first.db{suffix}').read_bytes())
        before = self.files()
        self.assertGreater(len(before['s.db-wal']), 1000)
        self.assertEqual(self.facts(folder / 's.db'), 2)
        self.assertEqual(self.files(), before)
        self.read_only(folder)
        self.all_read(folder / 's.db', 2)

    def test_a_store_in_use_is_read_with_what_its_log_holds(self):
        self.check_in()
        with contextlib.closing(sqlite3.connect(self.store)) as live:
            live.execute('SELECT count(*) FROM fact').fetchone()
            self.check_in(date='2026-03-03')
            self.assertEqual(self.facts(), 2)

    def test_what_cannot_be_written_refuses_new_facts_clearly(self):
        folder = self.folder / 'frozen'
        folder.mkdir()
        self.check_in(folder / 's.db')
        self.read_only(folder)
        done = self.unprivileged('checkin', '--store', folder / 's.db', '--date', DAY, '--site', 'feet', '--level', 'wet')
        self.assertEqual(done.returncode, 1)
        self.assertIn('cannot be written to', done.stderr)


class Names(Files):
    """What belongs to a store is known by exact names, and a store by the file that it is."""

    def damage(self, store):
        with contextlib.closing(sqlite3.connect(store, isolation_level=None)) as db:
            db.execute('UPDATE fact SET happened_day = happened_day + 1')

    def test_a_store_is_not_repaired_with_the_facts_of_another(self):
        anna, other = self.folder / 'anna', self.folder / 'anna.db'
        self.check_in(other)
        self.ok('export', '--store', other, '--format', 'json', '--out', self.folder / 'r.json')
        text = (self.folder / 'r.json').read_text(encoding='utf-8').replace('"wet"', '"dry"')
        self.check_in(other, date='2026-03-02')
        record = json.loads(text)
        record['facts'][0]['id'] = 'ab' * 16
        (self.folder / 'r.json').write_text(json.dumps(record), encoding='utf-8')
        self.ok('import', self.folder / 'r.json', '--store', other)  # leaves anna.db.before-import.copy
        self.check_in(anna)
        self.damage(anna)
        self.refused(1, 'verify', '--store', anna, '--repair', saying='nothing can be read of it or of a copy')

    def test_to_forget_a_store_leaves_another_and_its_copies(self):
        for name in ('anna', 'anna.2026', 'anna.db'):
            self.check_in(self.folder / name)
        (self.folder / 'anna.before-import.copy').write_bytes(b'mine')
        for kept in ('anna.2026.before-import.copy', 'anna.db.before-restore.copy', 'anna.holiday.copy', 'anna.txt.copy'):
            (self.folder / kept).write_bytes(b'kept')
        self.ok('forget', '--store', self.folder / 'anna', '--everything', '--yes')
        self.assertEqual(sorted(p.name for p in self.folder.iterdir()),
                         ['anna.2026', 'anna.2026.before-import.copy', 'anna.db', 'anna.db.before-restore.copy', 'anna.holiday.copy',
                          'anna.txt.copy', 'word'])

    def test_a_linked_store_is_mended_where_it_is(self):
        (self.folder / 'real').mkdir()
        real, link = self.folder / 'real' / 's.db', self.folder / 'link.db'
        for day in (1, 2, 3):
            self.check_in(real, date=f'2026-03-0{day}')
        link.symlink_to(real)
        with contextlib.closing(sqlite3.connect(real, isolation_level=None)) as db:
            db.execute('UPDATE fact SET happened_day = happened_day + 1 WHERE sequence = 2')
        self.assertEqual(self.ok('verify', '--store', link, '--repair')['facts'], 2)
        self.assertTrue(link.is_symlink())
        self.assertEqual(self.facts(real), 2)
        self.assertTrue((self.folder / 'real' / 's.db.damaged.copy').exists())

    def test_to_forget_a_linked_store_takes_its_copies_and_the_link(self):
        (self.folder / 'real').mkdir()
        real, link = self.folder / 'real' / 's.db', self.folder / 'link.db'
        self.check_in(real)
        (self.folder / 'real' / 's.db.before-import.copy').write_bytes(b'x')
        link.symlink_to(real)
        self.ok('forget', '--store', link, '--everything', '--yes')
        self.assertEqual([p.name for p in (self.folder / 'real').iterdir()], [])
        self.assertFalse(link.is_symlink())

    def test_to_forget_never_follows_a_copy_that_is_a_link(self):
        self.check_in()
        letter = self.folder / 'letter.txt'
        letter.write_text('Dear doctor', encoding='utf-8')
        (self.folder / 'store.db.before-import.copy').symlink_to(letter)
        self.ok('forget', '--store', self.store, '--everything', '--yes')
        self.assertEqual(letter.read_text(encoding='utf-8'), 'Dear doctor')
        self.assertEqual(sorted(p.name for p in self.folder.iterdir()), ['letter.txt', 'word'])

    def test_an_empty_file_is_a_new_store(self):
        empty = self.folder / 'empty.db'
        empty.touch()
        self.assertEqual(self.facts(empty), 0)
        self.assertEqual(empty.stat().st_size, 0)
        self.ok('verify', '--store', empty, '--repair')
        empty.write_bytes(b'')
        self.check_in(empty)
        self.assertEqual(self.facts(empty), 1)

    def test_an_empty_file_beside_copies_is_a_damaged_store(self):
        self.check_in()
        (self.folder / 'store.db.before-import.copy').write_bytes((self.folder / 'store.db').read_bytes())
        (self.folder / 'store.db').write_bytes(b'')
        self.refused(1, 'checkin', '--store', self.store, '--date', DAY, '--site', 'feet', '--level', 'wet', saying='is damaged')
        self.assertEqual(self.ok('verify', '--store', self.store, '--repair')['facts'], 1)


class Tables(Files):
    """Exports never mix the records of several stores."""

    def test_the_folder_of_one_export_does_not_keep_the_tables_of_another(self):
        anna, ben, out = self.folder / 'anna.db', self.folder / 'ben.db', self.folder / 'tables'
        self.check_in(anna)
        self.ok('session', '--store', anna, '--date', DAY, '--site', 'feet', '--waveform', 'direct')
        self.check_in(ben, level='dry')
        self.ok('export', '--store', anna, '--format', 'csv', '--out', out)
        (out / 'letter.txt').write_text('Dear doctor', encoding='utf-8')
        (out / 'my own.csv').write_text('a,b\r\n', encoding='utf-8')
        self.refused(1, 'export', '--store', ben, '--format', 'csv', '--out', out, saying='--force')
        self.ok('export', '--store', ben, '--format', 'csv', '--out', out, '--force')
        self.assertEqual(sorted(p.name for p in out.iterdir()), ['check-in.csv', 'columns.csv', 'letter.txt', 'my own.csv'])
        self.assertNotIn('wet', (out / 'check-in.csv').read_text(encoding='utf-8').replace('wet, dripping', ''))

    def test_force_never_empties_a_store_named_like_a_table(self):
        out = self.folder / 'tables'
        out.mkdir()
        self.check_in(out / 'check-in.csv')
        self.refused(1, 'export', '--store', out / 'check-in.csv', '--format', 'csv', '--out', out, '--force')
        self.assertEqual(self.facts(out / 'check-in.csv'), 1)


@unittest.skipUnless(SHIM, 'no library that makes stat fail was named')
class FailingCalls(Files):
    """A system call that fails is no answer about the file."""

    def failing(self, file, *args, turn=None):
        env = dict(os.environ, FIRSTDEW_NOW_MS=str(NOW_MS), LC_ALL='C.UTF-8', LD_PRELOAD=SHIM, FAILING_STAT=str(file))
        if turn:
            env['FAILING_TURN'] = str(turn)
        return subprocess.run([CLI, *map(str, args)], capture_output=True, text=True, env=env, check=False)

    def test_restore_does_not_take_a_failed_stat_for_no_store(self):
        other = self.folder / 'other.db'
        self.check_in(other, level='dry')
        self.ok('backup', '--store', other, '--out', self.folder / 'b.pgp', '--passphrase-file', self.word)
        for day in (1, 2, 3):
            self.check_in(date=f'2026-03-0{day}')
        kept = self.folder / 'store.db.before-restore.copy'
        for turn in range(1, 8):
            done = self.failing(self.store, 'restore', '--store', self.store, '--in', self.folder / 'b.pgp', '--passphrase-file', self.word,
                                turn=turn)
            with self.subTest(turn=turn):
                if done.returncode == 0:  # the look that failed was of no weight: then the record was kept
                    self.assertEqual(self.facts(kept), 3)
                    (self.folder / 'store.db').write_bytes(kept.read_bytes())
                    kept.unlink()
                else:
                    self.assertEqual(done.stdout, '')
                    self.assertRegex(done.stderr, r'\Afirstdew-cli: [^\n]+\n\Z')
                    self.assertEqual(self.facts(), 3)

    def test_an_export_does_not_take_a_failed_stat_for_a_free_name(self):
        self.check_in()
        there = self.folder / 'r.json'
        there.write_text('mine', encoding='utf-8')
        done = self.failing(there, 'export', '--store', self.store, '--format', 'json', '--out', there)
        self.assertEqual(done.returncode, 1)
        self.assertEqual(there.read_text(encoding='utf-8'), 'mine')

    def test_a_check_in_does_not_take_a_failed_stat_for_a_new_store(self):
        self.check_in()
        done = self.failing(self.store, 'checkin', '--store', self.store, '--date', DAY, '--site', 'feet', '--level', 'wet')
        self.assertEqual(done.returncode, 1)
        self.assertEqual(self.facts(), 1)


class Secrets(Files):
    def setUp(self):
        super().setUp()
        self.check_in()

    def back_up(self):
        return ('backup', '--store', self.store, '--out', self.folder / 'b.pgp', '--passphrase-file', self.word)

    def test_a_new_back_up_wants_eight_characters(self):
        for short in ('a', 'seven77', 'ääääääá'):
            self.word.write_text(short + '\n', encoding='utf-8')
            self.refused(1, *self.back_up(), saying='at least 8 characters')
        self.word.write_text('eight888\n', encoding='utf-8')
        self.ok(*self.back_up())

    def test_an_older_back_up_with_a_short_one_still_opens(self):
        self.ok('export', '--store', self.store, '--format', 'json', '--out', self.folder / 'r.json')
        self.word.write_text('abc\n', encoding='utf-8')
        with tempfile.TemporaryDirectory() as home:
            subprocess.run(['gpg', '--homedir', home, '--batch', '--quiet', '--pinentry-mode', 'loopback', '--passphrase-file', self.word,
                            '--symmetric', '-o', self.folder / 'b.pgp', self.folder / 'r.json'], check=True, capture_output=True)
        self.ok('restore', '--store', self.folder / 'new.db', '--in', self.folder / 'b.pgp', '--passphrase-file', self.word)

    def test_a_passphrase_that_others_can_read_is_refused(self):
        for mode in (0o644, 0o640, 0o604):
            self.word.chmod(mode)
            self.refused(1, *self.back_up(), saying='chmod 600')


class Said(Files):
    """Nothing that is said carries a terminal's commands."""
    ESCAPE = '\x1b]0;owned\x07'

    def test_errors_do_not_echo_what_moves_a_terminal(self):
        evil = self.ESCAPE + '\x9b31m\u202e\x7f'
        sheet = self.folder / 'sheet.json'
        sheet.write_text('{"format":"firstdew-care-sheet","version":1,"' + r'\u001b]0;x\u0007\u009b' + '":1}', encoding='utf-8')
        for call in (('verify', '--store', self.folder / evil), ('import', self.folder / evil, '--store', self.store),
                     ('checkin', '--store', self.store, '--date', evil, '--site', 'feet', '--level', 'wet'),
                     ('checkin', '--store', self.store, '--date', DAY, '--site', evil, '--level', 'wet'),
                     (evil,), ('verify', f'--{evil}'), ('caresheet', 'check', sheet)):
            done = self.run_cli(*call)
            with self.subTest(call=call):
                self.assertIn(done.returncode, (1, 2))
                self.assertNotRegex(done.stderr[:-1], '[\x00-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069]')


if __name__ == '__main__':
    unittest.main()
