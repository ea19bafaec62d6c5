#!/usr/bin/python3
"""The invented record goes out by every way that promises to lose nothing, and comes back the same.

Usage: cli_roundtrip_test.py PATH-OF-FIRSTDEW-CLI
"""
import os
import subprocess
import unittest

from cli import CliTest


class RoundTrip(CliTest):
    def setUp(self):
        super().setUp()
        self.ok('demo', '--out', self.store, '--today', '2026-03-05')
        self.json = self.export(self.store, 'demo.json').read_bytes()
        self.assertGreater(self.json.count(b'\n'), 700)

    def export(self, store, name):
        out = self.folder / name
        self.ok('export', '--store', store, '--format', 'json', '--out', out)
        return out

    def test_through_json(self):
        new = self.folder / 'new.db'
        done = self.ok('import', self.folder / 'demo.json', '--store', new)
        self.assertEqual((done['added'], done['known']), (done['read'], 0))
        self.assertEqual(self.export(new, 'again.json').read_bytes(), self.json)

    def test_through_tables(self):
        self.ok('export', '--store', self.store, '--format', 'csv', '--out', self.folder / 'tables')
        new = self.folder / 'new.db'
        self.ok('import', self.folder / 'tables', '--store', new)
        again = self.export(new, 'again.json').read_bytes()
        # Tables keep the facts, not the order of those recorded in the same millisecond.
        self.assertEqual(sorted(line.rstrip(b',') for line in again.splitlines()), sorted(line.rstrip(b',') for line in self.json.splitlines()))

    def test_through_a_back_up_and_gpg(self):
        word = self.folder / 'word'
        word.write_text('a word nobody knows', encoding='utf-8')
        word.chmod(0o600)
        back_up = self.folder / 'demo.pgp'
        self.ok('backup', '--store', self.store, '--out', back_up, '--passphrase-file', word)
        home = self.folder / 'gnupg'
        home.mkdir(mode=0o700)
        env = dict(os.environ, GNUPGHOME=str(home))
        self.addCleanup(subprocess.run, ['gpgconf', '--kill', 'all'], env=env, check=False)
        gpg = ['gpg', '--batch', '--quiet', '--pinentry-mode', 'loopback', '--passphrase-file', word]
        opened = subprocess.run([*gpg, '-d', back_up], env=env, check=True, capture_output=True).stdout
        self.assertEqual(opened, self.json)
        restored = self.folder / 'restored.db'
        self.ok('restore', '--store', restored, '--in', back_up, '--passphrase-file', word)
        self.assertEqual(self.export(restored, 'restored.json').read_bytes(), self.json)


if __name__ == '__main__':
    unittest.main()
