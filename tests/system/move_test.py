#!/usr/bin/python3
"""A record moves to another phone: made, sent and chosen by the real app, with the chooser of a stand-in for the desktop's portal.

Usage: move_test.py --app FILE --cli FILE"""
import json
import os
import pathlib
import subprocess
import sys
import unittest

import ui

APP, CLI = ui.argument('app'), ui.argument('cli')
NOW = '2026-03-02T19:00'
PHRASE = 'an invented phrase'
PORTAL = pathlib.Path(__file__).resolve().parents[1] / 'linux/fake_desktop.py'


class Moving(unittest.TestCase):
    @classmethod
    def setUpClass(cls):  # the accessibility library joins one desktop in the life of a process
        cls.desktop = ui.Desktop(size=(390, 844))
        cls.addClassCleanup(cls.desktop.close)

    def start(self, store):
        return ui.App(self.desktop, APP, store, '--test-now', NOW, '--size', '390x844', '--language', 'en')

    def facts(self, store):
        out = self.desktop.folder / f'{store.stem}.json'
        subprocess.run([CLI, 'export', '--store', store, '--format', 'json', '--out', out], check=True, capture_output=True)
        return json.loads(out.read_text(encoding='utf-8'))['facts']

    def portal(self, file):
        """A desktop whose person always chooses that file, also to save there."""
        self.desktop.env.update(CHOSEN=str(file), SAVE_AS=str(file))
        said = self.desktop.spawn('/usr/bin/python3', PORTAL, 'org.freedesktop.portal.Desktop', stdout=subprocess.PIPE)
        self.addCleanup(said.stdout.close)
        self.assertEqual(json.loads(said.stdout.readline()), ['ready'])
        return said

    def test_from_the_old_phone_to_the_new_one(self):
        old, new = self.desktop.folder / 'old.db', self.desktop.folder / 'new.db'
        subprocess.run([CLI, 'demo', '--out', old, '--today', NOW[:10]], check=True, capture_output=True)
        sent = self.desktop.folder / 'memory card' / 'my record.pgp'
        sent.parent.mkdir()
        said = self.portal(sent)
        app = self.start(old)
        app.press('Plan', 'page tab')
        app.press('Settings')
        app.press('Move to another phone')
        app.press('The old one: send from here')
        app.write('Passphrase', PHRASE)
        app.press('Make the file')
        app.see('2. Send the file to the new phone')
        numbers = self.numbers(app)
        app.see(f'\u2068{sent}\u2069')  # kept in its own direction
        app.end()
        self.assertEqual(json.loads(said.stdout.readline()), ['save', 'Save as', f'firstdew-{NOW[:10]}.pgp', True])
        self.assertFalse((pathlib.Path(self.desktop.env['HOME']) / 'Documents').exists())
        self.assertEqual(os.stat(sent).st_mode & 0o777, 0o600)

        app = self.start(new)
        app.press('Move from another phone')
        app.press('Choose the file')
        asked = json.loads(said.stdout.readline())
        self.assertEqual(asked[:2], ['choose', 'Choose the file'])
        app.see(app.pattern('Chosen: %1'))
        app.write('Its passphrase', PHRASE)
        app.press('Look into it')
        app.see('The file holds')
        self.assertEqual(self.numbers(app), numbers)
        app.press('Use it here')
        app.see('Everything is here.')
        self.assertEqual(self.numbers(app), numbers)
        app.press('Go to Today')
        app.see('Hands: Dry')
        app.end()
        self.assertEqual(self.facts(new), self.facts(old))

    def numbers(self, app):
        shown = [n.name for n in app.nodes() if ui.role_of(n) == 'label' and app.is_seen(n)]
        found = [name for name in shown if name and name.split(' ')[-1] in ('person', 'people', 'check-ins', 'sessions') and name[0].isdigit()]
        self.assertEqual(len(found), 3, app.names())
        return found


if not APP or not CLI:
    sys.exit(__doc__)
unittest.main()
