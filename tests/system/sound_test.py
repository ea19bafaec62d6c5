#!/usr/bin/python3
"""A session led aloud, heard: the right prompts at the script's times, none over another, the alarm at once.

The clips are looked for in what the sound server really played. How late each came is printed.

Usage: sound_test.py --app FILE --cli FILE --assets FOLDER [TrueSpeed|Sound|Frozen|DeviceVoice]...
Several run at the same time, each in a process of its own: the accessibility library joins one desktop in the life of a process."""
import cmath
import contextlib
import json
import math
import os
import pathlib
import re
import signal
import sqlite3
import statistics
import struct
import subprocess
import sys
import time
import unittest
import wave

import ui

APP, CLI, ASSETS = ui.argument('app'), ui.argument('cli'), pathlib.Path(ui.argument('assets', '.'))
TODAY = '2026-03-02'
LISTENED = 142  # seconds at true speed: hands in, raise, the first minute of the hold
SPEED = 7  # of the session that is heard to its end: nothing has to be dropped so that the rest comes in time
SLOWER = 5  # of the session in which the app stands still: sped up more, a busy machine is late for its question
TYPICAL = 0.15  # seconds that half of the prompts may come late at most
LATE = 0.5  # that a single one may, where the machine is busy with something else
SEEN = 3  # seconds: most of them pass while this test looks through the tree
HANGS = 10  # seconds: the alarm comes again three times
AT_ONCE = 1  # the alarm: shorter than the prompt being said, which it cuts off; the figure is printed
ASKED = 5  # seconds after the process goes on, on a machine busy with something else
AFTER_QUESTION = 0.5  # seconds after which the answer to a question is tapped
OVERLAP = 0.1  # of the silence at the ends of clips
CLIPPED = 32767
HUM = 3700  # Hz, beyond what the voice is strong in
MUSIC = 6000  # how high the tone is that stands for other sound
LISTS = 60  # seconds at most until the device's voices are listed, on a machine busy with something else
AROUND = 15  # seconds, in which some piece of the recording came without delay
LOUD = 1000  # of that: somebody speaks


class Listening(unittest.TestCase):
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

    def begin(self, way, listen=False):
        self.app.choose_session('Both hands', way)
        if way != 'Both hands under water':  # as last time
            self.app.begin_as_last('On, at zero, direct current: begin')
            return
        self.app.step_by_step()
        self.app.press('Begin')
        if listen:  # to the end of what it asks, as somebody does who is led; what comes next waits for it
            (at, _, length), = ui.wait_for('the question at switching on', lambda: self.played(['switch-on-direct']))
            time.sleep(max(0, at + length + AFTER_QUESTION - time.monotonic()))
        self.app.press('On, at zero, direct current')

    def played(self, prompts):
        """(time, id, length) of every prompt heard, in order."""
        samples, marks = self.ear.heard()
        found = []
        for prompt in prompts:
            clip = self.ear.clip(ASSETS / f'voice/en/{prompt}.opus')
            found += [(self.ear.when(at, marks), prompt, len(clip) / ui.RATE) for at in self.ear.find(clip, samples)]
        self.assertLess(abs(samples).max(), CLIPPED)
        return sorted(found)

    def script(self):
        """(time, prompt) of the first phase with both hands under water, from the confirmed waveform to the hands out."""
        steps = self.cli('bath', '--site', 'hands', '--waveform', 'direct', '--age', 'adult', '--hands-under')['steps']
        start, said = 0, []
        for step in steps[2:[s['kind'] for s in steps].index('hands-out') + 1]:
            length = step['seconds'] if step['timed'] else 0
            said.append((start, step['prompt']))
            if step['kind'] == 'hold':
                said += [(start + minute, 'look-at-meter') for minute in range(60, length, 60)]
                said += [(start + length / 2 - 0.1, 'half-way'), (start + length - 60.1, 'one-minute')]  # before the minute's own
            if length > 20:
                said.append((start + length - 10, 'ten-seconds'))
            start += length
        return sorted(said, key=lambda s: s[0])

    def hear(self, script, start=None, speed=1):
        """Holds what was heard to the script that began at `start` or, where that is not known, with its first prompt; prints how
        late each prompt came. What had to wait for the one before it was due at that one's end."""
        heard = self.played({p for _, p in script})
        self.assertEqual([p for _, p, _ in heard], [p for _, p in script], heard)
        known, start = start, start or heard[0][0]
        free, late = start, []
        for (at, prompt, length), (due, _) in zip(heard, script):
            late.append(at - max(start + due / speed, free))
            free = at + length
        print('late by (s):', ', '.join(f'{p} {d:+.3f}' for (_, p), d in zip(script, late)), f'; half of them {statistics.median(late):+.3f}', file=sys.stderr)
        self.assertLess(max(late), LATE)
        self.assertLess(statistics.median(late), TYPICAL)
        # A first prompt that was late itself makes all others seem early.
        usual = 0 if known else min(0, statistics.median(late))
        self.assertGreater(min(late) - usual, -OVERLAP, 'one begins before its time, or before the one before it is over')

    def hum(self, moment):
        """How loud the tone of HUM Hz is in the half second from that moment; 0 while that was not heard yet. The median of short pieces, since on a busy machine the sound server leaves out a few samples now and then, after which a tone is not in step with itself."""
        samples, marks = self.ear.heard()
        first = next((i for i in range(0, len(samples), ui.RATE // 20) if self.ear.when(i, marks) >= moment), len(samples))
        part = samples[first:first + ui.RATE // 2]
        if len(part) < ui.RATE // 2:
            return 0
        piece = ui.RATE // 20
        return statistics.median(abs(sum(v * cmath.exp(-2j * cmath.pi * HUM * i / ui.RATE) for i, v in enumerate(part[k:k + piece].tolist()))) / piece
                                 for k in range(0, len(part) - piece + 1, piece))

    def hum_of_late(self):
        """That of the last half second heard."""
        samples, marks = self.ear.heard()
        return self.hum(self.ear.when(len(samples) - ui.RATE, marks)) if len(samples) > ui.RATE else 0

    def enter(self, reading):
        """Enters a reading of the meter; gives when."""
        self.app.see(re.compile('Both hands · Direct current · Phase 1 of 2 · .*'))
        self.app.press(re.compile('Enter the meter reading'))
        for key in reading:
            self.app.press(key)
        pressed = time.monotonic()
        self.app.press('Enter')
        return pressed

    def times(self, clip, since=0.0):
        """When that clip was heard, from a moment before `since` on."""
        samples, marks = self.ear.heard()
        at = self.ear.find(self.ear.clip(ASSETS / f'{clip}.{"opus" if clip.startswith("voice") else "wav"}'), samples)
        return [t for t in (self.ear.when(a, marks) for a in at) if t > since - 0.2]

    def speech(self):
        """Seconds in which something was heard."""
        samples, _ = self.ear.heard()
        tenths = abs(samples[:len(samples) // 1600 * 1600]).reshape(-1, 1600).max(axis=1)
        return (tenths > LOUD).sum() / 10

    def begun(self, event='switched-on', speed=1):
        """When that event was by the journal, the last time, on the clock of time.monotonic()."""
        def recorded():
            with contextlib.closing(sqlite3.connect(f'file:{self.store}?mode=ro', uri=True)) as db:
                events = [json.loads(body) for body, in db.execute("SELECT body FROM fact WHERE kind = 'bath-event'")]
            return [e['monotonic_ms'] for e in events if e['event'] == event]
        return max(ui.wait_for('the tap in the journal, where it is written soon after', recorded)) / 1000 / speed


class TrueSpeed(Listening):
    def test_hands_under_is_led_by_the_script_while_nobody_can_tap(self):
        ui.record_a_remote(CLI, self.store, f'{TODAY}T12:00')
        self.start()
        self.begin('Both hands under water', listen=True)
        start = self.begun()
        time.sleep(max(0, start + LISTENED - time.monotonic()))  # what is measured is time itself
        said = [(t, p) for t, p in self.script() if t < LISTENED - 5]
        self.assertEqual(said[-1][1], 'look-at-meter')
        self.hear(said, start)


class Sound(Listening):
    def test_a_phase_sped_up_is_led_by_the_script_until_dry_hands_tap(self):
        ui.record_a_remote(CLI, self.store, f'{TODAY}T12:00')
        self.start(SPEED)
        self.begin('Both hands under water', listen=True)
        script = self.script()
        time.sleep(script[-1][0] / SPEED)
        ui.wait_for('the last word', lambda: self.played(['hands-out']))
        self.hear(script, speed=SPEED)

    def test_the_sound_says_that_it_is_spoken_help(self):
        self.start()
        self.app.press('Plan', 'page tab')
        self.app.press('Settings')
        self.app.press('Voice and tones')
        self.app.press('Test the volume')

        def roles():
            listed = subprocess.run(['pactl', 'list', 'sink-inputs'], env=self.desktop.env, check=True, capture_output=True, text=True).stdout
            return re.findall(r'media\.role = "(.*)"', listed)
        self.assertEqual(set(ui.wait_for('a stream with a role', roles)), {'a11y'})

    def test_other_sound_is_quieter_while_the_voice_speaks_where_the_sound_server_does_that(self):
        module = subprocess.run(['pactl', 'load-module', 'module-role-ducking', 'trigger_roles=a11y', 'ducking_roles=music', 'volume=-20dB'],
                                env=self.desktop.env, check=True, capture_output=True, text=True).stdout.strip()
        music = self.desktop.folder / 'music.wav'
        with wave.open(str(music), 'wb') as out:
            out.setparams((1, 2, ui.RATE, 0, 'NONE', ''))
            out.writeframes(struct.pack(f'<{30 * ui.RATE}h', *(int(MUSIC * math.sin(2 * math.pi * HUM * i / ui.RATE)) for i in range(30 * ui.RATE))))
        playing = self.desktop.spawn('paplay', '--property=media.role=music', music)
        before = MUSIC / 2  # of a tone's height half is measured
        ui.wait_for('the music, whole', lambda: self.hum_of_late() > 0.9 * before)
        self.start()
        self.app.press('Plan', 'page tab')
        self.app.press('Settings')
        self.app.press('Voice and tones')
        self.app.press('Test the volume')
        (at, _, length), = ui.wait_for('the voice', lambda: self.played(['volume-check']))
        ui.wait_for('what comes after it', lambda: self.hum(at + length + 12) > 0)
        within, after = self.hum(at + 1), max(self.hum(at + length + s) for s in (8, 10, 12))
        print(f'other sound beside the voice: {20 * math.log10(within / before):.1f} dB, afterwards {20 * math.log10(after / before):+.1f} dB', file=sys.stderr)
        playing.terminate()
        subprocess.run(['pactl', 'unload-module', module], env=self.desktop.env, check=True)
        self.assertLess(within, before / 5)
        self.assertGreater(after, before * 0.9)

    def test_what_would_come_too_late_to_be_true_is_not_said(self):
        self.start()
        self.app.press('Plan', 'page tab')
        self.app.press('Settings')
        self.app.press('Voice and tones')
        for _ in range(5):
            self.app.press('Test the volume')
        length = len(self.ear.clip(ASSETS / 'voice/en/volume-check.opus')) / ui.RATE
        time.sleep(5 * length)
        heard = [t for t, _, _ in self.played(['volume-check'])]
        self.assertEqual(len(heard), 3, heard)  # the fourth would begin more than eight seconds after its moment
        for a, b in zip(heard, heard[1:]):
            self.assertAlmostEqual(b - a, length, delta=OVERLAP)

    def test_a_high_reading_is_called_out_at_once_and_again_until_it_is_lowered(self):
        self.start()
        self.begin('Somebody helps me')
        self.app.press('It is comfortable')
        pressed = self.enter('30')
        self.app.see('Too high. Turn it down on the machine now.')
        twice = ui.wait_for('the alarm, and again', lambda: (lambda found: found if len(found) > 1 else None)(self.times('sounds/alarm', pressed)))
        print(f'alarm {twice[0] - pressed:.3f} s after the reading was entered, again after {twice[1] - twice[0]:.1f} s', file=sys.stderr)
        self.assertLess(twice[0] - pressed, AT_ONCE)
        self.assertIn('too-high', [p for _, p, _ in self.played(['too-high'])])

    def test_a_sound_server_that_hangs_holds_up_neither_the_alarm_on_the_screen_nor_the_stop(self):
        self.start()
        self.begin('Somebody helps me')
        self.app.press('It is comfortable')
        self.app.see(re.compile('Both hands · Direct current · Phase 1 of 2 · .*'))
        server, = (p for p in self.desktop.processes if p.args[0] == 'pulseaudio')
        server.send_signal(signal.SIGSTOP)
        try:
            pressed = self.enter('30')
            self.app.see('Too high. Turn it down on the machine now.')
            shown = time.monotonic() - pressed
            time.sleep(HANGS)  # the alarm repeats, and what would be said waits
            pressed = time.monotonic()
            self.app.press('Stop')
            self.app.see(re.compile('That was a slip: go on.*'))
            stopped = time.monotonic() - pressed
        finally:
            server.send_signal(signal.SIGCONT)
        print(f'with a sound server that hangs: alarm on the screen after {shown:.2f} s, stopped after {stopped:.2f} s', file=sys.stderr)
        self.assertLess(shown, SEEN)
        self.assertLess(stopped, SEEN)


class Frozen(Listening):
    """A whole session whose process stands still three times: what is heard meanwhile is the script, and on return it asks."""

    def frozen(self, start, script, until):
        """Stops the process until that second of the script; holds what was heard meanwhile to the script. Gives the moment of return."""
        self.app.process.send_signal(signal.SIGSTOP)
        since = time.monotonic()
        time.sleep(max(0, start + until / SLOWER - since))  # what is measured is time itself
        self.app.process.send_signal(signal.SIGCONT)
        back = time.monotonic()
        due = [(start + at / SLOWER, p) for at, p in script if since + 0.3 < start + at / SLOWER < back - 2]
        self.assertTrue(due)
        heard = [h for h in self.steadily({p for _, p in script}) if since + 0.2 < h[0] < back - 1.5]
        self.assertEqual([p for _, p, _ in heard], [p for _, p in due])
        free = 0
        for (at, prompt, length), (when, _) in zip(heard, due):
            late = at - max(when, free)
            free = at + length
            self.table.append((prompt, when - start, at - start, late))
            self.assertLess(abs(late), TYPICAL, self.table)
        self.away.append(back - since)
        return back

    def steadily(self, prompts):
        """played() by the clock of the recording itself: each piece may have come late, and none came early."""
        samples, marks = self.ear.heard()
        ends = [(at, when) for (at, _), (_, when) in zip(marks[1:], marks)]
        found = []
        for prompt in prompts:
            clip = self.ear.clip(ASSETS / f'voice/en/{prompt}.opus')
            for at in self.ear.find(clip, samples):
                near = [when - end / ui.RATE for end, when in ends if abs(end - at) < AROUND * ui.RATE]
                found.append((min(near) + at / ui.RATE, prompt, len(clip) / ui.RATE))
        return sorted(found)

    def asked(self, back):
        """Waits until the question is heard. Sped up, it is asked again before it is said to its end, so its beginning has to do."""
        question = self.ear.clip(ASSETS / 'voice/en/what-did-it-do.opus')[:int(0.7 * ui.RATE)]

        def heard():
            samples, marks = self.ear.heard()
            return [t for t in (self.ear.when(at, marks) for at in self.ear.find(question, samples)) if t > back]
        words = ui.wait_for('the question', heard)[0]
        alarm = self.times('sounds/alarm', back)[0]
        print(f'asked aloud {min(alarm, words) - back:.2f} s after the return', file=sys.stderr)
        self.assertLess(min(alarm, words) - back, ASKED)

    def answer(self):
        """Says what the machine did, again where the question came again: sped up, a busy machine is soon late."""
        for _ in range(5):
            self.app.press('It kept running, in direct current')
            time.sleep(1)
            if not self.app.find('It kept running, in direct current'):
                return

    def test_a_session_goes_on_being_heard_while_the_app_stands_still(self):
        ui.record_a_remote(CLI, self.store, f'{TODAY}T12:00')
        self.table, self.away = [], []
        self.start(SLOWER)
        self.begin('Both hands under water', listen=True)
        start, script = self.begun(speed=SLOWER), self.script()
        hold, out = 75, script[-1][0]
        time.sleep(max(0, start + (hold + 20) / SLOWER - time.monotonic()))
        # In the hold.
        back = self.frozen(start, script, hold + 200)
        self.asked(back)
        self.answer()
        # From the hold over the lowering until the hands are out.
        time.sleep(max(0, start + (hold + 560) / SLOWER - time.monotonic()))
        back = self.frozen(start, script, out + 25)
        self.asked(back)
        self.answer()
        self.app.press('At zero, hands out and dry')
        self.app.press('Leads swapped')
        # Nearly the whole second phase, for a minute and a half.
        start = self.begun('swapped', SLOWER)
        script = [(at, 'hands-out-last' if p == 'hands-out' else p) for at, p in script]
        time.sleep(max(0, start + (hold + 15) / SLOWER - time.monotonic()))
        back = self.frozen(start, script, out + 25)
        self.asked(back)
        self.answer()
        self.app.press('At zero, hands out and dry')
        ui.wait_for('the end', lambda: self.played(['done']))
        for prompt, due, at, late in self.table:
            print(f'{prompt:16} due {due:7.2f} s, heard {at:7.2f} s, {1000 * late:+5.0f} ms', file=sys.stderr)
        print(f'stood still for {", ".join(f"{a:.0f} s" for a in self.away)}', file=sys.stderr)
        said = {p for p, *_ in self.table}
        self.assertFalse(said & {'raise-by-remote', 'swap-leads', 'flip-switch', 'dry-all', 'done'})
        self.assertTrue(said >= {'look-at-meter', 'half-way', 'one-minute', 'lower-by-remote', 'hands-out', 'hands-out-last'})


class DeviceVoice(Listening):
    def test_the_voice_of_the_device_speaks_where_it_was_chosen_and_is_not_started_before_that_is_asked(self):
        # One that an app starts has its parts end with the app; one without anybody to speak for soon ends itself.
        self.desktop.spawn('speech-dispatcher', '--run-single', '--timeout', '600')
        self.start()

        def engine():
            children = pathlib.Path(f'/proc/{self.app.process.pid}/task/{self.app.process.pid}/children').read_text(encoding='utf-8').split()
            return 'firstdew-speaker' in [pathlib.Path(os.readlink(f'/proc/{c}/exe')).name for c in children]
        self.app.press('Plan', 'page tab')
        self.assertFalse(engine())
        self.app.press('Settings')
        self.app.press('Voice and tones')
        own = self.app.see('Voice of this device', 'radio button')
        ui.wait_for('the answer of the device', lambda: not own.description, LISTS)
        self.app.press('Voice of this device')
        self.assertTrue(engine())
        self.app.press('Test the volume')
        ui.wait_for('somebody speaking', lambda: self.speech() > 1)
        self.assertEqual(self.times('voice/en/volume-check'), [])
        # In a session too; the alarm cuts in on it.
        self.app.press('Back')
        self.app.press('Back')
        self.app.press('Session', 'page tab')
        self.begin('Somebody helps me')
        self.app.press('It is comfortable')
        pressed = self.enter('30')
        said = ui.wait_for('the alarm twice', lambda: (lambda found: found if len(found) > 1 else None)(self.times('sounds/alarm', pressed)))
        print(f'alarm over the voice of the device: {said[0] - pressed:.3f} s after the reading was entered', file=sys.stderr)
        self.assertLess(said[0] - pressed, AT_ONCE)
        for recorded in ('raise-slowly', 'hold-still', 'too-high'):
            self.assertEqual(self.times(f'voice/en/{recorded}'), [])


if not APP or not CLI:
    sys.exit(__doc__)
if len(sys.argv) > 2:
    same = [sys.executable, __file__, '--app', APP, '--cli', CLI, '--assets', ASSETS]
    started = [subprocess.Popen([*same, name]) for name in sys.argv[1:]]
    sys.exit(max([process.wait() for process in started]))
unittest.main()
