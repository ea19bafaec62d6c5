#!/usr/bin/python3
"""A session led aloud, heard: the right prompts at the script's times, none over another, the alarm at once.

The clips are looked for in what the sound server really played. How late each came is printed; the test itself asks
only for what holds on a busy machine as well.

Usage: sound_test.py --app FILE --cli FILE --assets FOLDER"""
import contextlib
import json
import pathlib
import re
import sqlite3
import subprocess
import sys
import time
import unittest

import ui

APP, CLI, ASSETS = ui.argument('app'), ui.argument('cli'), pathlib.Path(ui.argument('assets', '.'))
TODAY = '2026-03-02'
LISTENED = 142  # seconds at true speed: hands in, raise, the first minute of the hold
SPEED = 30  # of the session that is heard to its end
LATE = 1.5  # seconds a prompt may come late on a busy machine; what it was is printed
CLIPPED = 32767


class Sound(unittest.TestCase):
    @classmethod
    def setUpClass(cls):  # the accessibility library joins one desktop in the life of a process
        cls.desktop = ui.Desktop(size=(390, 844), sound=True)
        cls.addClassCleanup(cls.desktop.close)

    def setUp(self):
        self.store = self.desktop.folder / f'{self.id()}.db'
        self.cli('demo', '--out', self.store, '--today', TODAY)
        self.ear = ui.Ear(self.desktop)
        self.app = None

    def start(self, speed=1):
        self.app = ui.App(self.desktop, APP, self.store, '--test-now', f'{TODAY}T19:00', '--test-speed', speed, '--size', '390x844',
                          '--page', 'bath', '--language', 'en')

    def tearDown(self):
        self.app.kill()
        self.ear.process.terminate()

    def cli(self, *args):
        return json.loads(subprocess.run([CLI, '--json', *map(str, args)], check=True, capture_output=True, text=True).stdout)

    def begin(self, way):
        self.app.press('Both hands')
        self.app.press(way)
        self.app.press('Go on')
        self.app.press('Nothing has changed')
        self.app.see('Tick each line')
        for name in self.app.below('Tick each line'):
            self.app.press(name)
        self.app.press('Begin')

    def played(self, prompts):
        """(time, id, length) of every prompt heard, in order."""
        samples, marks = self.ear.heard()
        found = []
        for prompt in prompts:
            clip = self.ear.clip(ASSETS / f'voice/en/{prompt}.wav')
            found += [(self.ear.when(at, marks), prompt, len(clip) / ui.RATE) for at in self.ear.find(clip, samples)]
        self.assertLess(abs(samples).max(), CLIPPED)
        return sorted(found)

    def test_hands_under_is_led_by_the_script_alone(self):
        steps = self.cli('bath', '--site', 'hands', '--waveform', 'direct', '--age', 'adult', '--hands-under')['steps']
        timed = [s for s in steps if s['timed']]
        self.start()
        self.begin('Both hands under water')
        began = time.monotonic()
        time.sleep(LISTENED)  # what is measured is time itself
        heard = self.played(['check-everything', 'hands-in-soon', 'raise-slowly', 'hold-still', 'look-at-meter', 'lower-to-zero', 'swap-leads', 'too-high', 'stopped'])
        expected, at = [], 0
        for step in timed:
            expected.append((at, step['prompt']))
            if step['kind'] == 'hold':
                expected.append((at + 60, 'look-at-meter'))
                break
            at += step['seconds']
        wanted = [p for t, p in expected if t < LISTENED - 5]
        got = [(t, p) for t, p, _ in heard if p in {p for _, p in expected} and t > began - 5]
        self.assertEqual([p for _, p in got], wanted, [(round(t - began, 1), p) for t, p, _ in heard])
        self.assertIn('look-at-meter', wanted)
        start = self.begun()
        late = [t - start - e for (t, _), (e, _) in zip(got, expected)]
        print('late by (s):', ', '.join(f'{p} {d:+.3f}' for (_, p), d in zip(got, late)), file=sys.stderr)
        for d in late:
            self.assertLess(abs(d), LATE)
        self.one_after_another(heard)

    def one_after_another(self, heard, overlap=0.05):
        for (a, _, length), (b, prompt, _) in zip(heard, heard[1:]):
            self.assertGreater(b, a + length - overlap, f'{prompt} begins before the one before it is over')

    def test_a_whole_session_sped_up_says_one_thing_after_another_to_its_last_phase(self):
        self.start(SPEED)
        self.begin('Both hands under water')
        self.app.showing('Phase 1 of 2')
        self.app.showing('Phase 2 of 2')
        second = time.monotonic()
        self.app.showing('Done')
        heard = self.played(['hands-in-soon', 'raise-slowly', 'hold-still', 'look-at-meter', 'half-way', 'one-minute', 'ten-seconds', 'lower-to-zero', 'swap-leads'])
        print('heard:', ', '.join(p for _, p, _ in heard), file=sys.stderr)
        self.one_after_another(heard, overlap=0.2)
        self.assertGreater(heard[-1][0], second + 5, 'the voice fell silent')

    def test_the_sound_says_that_it_is_spoken_help(self):
        self.start()
        self.app.press('Plan', 'page tab')
        self.app.press('Voice and tones')
        self.app.press('Check how loud it is')

        def roles():
            listed = subprocess.run(['pactl', 'list', 'sink-inputs'], env=self.desktop.env, check=True, capture_output=True, text=True).stdout
            return re.findall(r'media\.role = "(.*)"', listed)
        self.assertEqual(set(ui.wait_for('a stream with a role', roles)), {'a11y'})

    def begun(self):
        """When the session began by its journal, on the clock of time.monotonic()."""
        with contextlib.closing(sqlite3.connect(f'file:{self.store}?mode=ro', uri=True)) as db:
            events = [json.loads(body) for body, in db.execute("SELECT body FROM fact WHERE kind = 'bath-event'")]
        wall = max(e['wall_ms'] for e in events if e['event'] == 'begin')
        return wall / 1000 - time.time() + time.monotonic()

    def test_a_high_reading_is_called_out_at_once_and_again_until_it_is_lowered(self):
        self.start()
        self.begin('Somebody helps me')
        self.app.press('It is comfortable')
        self.app.see('Phase 1 of 2')
        self.app.press(re.compile('Enter the meter reading'))
        for key in '30':
            self.app.press(key)
        pressed = time.monotonic()
        self.app.press('Enter')
        alarm = self.ear.clip(ASSETS / 'sounds/alarm.wav')
        self.app.see('Too high. Turn it down on the machine now.')
        twice = ui.wait_for('the alarm, and again', lambda: (lambda found: found if len(found) > 1 else None)(self.after(pressed, alarm)))
        print(f'alarm {twice[0] - pressed:.3f} s after the reading was entered, again after {twice[1] - twice[0]:.1f} s', file=sys.stderr)
        self.assertLess(twice[0] - pressed, LATE)
        self.assertIn('too-high', [p for _, p, _ in self.played(['too-high'])])

    def after(self, moment, clip):
        samples, marks = self.ear.heard()
        return [t for t in (self.ear.when(at, marks) for at in self.ear.find(clip, samples)) if t > moment - 0.2]


if not APP or not CLI:
    sys.exit(__doc__)
unittest.main()
