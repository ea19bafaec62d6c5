#!/usr/bin/python3
"""Files of any size and shape: what is refused at the door, and how much memory and time the rest takes.

Usage: cli_bounds_test.py PATH-OF-FIRSTDEW-CLI
"""
import concurrent.futures
import json
import os
import resource
import subprocess
import tempfile
import unittest

import bounds
from cli import CLI, NOW_MS, CliTest

DAY = '2026-03-04'
WHO = 'ab' * 16


def question(number, corrects=''):
    more = f'"corrects":"{corrects}",' if corrects else ''
    return (f'{{"id":"{number:032x}","person":"{WHO}","kind":"question","happened":"{DAY}T08:00","recorded_ms":{1772000000000 + number},'
            f'{more}"is":{{"text":"x"}}}}')


def record(facts):
    return '{"format":"firstdew-record","version":1,"facts":[\n' + ',\n'.join(facts) + '\n]}\n'


class Bounds(CliTest):
    def measured(self, *args):
        """The answer and the most memory that the call had, in MB."""
        env = dict(os.environ, FIRSTDEW_NOW_MS=str(NOW_MS), LC_ALL='C.UTF-8')
        with subprocess.Popen([CLI, '--json', *map(str, args)], stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, env=env) as p:
            out, err = p.stdout.read(), p.stderr.read()
            _, status, usage = os.wait4(p.pid, 0)
            p.returncode = os.waitstatus_to_exitcode(status)
        return p.returncode, out, err, usage.ru_maxrss / 1024

    def write(self, name, text):
        file = self.folder / name
        file.write_text(text, encoding='utf-8')
        return file

    def test_nesting_is_refused_before_it_takes_memory(self):
        for text in ('[' * 10_000_000, '{"a":' * 1_000_000, '{"format":"firstdew-record","version":1,"facts":[' + '[' * 5_000_000):
            for call in (('caresheet', 'check', self.write('deep.json', text)), ('import', self.folder / 'deep.json', '--store', self.store)):
                code, out, err, memory = self.measured(*call)
                self.assertEqual((code, out), (1, ''), err[:200])
                self.assertLess(memory, 90)

    def test_a_care_sheet_is_small(self):
        for text in (' ' * 70_000 + '{}', '{"who":"' + 'x' * 5_000_000 + '"}', '[' + '1,' * 3_000_000):
            code, _, err, memory = self.measured('caresheet', 'check', self.write('big.json', text))
            self.assertEqual(code, 1)
            self.assertLess(memory, 60)
            self.assertIn('larger than', err)

    def test_an_import_takes_a_small_multiple_of_its_file(self):
        file = self.write('many.json', record(question(i) for i in range(1, 60_001)))
        size = file.stat().st_size / 2**20
        code, out, err, memory = self.measured('import', file, '--store', self.store)
        self.assertEqual(code, 0, err)
        self.assertEqual(json.loads(out)['added'], 60_000)
        self.assertLess(memory, 40 + 10 * size)

    FACTS = 30_000

    def within(self, file, facts, *args):
        """The call succeeds in the memory that the document states for that file."""
        code, out, err, memory = self.measured(*args)
        self.assertEqual(code, 0, err)
        self.assertLess(memory, bounds.most(os.path.getsize(file), facts) / bounds.MB, args)
        return json.loads(out)

    def test_the_shortest_facts_take_what_is_stated(self):
        for make, name in ((bounds.nameless_json, 'a.json'), (bounds.narrow_table, 'b.csv'), (bounds.named_json, 'c.json')):
            file, store = make(self.folder / name, self.FACTS), self.folder / f'{name}.db'
            self.assertEqual(self.within(file, self.FACTS, 'import', file, '--store', store)['added'], self.FACTS)
            # Once more: now everything recorded is compared as well.
            self.assertGreaterEqual(self.within(file, 2 * self.FACTS, 'import', file, '--store', store)['known'], 0)

    def test_long_texts_take_what_is_stated(self):
        file = bounds.named_json(self.folder / 'long.json', 3_000, 'x' * 4_000)
        self.within(file, 3_000, 'import', file, '--store', self.store)

    def test_a_back_up_and_its_restoration_take_what_is_stated(self):
        record = bounds.named_json(self.folder / 'r.json', self.FACTS)
        self.ok('import', record, '--store', self.store)
        word = self.write('word', 'a long passphrase\n')
        word.chmod(0o600)
        sealed = self.folder / 'b.pgp'
        # What counts is the record: the sealed file is packed.
        self.within(record, self.FACTS, 'backup', '--store', self.store, '--out', sealed, '--passphrase-file', word)
        for store in (self.store, self.folder / 'new.db'):
            self.within(record, self.FACTS, 'restore', '--store', store, '--in', sealed, '--passphrase-file', word)

    def test_a_table_of_commas_is_refused_before_it_takes_memory(self):
        for text in (',' * 8_000_000, 'kind,happened,text\n' + ',' * 8_000_000, 'kind,happened,text\n' + 'a\n' * 4_000_000):
            file = self.write('commas.csv', text)
            code, _, err, memory = self.measured('import', file, '--store', self.store)
            self.assertEqual(code, 1, err)
            self.assertLess(memory, bounds.most(len(text), 0) / bounds.MB)

    def test_readings_intervals_and_worlds_are_small_files(self):
        trace = self.write('trace.csv', 'second,milliamp\n' + '0,0\n' * 5_000_000)
        intervals = self.write('intervals.csv', 'left,right\n' + '1,\n' * 5_000_000)
        world = self.write('world.json', '{"a":[' + '1,' * 5_000_000 + '1]}')
        for call in (('dose', trace, '--site', 'feet', '--waveform', 'direct', '--age', 'adult'), ('fit', intervals, '--family', 'weibull'),
                     ('rehearsal', '--people', 1, '--days', 30, '--seed', 1, '--world', world)):
            code, _, err, memory = self.measured(*call)
            self.assertEqual(code, 1, err)
            self.assertIn('larger than', err)
            self.assertLess(memory, 90)

    def test_what_is_no_record_takes_no_more(self):
        for text in ('{"x":[' + '1,' * 4_000_000 + '1]}', '{"format":"firstdew-record","version":1,"facts":[' + '1,' * 4_000_000 + '1]}',
                     '{"format":"firstdew-record","version":1,"facts":[{"is":[' + '1,' * 4_000_000 + '1]}]}',
                     '{' + ','.join(f'"{i}":1' for i in range(400_000)) + '}'):
            code, _, err, memory = self.measured('import', self.write('odd.json', text), '--store', self.store)
            self.assertEqual(code, 1, err)
            self.assertLess(memory, 120)

    def test_what_is_packed_to_explode_is_refused(self):
        plain = self.folder / 'zeros'
        with open(plain, 'wb') as file:
            file.truncate(400 << 20)
        word = self.write('word', 'a long passphrase\n')
        word.chmod(0o600)
        with tempfile.TemporaryDirectory() as home:
            subprocess.run(['gpg', '--homedir', home, '--batch', '--quiet', '--pinentry-mode', 'loopback', '--passphrase-file', word,
                            '--compress-algo', 'zlib', '--symmetric', '-o', self.folder / 'b.pgp', plain], check=True, capture_output=True)
        plain.unlink()
        self.assertLess((self.folder / 'b.pgp').stat().st_size, 2 << 20)
        code, _, err, memory = self.measured('restore', '--store', self.store, '--in', self.folder / 'b.pgp', '--passphrase-file', word)
        self.assertEqual(code, 1)
        self.assertIn('unpacks to more than', err)
        self.assertLess(memory, 350)
        self.assertFalse(os.path.exists(self.store))

    def test_long_chains_of_corrections_are_quick_and_circles_refused(self):
        """Quick: the processor time of a chain is held against that of as many facts without one."""
        def seconds(corrects):
            store = self.folder / f'{corrects}.db'
            file = self.write('chain.json', record(question(i, f'{i - 1:032x}' if corrects and i > 1 else '') for i in range(1, 10_001)))
            self.ok('import', file, '--store', store)
            before = resource.getrusage(resource.RUSAGE_CHILDREN)
            self.ok('outlook', '--store', store, '--today', '2026-03-05')
            after = resource.getrusage(resource.RUSAGE_CHILDREN)
            return after.ru_utime - before.ru_utime
        self.assertLess(seconds(True), 4 * seconds(False) + 0.2)
        circle = self.write('circle.json', record([question(1), question(2, f'{4:032x}'), question(3, f'{2:032x}'), question(4, f'{3:032x}')]))
        self.refused(1, 'import', circle, '--store', self.store, saying='line 3')
        self.refused(1, 'import', circle, '--store', self.store, saying='corrects')
        self.ok('import', self.write('half.json', record([question(2, f'{4:032x}'), question(3, f'{2:032x}')])), '--store', self.store)
        rest = self.write('rest.json', record([question(4, f'{3:032x}')]))
        self.refused(1, 'import', rest, '--store', self.store, saying='line 2')

    def test_a_text_that_is_no_table_is_refused(self):
        for text in ('Dear doctor\n', 'kin,happened\n', 'happened,site,level\n', '7'):
            self.refused(1, 'import', self.write('letter.csv', text), '--store', self.store, saying='line 1')

    def test_an_empty_world_is_the_usual_one(self):
        call = ('rehearsal', '--people', 2, '--days', 60, '--seed', 1)
        usual = self.ok(*call)['policies']
        for text in ('{}', ' { } '):
            self.assertEqual(self.ok(*call, '--world', self.write('w.json', text))['policies'], usual)
        self.refused(1, *call, '--world', self.write('w.json', '{"":1}'))

    def test_many_imports_at_once_are_all_done_or_refused_clearly(self):
        file = self.write('many.json', record(question(i) for i in range(1, 401)))
        self.ok('checkin', '--store', self.store, '--date', DAY, '--site', 'feet', '--level', 'dry', '--person', WHO)

        def run(_):
            return self.run_cli('import', file, '--store', self.store)
        with concurrent.futures.ThreadPoolExecutor(8) as pool:
            done = list(pool.map(run, range(8)))
        for one in done:
            if one.returncode != 0:
                self.assertIn('another program', one.stderr)
        self.assertIn(0, [one.returncode for one in done])
        self.assertEqual(self.ok('verify', '--store', self.store)['facts'], 402)
        self.assertEqual([p.name for p in self.folder.iterdir() if p.name.endswith('.part')], [])


class CareSheets(CliTest):
    SHEET = ('caresheet', 'new', '--who', 'Dr. A', '--sites', 'hands', '--given')

    def test_notes_in_any_script_fit_the_code_or_are_refused(self):
        sheet = self.folder / 's.json'
        for letter, fits in (('д', True), ('ш', True), ('x', True), ('雨', False), ('\U0001F4A7', False)):
            call = (*self.SHEET, DAY, '--notes', letter * 800, '--out', sheet, '--force')
            if fits:
                self.ok(*call)
                self.ok('caresheet', 'show', sheet, '--qr', self.folder / 'q.svg', '--force')
            else:
                self.refused(1, *call, saying='too long for one QR code')

    def test_a_sheet_is_accepted_at_the_local_time(self):
        self.ok('checkin', '--store', self.store, '--date', DAY, '--site', 'feet', '--level', 'dry')
        sheet = self.folder / 's.json'
        self.ok(*self.SHEET, '2026-03-05', '--out', sheet)
        env = dict(os.environ, FIRSTDEW_NOW_MS=str(NOW_MS), LC_ALL='C.UTF-8', TZ='Pacific/Kiritimati')  # 14 hours ahead
        done = subprocess.run([CLI, 'caresheet', 'accept', sheet, '--store', self.store], env=env, capture_output=True, text=True, check=False)
        self.assertEqual(done.returncode, 0, done.stderr)
        self.ok('export', '--store', self.store, '--format', 'json', '--out', self.folder / 'r.json')
        accepted = json.loads((self.folder / 'r.json').read_text(encoding='utf-8'))['facts'][1:]
        self.assertEqual(accepted[0]['kind'], 'care-sheet')
        self.assertEqual({f['happened'] for f in accepted}, {'2026-03-06T02:00'})

    def test_a_sheet_of_a_day_to_come_is_not_accepted(self):
        self.ok('checkin', '--store', self.store, '--date', DAY, '--site', 'feet', '--level', 'dry')
        sheet = self.folder / 's.json'
        self.ok(*self.SHEET, '2026-03-06', '--out', sheet)
        self.refused(1, 'caresheet', 'accept', sheet, '--store', self.store, saying='has not come yet')


class Names(CliTest):
    def test_the_script_of_a_session_is_called_script(self):
        call = ('--site', 'feet', '--waveform', 'direct', '--age', 'adult')
        self.assertEqual(self.ok('script', *call), self.ok('bath', *call))
        listed = self.run_cli('--help').stdout
        self.assertRegex(listed, r'(?m)^ *script ')
        self.assertNotRegex(listed, r'(?m)^ *bath\b')


if __name__ == '__main__':
    unittest.main()
