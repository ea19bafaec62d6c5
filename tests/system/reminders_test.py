#!/usr/bin/python3
"""Reminders with the app closed, on a real session bus with a real notification daemon.

Usage: reminders_test.py --app FILE --cli FILE"""
import json
import subprocess
import sys
import unittest

import ui

APP, CLI = ui.argument('app'), ui.argument('cli')
TODAY = '2026-03-02'
AT = f'{TODAY}T20:40'  # after the hour of the invented person's check-in


class Reminders(unittest.TestCase):
    def setUp(self):
        self.desktop = ui.Desktop(notices=True)
        self.addCleanup(self.desktop.close)
        self.store = self.desktop.folder / 'record.db'
        self.cli('demo', '--out', self.store, '--today', TODAY)

    def cli(self, *args):
        done = subprocess.run([CLI, '--json', *map(str, args)], check=True, capture_output=True, text=True, env=self.desktop.env)
        return json.loads(done.stdout)

    def remind(self, at):
        return self.desktop.spawn(APP, '--store', str(self.store), '--remind', '--test-now', at)

    def shown(self):
        return int(self.desktop.dunstctl('count', 'displayed').stdout or 0)

    def due(self, at):
        return {r['kind'] for r in self.cli('due', '--store', self.store, '--at', at)['reminders']}

    def wait_shown(self, count):
        ui.wait_for(f'{count} notices', lambda: self.shown() == count)

    def test_what_is_due_is_shown_once_however_often_it_looks(self):
        self.assertIn('check-in', self.due(AT))
        first = self.remind(AT)
        self.wait_shown(len(self.due(AT)))
        second = self.remind(AT)
        self.assertEqual(second.wait(timeout=ui.PATIENCE), 0)  # one at a time
        first.kill()
        first.wait()
        third = self.remind(AT)  # after a crash: what is up counts as shown
        ui.wait_for('the third to look', lambda: self.owner())
        self.assertEqual(self.shown(), len(self.due(AT)))
        self.assertIsNone(third.poll())

    def owner(self):
        names = subprocess.run(['gdbus', 'call', '--session', '--dest', 'org.freedesktop.DBus', '--object-path', '/org/freedesktop/DBus',
                                '--method', 'org.freedesktop.DBus.ListNames'], env=self.desktop.env, capture_output=True, text=True, check=True).stdout
        return 'org.firstdew.Reminders.' in names

    def test_a_check_in_from_the_notice_is_recorded_and_withdraws_it(self):
        process = self.remind(AT)
        self.wait_shown(len(self.due(AT)))
        self.desktop.answer('Dry')
        ui.wait_for('the check-in', lambda: 'check-in' not in self.due(AT))
        facts = self.cli('outlook', '--store', self.store, '--today', TODAY)['sites']
        self.assertTrue(all(s['stage'] == 'keeping-dry' for s in facts))
        self.wait_shown(len(self.due(AT)))
        self.assertEqual(process.wait(timeout=ui.PATIENCE), 0)  # nothing left to be answered

    def test_later_puts_it_off_by_an_hour(self):
        before = self.due(AT)
        self.remind(AT)
        self.wait_shown(len(before))
        self.desktop.answer('Later')
        self.wait_shown(len(before) - 1)
        self.assertEqual(len(before - self.due(f'{TODAY}T21:30')), 1)
        self.assertEqual(self.due(f'{TODAY}T21:45'), before)

    def test_in_quiet_hours_and_with_nothing_due_it_ends_at_once(self):
        process = self.remind(f'{TODAY}T03:00')
        self.assertEqual(process.wait(timeout=ui.PATIENCE), 0)
        self.assertEqual(self.shown(), 0)

    def test_the_opened_app_takes_over(self):
        alone = self.remind(AT)
        self.wait_shown(len(self.due(AT)))
        app = ui.App(self.desktop, APP, self.store, '--test-now', AT, '--language', 'en')
        self.assertEqual(alone.wait(timeout=ui.PATIENCE), 0)
        self.assertEqual(self.shown(), len(self.due(AT)))  # nothing twice
        app.press('Hands: Dry')
        app.press('Feet: Dry')
        ui.wait_for('the notice to be withdrawn', lambda: self.shown() == len(self.due(AT)))
        self.assertNotIn('check-in', self.due(AT))

    def test_a_record_that_is_not_there_is_not_made(self):
        process = self.desktop.spawn(APP, '--store', str(self.desktop.folder / 'none.db'), '--remind')
        self.assertEqual(process.wait(timeout=ui.PATIENCE), 0)
        self.assertFalse((self.desktop.folder / 'none.db').exists())


if not APP or not CLI:
    sys.exit(__doc__)
unittest.main()
