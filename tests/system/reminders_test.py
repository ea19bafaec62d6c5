#!/usr/bin/python3
"""Reminders with the app closed, on a real session bus with a real notification daemon.

Usage: reminders_test.py --app FILE --cli FILE"""
import datetime
import json
import re
import subprocess
import sys
import unittest

import ui

APP, CLI = ui.argument('app'), ui.argument('cli')
TODAY = '2026-03-02'
AT = f'{TODAY}T20:40'  # after the hour of the invented person's check-in; two others are due for hours
HANDS, FEET = 'Hands: dry or clammy today?', 'Feet: dry or clammy today?'


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

    def notices(self, at):
        """How many notices stand for what is due: one for all whose time is long past when somebody looks at last, but for
        questions about a site, which each have their own."""
        all_due = self.cli('due', '--store', self.store, '--at', at)['reminders']
        limit = datetime.datetime.fromisoformat(at) - datetime.timedelta(minutes=15)
        late = sum(datetime.datetime.fromisoformat(r['at']) < limit and r['kind'] != 'check-in' for r in all_due)
        return len(all_due) - late + min(late, 1)

    def asked(self, at):
        """The sites about which is asked."""
        return {r['site'] for r in self.cli('due', '--store', self.store, '--at', at)['reminders'] if r['kind'] == 'check-in'}

    def levels(self):
        """The level of each site on the day, as the record holds it."""
        file = self.desktop.folder / 'all.json'
        file.unlink(missing_ok=True)
        self.cli('export', '--store', self.store, '--format', 'json', '--out', file)
        facts = json.loads(file.read_text(encoding='utf-8'))['facts']
        return {f['is']['site']: f['is']['level'] for f in facts if f['kind'] == 'check-in' and f['happened'].startswith(TODAY)}

    def wait_shown(self, count):
        ui.wait_for(f'{count} notices', lambda: self.shown() == count)

    def test_what_is_due_is_shown_once_however_often_it_looks(self):
        self.assertIn('check-in', self.due(AT))
        first = self.remind(AT)
        self.wait_shown(self.notices(AT))
        second = self.remind(AT)
        self.assertEqual(second.wait(timeout=ui.PATIENCE), 0)  # one at a time
        first.kill()
        first.wait()
        third = self.remind(AT)  # after a crash: what is up counts as shown
        ui.wait_for('the third to have looked', self.looked)
        self.assertEqual(self.shown(), self.notices(AT))
        self.assertIsNone(third.poll())

    def names(self):
        names = subprocess.run(['gdbus', 'call', '--session', '--dest', 'org.freedesktop.DBus', '--object-path', '/org/freedesktop/DBus',
                                '--method', 'org.freedesktop.DBus.ListNames'], env=self.desktop.env, capture_output=True, text=True, check=True).stdout
        return re.findall(r"'([^']*)'", names)

    def test_a_check_in_from_the_notice_is_recorded_and_withdraws_it(self):
        process = self.remind(AT)
        self.wait_shown(self.notices(AT))
        self.assertEqual(self.asked(AT), {'hands', 'feet'})
        self.desktop.answer('Dry', HANDS)
        ui.wait_for('the check-in', lambda: self.asked(AT) == {'feet'})
        self.assertEqual(self.levels(), {'hands': 'dry'})  # one tap answers for one site
        self.wait_shown(self.notices(AT))
        self.desktop.answer('Dry', FEET)
        ui.wait_for('the check-in', lambda: not self.asked(AT))
        facts = self.cli('outlook', '--store', self.store, '--today', TODAY)['sites']
        self.assertTrue(all(s['stage'] == 'keeping-dry' for s in facts))
        self.wait_shown(self.notices(AT))
        self.assertIsNone(process.poll())  # one dry evening does not take the hands' call back
        self.desktop.answer('Later', 'Hands: a top-up is due')
        self.assertEqual(process.wait(timeout=ui.PATIENCE), 0)  # nothing left to be answered

    def test_every_level_of_each_site_can_be_answered_on_its_notice(self):
        self.remind(AT)
        self.wait_shown(self.notices(AT))
        self.desktop.answer('Dripping', FEET)
        ui.wait_for('the check-in', lambda: self.levels() == {'feet': 'dripping'})
        self.desktop.answer('Wet', HANDS)
        ui.wait_for('the check-in', lambda: self.levels() == {'feet': 'dripping', 'hands': 'wet'})
        self.assertEqual(self.asked(AT), set())

    LEVELS = {HANDS, 'Dry', 'Clammy', 'Wet', 'Dripping'}  # the first is the notice itself

    def test_a_question_offers_its_four_levels_and_later(self):
        self.remind(AT)
        self.wait_shown(self.notices(AT))
        self.assertEqual(self.desktop.offered()[HANDS], self.LEVELS | {'Later'})

    def test_on_a_phone_a_question_offers_its_four_levels_and_no_fifth_button(self):
        self.desktop.env['XDG_CURRENT_DESKTOP'] = 'Phosh:GNOME'
        self.remind(AT)
        self.wait_shown(self.notices(AT))
        self.assertEqual(self.desktop.offered()[HANDS], self.LEVELS)
        self.assertIn('Later', self.desktop.offered()['Hands: a top-up is due'])

    def test_later_puts_it_off_by_an_hour(self):
        before = self.due(AT)
        self.remind(AT)
        self.wait_shown(self.notices(AT))
        self.desktop.answer('Later', HANDS)
        ui.wait_for('it to be put off', lambda: self.asked(AT) == {'feet'})
        self.wait_shown(self.notices(AT))
        self.assertEqual(self.asked(f'{TODAY}T21:30'), {'feet'})
        self.assertEqual(self.asked(f'{TODAY}T21:45'), {'hands', 'feet'})
        self.assertEqual(self.due(f'{TODAY}T21:45'), before)

    def test_what_came_while_nobody_looked_is_one_notice_and_is_put_off_as_one(self):
        late = self.due(AT) - {'check-in'}
        self.assertGreater(len(late), 1)
        self.remind(AT)
        self.wait_shown(3)  # and a question for each site
        self.desktop.answer('Later', 'Hands: a top-up is due')
        ui.wait_for('them to be put off', lambda: self.due(f'{TODAY}T21:30') == {'check-in'})
        self.wait_shown(2)
        self.assertEqual(self.due(f'{TODAY}T21:45'), late | {'check-in'})

    def test_one_that_is_up_stays_in_quiet_hours_and_nothing_new_comes(self):
        process = self.remind(AT)
        self.wait_shown(self.notices(AT))
        ui.wait_for('it to have looked', self.looked)  # what is up is kept in a file by then
        process.kill()
        process.wait()
        again = self.remind(f'{TODAY}T23:50')
        ui.wait_for('it to have looked', self.looked)
        self.assertEqual(self.shown(), self.notices(AT))
        again.kill()
        again.wait()
        self.remind('2026-03-03T03:00')
        self.wait_shown(0)  # of the day before

    def test_what_was_wiped_away_stays_away_after_a_restart_and_is_forgotten_with_the_record(self):
        process = self.remind(AT)
        self.wait_shown(self.notices(AT))
        self.desktop.dunstctl('close-all')
        self.assertEqual(process.wait(timeout=ui.PATIENCE), 0)
        kept = self.store.with_name('record.db.notices')
        self.assertEqual(kept.stat().st_mode & 0o777, 0o600)
        daemon = next(p for p in self.desktop.processes if p.args[0] == 'dunst')
        daemon.kill()
        daemon.wait()
        ui.wait_for('the daemon to be gone', lambda: 'org.freedesktop.Notifications' not in self.names())
        self.desktop.start_notices()
        self.assertEqual(self.remind(AT).wait(timeout=ui.PATIENCE), 0)
        self.assertEqual(self.shown(), 0)
        self.cli('forget', '--store', self.store, '--everything', '--yes')
        self.assertFalse(kept.exists())

    def test_what_is_up_goes_with_the_record(self):
        process = self.remind(AT)
        self.wait_shown(self.notices(AT))
        self.cli('forget', '--store', self.store, '--everything', '--yes')
        self.looked()
        self.wait_shown(0)
        self.assertEqual(process.wait(timeout=ui.PATIENCE), 0)
        self.assertFalse(self.store.with_name('record.db.notices').exists())

    def looked(self):
        """Whoever looks after the reminders has been asked to look, and has."""
        name = next((n for n in self.names() if n.startswith('org.firstdew.Reminders.')), None)
        return name and subprocess.run(['gdbus', 'call', '--session', '--dest', name, '--object-path', '/org/firstdew/Reminders', '--method',
                                        'org.firstdew.Reminders.Update'], env=self.desktop.env, capture_output=True, check=False).returncode == 0

    def test_in_quiet_hours_and_with_nothing_due_it_ends_at_once(self):
        process = self.remind(f'{TODAY}T03:00')
        self.assertEqual(process.wait(timeout=ui.PATIENCE), 0)
        self.assertEqual(self.shown(), 0)

    def test_the_opened_app_takes_over(self):
        alone = self.remind(AT)
        self.wait_shown(self.notices(AT))
        app = ui.App(self.desktop, APP, self.store, '--test-now', AT, '--language', 'en')
        self.assertEqual(alone.wait(timeout=ui.PATIENCE), 0)
        self.assertEqual(self.shown(), self.notices(AT))  # nothing twice
        app.press('Hands: Dry')
        app.press('Feet: Dry')
        ui.wait_for('the notice to be withdrawn', lambda: self.shown() == self.notices(AT))
        self.assertNotIn('check-in', self.due(AT))

    def test_a_record_that_is_not_there_is_not_made(self):
        process = self.desktop.spawn(APP, '--store', str(self.desktop.folder / 'none.db'), '--remind')
        self.assertEqual(process.wait(timeout=ui.PATIENCE), 0)
        self.assertFalse((self.desktop.folder / 'none.db').exists())

    def test_a_record_that_cannot_be_read_is_named_and_nothing_is_shown(self):
        content = self.store.read_bytes()
        self.store.write_bytes(content[:4096] + b'?' * (len(content) - 4096))
        self.assertEqual(self.remind(AT).wait(timeout=ui.PATIENCE), 1)
        self.assertIn(str(self.store), (self.desktop.folder / 'firstdew.log').read_text(encoding='utf-8'))
        self.assertEqual(self.shown(), 0)


if not APP or not CLI:
    sys.exit(__doc__)
unittest.main()
