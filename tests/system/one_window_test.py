#!/usr/bin/python3
"""One record has one window: a second start brings the first window forward and ends.

Usage: one_window_test.py --app FILE --cli FILE"""
import os
import stat
import subprocess
import unittest

import ui

APP, CLI = ui.argument('app'), ui.argument('cli')
NOW = '2026-03-02T19:00'


class OneWindow(unittest.TestCase):
    @classmethod
    def setUpClass(cls):  # the accessibility library joins one desktop in the life of a process
        cls.desktop = ui.Desktop(size=(390, 844))
        cls.addClassCleanup(cls.desktop.close)

    def setUp(self):
        self.store = self.desktop.folder / f'{self.id()}.db'
        subprocess.run([CLI, 'demo', '--out', self.store, '--today', NOW[:10]], check=True, capture_output=True)

    def start(self, store=None):
        app = ui.App(self.desktop, APP, store or self.store, '--test-now', NOW, '--size', '390x844', '--language', 'en')
        self.addCleanup(lambda: app.process.poll() is None and app.kill())
        app.see('Hands: Dry')
        return app

    def second(self, *options, store=None, **env):
        """Exit code and error text of a further start."""
        run = subprocess.run([APP, '--store', str(store or self.store), '--test-now', NOW, *options], env={**self.desktop.env, **env},
                             capture_output=True, text=True, timeout=ui.PATIENCE, check=False)
        return run.returncode, run.stderr

    def test_a_second_start_brings_the_first_window_to_the_page_asked_for_and_ends(self):
        app = self.start()
        code, _ = self.second('--page', 'plan')
        self.assertEqual(code, 0)
        app.see('Days away')

    def test_without_a_page_the_first_window_stays_where_it_is(self):
        app = self.start()
        app.press('Plan', 'page tab')
        app.see('Days away')
        self.assertEqual(self.second()[0], 0)
        app.see('Days away')

    def test_a_link_to_the_record_is_the_same_record(self):
        link = self.store.with_suffix('.link')
        link.symlink_to(self.store)
        self.start()
        self.assertEqual(self.second(store=link)[0], 0)

    def test_another_record_has_a_window_of_its_own(self):
        self.start()
        other = self.store.with_suffix('.other')
        subprocess.run([CLI, 'demo', '--out', other, '--today', NOW[:10]], check=True, capture_output=True)
        self.start(other)

    def test_after_a_kill_the_record_opens_again(self):
        self.start().kill()
        self.start()

    def test_where_the_first_window_cannot_be_asked_the_second_start_says_so_and_ends(self):
        self.start()
        code, said = self.second(DBUS_SESSION_BUS_ADDRESS=f'unix:path={self.desktop.folder}/nobody')
        self.assertEqual(code, 1)
        self.assertIn('already open in another window', said)

    def test_what_the_app_writes_is_the_owners_alone_whatever_the_mask(self):
        home = self.desktop.folder / 'open-home'
        home.mkdir()
        kept = home / '.local/share/firstdew'
        kept.mkdir(parents=True)
        subprocess.run([CLI, 'demo', '--out', kept / 'record.db', '--today', NOW[:10]], check=True, capture_output=True)
        env = {**self.desktop.env, 'HOME': str(home), 'PATH': str(home)}  # no systemctl: the desktop's autostart is used
        app = subprocess.Popen([APP, '--test-now', NOW], env=env, stderr=subprocess.DEVNULL, preexec_fn=lambda: os.umask(0))
        self.addCleanup(lambda: (app.kill(), app.wait()))
        entry = home / '.config/autostart/firstdew-remind.desktop'
        ui.wait_for('the autostart entry', entry.exists)
        made = [p for p in (home / '.config').rglob('*')] + [p for p in kept.iterdir() if p.is_file()]
        self.assertGreater(len(made), 2)
        for path in made:
            self.assertEqual(stat.S_IMODE(path.stat().st_mode) & 0o077, 0, path)


if __name__ == '__main__':
    unittest.main()
