"""Runs firstdew-cli for the tests beside this file."""
import json
import os
import pathlib
import subprocess
import sys
import tempfile
import unittest

CLI = os.path.abspath(sys.argv.pop(1)) if len(sys.argv) > 1 else 'firstdew-cli'
NOW_MS = 1772712000000  # 2026-03-05T12:00:00Z


class CliTest(unittest.TestCase):
    """A folder of its own and a clock that stands still."""

    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = pathlib.Path(folder.name)
        self.store = str(self.folder / 'store.db')

    def run_cli(self, *args, now_ms=NOW_MS):
        env = dict(os.environ, FIRSTDEW_NOW_MS=str(now_ms), LC_ALL='C.UTF-8')
        return subprocess.run([CLI, *map(str, args)], capture_output=True, text=True, env=env, check=False)

    def ok(self, *args, **kwargs):
        """The JSON answer of a call that has to succeed."""
        done = self.run_cli('--json', *args, **kwargs)
        self.assertEqual(done.returncode, 0, f'{args}: {done.stderr}')
        self.assertEqual(done.stderr, '')
        return json.loads(done.stdout)

    def refused(self, code, *args, saying=''):
        """One clear line, the exit code, and every file in the folder as it was."""
        before = self.files()
        done = self.run_cli(*args)
        with self.subTest(call=args):
            self.assertEqual(done.returncode, code, done.stderr + done.stdout)
            self.assertEqual(done.stdout, '')
            self.assertRegex(done.stderr, r'\Afirstdew-cli: [^\n]+\n\Z')
            self.assertIn(saying, done.stderr)
            self.assertEqual(self.files(), before)
        return done.stderr

    def files(self):
        return {p.name: p.read_bytes() for p in sorted(self.folder.rglob('*')) if p.is_file()}
