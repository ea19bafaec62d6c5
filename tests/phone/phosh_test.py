#!/usr/bin/python3
"""The app in a real phone's shell: started from its icon, tapped, typed into, led through a session, killed, asked on the lock screen.

Usage: phosh_test.py --app FILE --cli FILE --root FOLDER [--pictures FOLDER]     FOLDER is made by root.sh; run as root."""
import json
import pathlib
import re
import subprocess
import sys
import time
import unittest

import phone
import ui

APP, CLI, ROOT, PICTURES = (ui.argument(name) for name in ('app', 'cli', 'root', 'pictures'))
NOW = '2026-03-02T19:00'
EVENING = '2026-03-02T20:31'
NAME = 'First name, or what you like to be called'
ICON = (45, 146)  # of the first app, in the overview
SPEED = '12'
PHASE = 4 * ui.PATIENCE
LOCKED_NOTICES = (20, 350, 320, 120)  # where the shell shows them, in pixels
BAR = (180, 10)  # at a tap the list comes down
LISTED = (20, 455, 320, 40)  # the buttons of the first notice there
DRIPPING = (310, 473)  # the last of them
APPEARED = 8  # of 255, by which a notice brightens what is bare there


class OnThePhone(unittest.TestCase):
    size = (360, 720)
    locked = False
    idle = 0

    @classmethod
    def setUpClass(cls):
        cls.phone = phone.Phone(ROOT, cls.size, cls.locked, cls.idle)
        cls.addClassCleanup(cls.phone.close)

    def setUp(self):
        self.store = self.phone.folder / f'{self.id()}.db'
        subprocess.run([CLI, 'demo', '--out', self.store, '--today', NOW[:10]], check=True, capture_output=True)

    def start(self, *options, now=NOW):
        app = phone.App(self.phone, APP, self.store, '--test-now', now, '--language', 'en', *options)
        self.addCleanup(lambda: app.process.poll() is None and app.kill())
        app.at_rest()
        return app

    def picture(self, name):
        if PICTURES:
            pathlib.Path(PICTURES).mkdir(parents=True, exist_ok=True)
            self.phone.picture(pathlib.Path(PICTURES) / f'{name}.png')

    def facts(self):
        out = self.store.with_suffix('.json')
        subprocess.run([CLI, 'export', '--format', 'json', '--store', self.store, '--out', out, '--force'], check=True, capture_output=True)
        return json.loads(out.read_text(encoding='utf-8'))['facts']

    def tearDown(self):
        self.picture(f'end-of-{self._testMethodName}')

    def frame(self, app):
        return app.place(app.tree.getChildAtIndex(0))


class Unlocked(OnThePhone):
    def test_its_icon_starts_it_and_a_tap_checks_in(self):
        self.picture('overview')
        self.phone.tap(*ICON)
        ui.wait_for('the icon to take the tap', self.phone.icon_was_tapped)
        app = self.start()
        app.see('Hands: Dry')
        # No title bar: the app has all between the shell's two bars.
        ui.wait_for('the whole screen', lambda: self.frame(app)[2:] == (self.size[0], self.size[1] - phone.TOP_BAR - phone.HOME_BAR))
        app.press('Hands: Dry')
        app.see('Undo')
        self.picture('checked-in')
        ui.wait_for('the touch to be felt', lambda: "'button-pressed' for 'org.firstdew'" in self.phone.felt())
        self.assertFalse(self.phone.keyboard_is_up())
        app.end()
        today = [f for f in self.facts() if f['kind'] == 'check-in'][-1]
        self.assertEqual((today['is']['site'], today['is']['level']), ('hands', 'dry'))

    def test_the_keyboard_comes_with_a_field_and_goes_with_it(self):
        app = self.start('--page', 'plan')
        app.press('Settings')
        app.press('People')
        app.see(NAME, 'text')
        self.assertFalse(self.phone.keyboard_is_up())
        app.press(NAME, 'text')
        ui.wait_for('the keyboard', self.phone.keyboard_is_up)
        self.picture('keyboard')
        self.phone.type('anna')
        ui.wait_for('the letters', lambda: 'anna' in app.find(NAME, 'text').queryText().getText(0, -1))
        self.picture('typed')
        app.press('Back')
        ui.wait_for('the keyboard to go', lambda: not self.phone.keyboard_is_up())
        self.picture('keyboard-gone')

    def reading(self, app, digits):
        app.press(re.compile('Enter the meter reading'))
        for key in digits:
            app.press(key)
        app.press('Enter')

    def test_a_whole_session_with_the_app_killed_in_its_midst(self):
        app = self.start('--page', 'bath', '--test-speed', SPEED)
        app.begin_as_last(re.compile('On, at zero, .*: begin'))
        app.press('It is comfortable')
        self.picture('session')
        self.reading(app, '15')
        app.kill()
        app = self.start('--test-speed', SPEED)
        app.see('What did the machine do meanwhile?', 'heading')
        self.picture('after-the-kill')
        app.bring_up('I do not know', above=app.place(app.find('Stop'))[1])
        app.press('I do not know')
        app.press('All checked, begin')
        app.press('On, at zero, direct current')
        for last in (False, True):
            app.press('It is comfortable')
            self.reading(app, '16')
            app.press('Current is at zero', patience=PHASE)
            if not last:
                app.press('Leads swapped')
        app.showing('Done')
        ui.wait_for('the end to be felt', lambda: "'timeout-completed' for 'org.firstdew'" in self.phone.felt())
        self.picture('done')
        app.bring_up('Fine', above=app.place(app.find('Look at your skin and say how it is.'))[1])
        app.press('Fine', 'check box')
        app.press('Save in the diary')
        ui.wait_for('the session in the diary', lambda: any(f['kind'] == 'bath-event' and f['happened'].startswith(NOW[:10]) for f in self.facts()))


class Sideways(OnThePhone):
    size = (720, 360)

    def test_a_session_is_led_with_the_phone_on_its_side(self):
        app = self.start('--page', 'bath', '--test-speed', SPEED)
        app.begin_as_last(re.compile('On, at zero, .*: begin'))
        app.press('It is comfortable')
        app.see(re.compile('Enter the meter reading'))
        width, height = self.frame(app)[2:]
        for name in ('Hold still. Everything stays under water.', re.compile(r'\d+ min .* left'), re.compile('Enter the meter reading'), 'It is unpleasant', 'Stop'):
            x, y, wide, high = ui.wait_for(f'the place of {name}', lambda name=name: app.whereabouts(name))
            self.assertTrue(0 <= x and x + wide <= width and 0 <= y and y + high <= height and high > 0, name)
        self.picture('session-sideways')
        app.press('Stop')
        app.see('Stopped', 'heading')


class Dark(OnThePhone):
    def test_the_pictures_in_the_dark(self):
        app = self.start('--theme', 'dark')
        app.see('Hands: Dry')
        self.picture('dark')
        app.press('Start now')
        app.begin_as_last(re.compile('On, at zero, .*: begin'))
        app.press('It is comfortable')
        app.see(re.compile('Enter the meter reading'))
        self.picture('dark-session')


class Idle(OnThePhone):
    idle = 20  # seconds; more than from one touch to the next

    def test_the_screen_stays_on_while_a_session_runs_and_goes_dark_after_it(self):
        app = self.start('--page', 'bath', '--test-speed', SPEED)
        app.begin_as_last(re.compile('On, at zero, .*: begin'))
        app.press('It is comfortable')
        app.see(re.compile('Enter the meter reading'))
        touched = time.monotonic()
        while time.monotonic() < touched + 2.5 * self.idle:
            self.assertFalse(self.phone.is_dark())
            time.sleep(1)
        app.press('Stop')
        app.see('Stopped', 'heading')
        ui.wait_for('the screen to go dark', self.phone.is_dark, 2.5 * self.idle)


class Asked(OnThePhone):
    """With the app closed, as its timer asks."""

    def remind(self):
        process = self.phone.spawn(APP, '--store', str(self.store), '--remind', '--test-now', EVENING, '--language', 'en')
        self.addCleanup(lambda: process.poll() is None and process.kill())


class Locked(Asked):
    locked = True

    def test_the_lock_screen_says_what_is_asked(self):
        bare = self.phone.brightness(LOCKED_NOTICES)
        self.remind()
        ui.wait_for('the notices', lambda: self.phone.brightness(LOCKED_NOTICES) > bare + APPEARED)
        self.picture('locked')


class Answered(Asked):
    def test_a_question_in_the_list_of_notices_is_answered_there(self):
        self.phone.tap(*BAR)
        time.sleep(phone.HAND)  # it slides in
        bare = self.phone.brightness(LISTED)
        self.remind()
        ui.wait_for('the notices', lambda: self.phone.brightness(LISTED) > bare + APPEARED)

        def no_more_come():
            before = self.phone.shown()
            time.sleep(phone.HAND)
            return self.phone.shown() == before
        ui.wait_for('the last of them', no_more_come)
        self.picture('asked')
        self.phone.tap(*DRIPPING)
        ui.wait_for('the answer in the diary', lambda: ('feet', 'dripping') in
                    [(f['is']['site'], f['is']['level']) for f in self.facts() if f['kind'] == 'check-in' and f['happened'].startswith(NOW[:10])])


PHONES = (Unlocked, Sideways, Dark, Idle, Locked, Answered)


def main():
    if not APP or not CLI or not ROOT:
        sys.exit(__doc__)
    if len(sys.argv) > 1:
        unittest.main()
    # One process a phone: the accessibility library joins one desktop in the life of a process.
    common = [sys.executable, __file__, '--app', APP, '--cli', CLI, '--root', ROOT] + (['--pictures', PICTURES] if PICTURES else [])
    failed = [each.__name__ for each in PHONES if subprocess.run([*common, each.__name__], check=False).returncode]
    sys.exit(f'failed: {", ".join(failed)}' if failed else 0)


main()
