#!/usr/bin/python3
"""The app as on a Linux phone: under a Wayland compositor of 360 x 720.

Usage: wayland_test.py --app FILE --cli FILE"""
import json
import subprocess
import sys
import unittest

import ui

APP, CLI = ui.argument('app'), ui.argument('cli')
WIDTH, HEIGHT = 360, 720


class Phone(unittest.TestCase):
    def test_the_places_are_reached_and_a_check_in_is_kept(self):
        with ui.Desktop() as desktop:
            store = desktop.folder / 'record.db'
            made = subprocess.run([CLI, '--json', 'demo', '--out', store, '--today', '2026-03-02'], check=True, capture_output=True, text=True).stdout
            facts = json.loads(made)['facts']
            desktop.spawn('weston', '--backend=headless-backend.so', f'--width={WIDTH}', f'--height={HEIGHT}', '--socket=phone', '--idle-time=0')
            ui.wait_for('the compositor', lambda: (desktop.folder / 'runtime/phone').exists())
            desktop.env.update(WAYLAND_DISPLAY='phone', QT_QPA_PLATFORM='wayland', QT_WAYLAND_DISABLE_WINDOWDECORATION='1')
            desktop.env.pop('DISPLAY')
            app = ui.App(desktop, APP, store, '--test-now', '2026-03-02T19:00', '--size', f'{WIDTH}x{HEIGHT}', '--language', 'en')
            app.press('Hands: Dry')
            for place, sign in (('Session', 'Set up, then switch on'), ('Diary', 'Summary for your prescriber'), ('Plan', 'Limits'), ('Today', 'Feet: Clammy')):
                app.press(place, 'page tab')
                app.see(sign)
            box = app.see('Firstdew', 'frame').queryComponent().getExtents(0)
            self.assertEqual((box.width, box.height), (WIDTH, HEIGHT))
            app.end()
            found = subprocess.run([CLI, '--json', 'verify', '--store', store], check=True, capture_output=True, text=True).stdout
            self.assertEqual(json.loads(found)['facts'], facts + 1)


if not APP or not CLI:
    sys.exit(__doc__)
unittest.main()
