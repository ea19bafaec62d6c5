#!/usr/bin/python3
"""What can be done from outside the app: the entries of the desktop's menu, and Stop on the notice of a running session.

Usage: glance_test.py --app FILE --cli FILE"""
import configparser
import pathlib
import re
import shlex
import subprocess
import sys
import unittest

import ui

APP, CLI = ui.argument('app'), ui.argument('cli')
NOW = '2026-03-02T19:00'
ENTRY = pathlib.Path(__file__).resolve().parents[2] / 'assets/desktop/firstdew.desktop'
SEEN = {'check-in': 'Hands: Dry', 'bath': 'Change', 'diary': 'Send to your prescriber'}


def starts():
    """What the menu runs for each of its actions."""
    entry = configparser.ConfigParser(interpolation=None)
    entry.optionxform = str
    entry.read(ENTRY, encoding='utf-8')
    return {name: shlex.split(entry[f'Desktop Action {name}']['Exec']) for name in entry['Desktop Entry']['Actions'].strip(';').split(';')}


class Glance(unittest.TestCase):
    @classmethod
    def setUpClass(cls):  # the accessibility library joins one desktop in the life of a process
        cls.desktop = ui.Desktop(size=(390, 844), notices=True, sound=True)
        cls.addClassCleanup(cls.desktop.close)

    def setUp(self):
        self.desktop.dunstctl('close-all')  # of an app that was killed
        self.store = self.desktop.folder / f'{self.id()}.db'
        subprocess.run([CLI, 'demo', '--out', self.store, '--today', NOW[:10]], check=True, capture_output=True)

    def start(self, *options, size='390x844'):
        app = ui.App(self.desktop, APP, self.store, '--test-now', NOW, '--size', size, '--language', 'en', *options)
        self.addCleanup(lambda: app.process.poll() is None and app.kill())
        return app

    def chosen_in_the_menu(self, action):
        program, *options = starts()[action]
        self.assertEqual(program, 'firstdew')
        run = subprocess.run([APP, '--store', str(self.store), '--test-now', NOW, *options], env=self.desktop.env, timeout=ui.PATIENCE, check=False)
        self.assertEqual(run.returncode, 0)

    def test_each_entry_of_the_menu_starts_the_app_where_it_says(self):
        self.assertEqual(set(starts()), set(SEEN))
        for action, (_, *options) in starts().items():
            with self.subTest(action):
                app = self.start(*options)
                app.showing(SEEN[action])
                app.kill()

    def test_each_entry_of_the_menu_brings_the_open_app_there(self):
        app = self.start('--page', 'plan')
        app.see('Days away')
        for action in ('check-in', 'bath', 'diary', 'check-in'):
            self.chosen_in_the_menu(action)
            app.showing(SEEN[action])

    def test_the_check_in_is_in_view_also_where_the_page_was_scrolled_away(self):
        app = self.start(size='320x568')
        app.see('Hands: Dry')
        place = self.height_of(app, 'Hands: Dry')
        self.scroll_down(app)
        ui.wait_for('the page to scroll', lambda: self.height_of(app, 'Hands: Dry') < place)
        self.chosen_in_the_menu('check-in')
        ui.wait_for('the check-in in view', lambda: self.height_of(app, 'Hands: Dry') == place)

    @staticmethod
    def scroll_down(app):
        """By the wheel, as with a mouse."""
        for _ in range(5):
            app.pyatspi.Registry.generateMouseEvent(160, 300, 'b5c')

    @staticmethod
    def height_of(app, name):
        return app.find(name).queryComponent().getExtents(0).y

    def in_a_session(self):
        app = self.start('--page', 'bath')
        app.begin_as_last(re.compile('On, at zero, .*: begin'))
        self.up('Raise slowly')
        return app

    def up(self, title):
        ui.wait_for(f'the notice {title}', lambda: title in self.desktop.offered())

    def test_the_running_session_is_a_notice_whose_stop_stops_it(self):
        app = self.in_a_session()
        app.press('It is comfortable')
        self.up('Hold still')
        self.assertNotIn('Raise slowly', self.desktop.offered())

        def stopping():
            self.desktop.answer('Stop', 'Hold still')  # again where the daemon still had its list open
            return app.find(re.compile(r'That was a slip: go on \([1-5]\)'))
        ui.wait_for('Stop to be taken', stopping)
        app.see('Stopped', 'heading')
        ui.wait_for('the notice to go', lambda: 'Hold still' not in self.desktop.offered())

    def test_the_notice_of_the_session_offers_stop_and_nothing_else(self):
        self.in_a_session()
        self.assertEqual(self.desktop.offered()['Raise slowly'], {'Raise slowly', 'Stop'})  # the first is the notice itself

    def test_no_entry_of_the_menu_leaves_a_running_session(self):
        app = self.in_a_session()
        for action in starts():
            self.chosen_in_the_menu(action)
        app.showing('It is comfortable')


if not APP or not CLI:
    sys.exit(__doc__)
unittest.main()
