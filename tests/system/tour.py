#!/usr/bin/python3
"""The whole job once, on the real app, as a person would do it: a clammy evening, the call, a bath that is killed in
the middle and taken up again, the diary, the page for the prescriber. Prints a line for each step; exit 0 if all held.

Usage: tour.py --app FILE --cli FILE [--out FOLDER] [--speed NUMBER]
Pictures of the steps go into FOLDER; NUMBER is how many times as fast the session's clock runs."""
import array
import contextlib
import json
import pathlib
import re
import shutil
import sqlite3
import subprocess
import sys
import wave

import ui

TODAY = '2026-03-02'  # of an invented person's record; nothing happens at a real date
EVENING = f'{TODAY}T19:00'
SPEED = float(ui.argument('speed', 15))  # of the session's clock; sounds play at their own speed. A tick that comes ten seconds late by it is an absence
PHASE = ui.LONGEST_HOLD / SPEED + ui.PATIENCE  # seconds until a phase must be over
LOUD = 1000  # of 32767: a prompt, not the noise of resampling
CLIPPED = 32767
SHARE_SPOKEN = 0.2 * SPEED / 15  # a session fifteen times as fast is full of prompts


class Tour:
    def __init__(self, desktop, app, cli, out):
        self.desktop, self.program, self.cli, self.out = desktop, app, cli, out
        self.store = desktop.folder / 'record.db'
        self.steps = 0
        self.app = None
        self.sound = desktop.folder / 'heard.raw'
        self.recorder = desktop.record(self.sound)

    def run_cli(self, *args):
        return json.loads(subprocess.run([self.cli, '--json', *map(str, args)], check=True, capture_output=True, text=True, env=self.desktop.env).stdout)

    def done(self, what):
        self.steps += 1
        if self.out:
            self.desktop.picture(self.out / f'{self.steps:02}.png')
        print(f'ok {self.steps:2} {what}', flush=True)

    def start(self):
        self.app = ui.App(self.desktop, self.program, self.store, '--test-now', EVENING, '--test-speed', SPEED, '--size', '390x844', '--language', 'en')

    def shown(self):
        return int(self.desktop.dunstctl('count', 'displayed').stdout or 0)

    def withdrawn(self):
        """Titles of the notices that were up and are no more."""
        history = json.loads(self.desktop.dunstctl('history').stdout)
        return [entry['summary']['data'] for entry in history['data'][0]]

    def named(self, what):
        """Whether a notice that is gone spoke of it, in its title or below."""
        return what in self.desktop.dunstctl('history').stdout

    def walk(self):
        self.demo()
        self.clammy_evening()
        self.into_the_bath()
        self.killed_in_the_middle()
        self.to_the_end()
        self.call_is_over()
        self.what_was_heard()
        self.page_for_the_prescriber()
        self.on_the_command_line()

    def demo(self):
        facts = self.run_cli('demo', '--out', self.store, '--today', TODAY)['facts']
        assert facts > 1000, facts
        self.done(f'the invented person\'s record has {facts} facts')
        self.start()
        self.app.see('Hands: Clammy', 'radio button')
        self.app.see(re.compile('Feet: Dry'))
        ui.wait_for('the notice of the hands\' top-up', lambda: self.shown() >= 1)
        self.done('Today asks how hands and feet are')

    def clammy_evening(self):
        self.app.press('Hands: Dry')
        self.app.press('Feet: Clammy')
        self.app.see('First dew: top up now', 'heading')
        self.done('one clammy evening at rest turns Today into the call for a top-up')
        ui.wait_for('the notice of first dew', lambda: self.shown() >= 1)
        due = self.run_cli('due', '--store', self.store, '--at', EVENING)['reminders']
        assert 'Feet: first dew' not in self.withdrawn()
        assert ('first-dew', 'feet') in [(r['kind'], r['site']) for r in due], due
        # The hands' top-up and the batteries, which came while nobody looked, are one notice; the feet have their own.
        assert [(r['kind'], r['site']) for r in due if r['kind'] != 'first-dew'] == [('top-up-due', 'hands'), ('cells', None)], due
        ui.wait_for('a notice of its own for the feet', lambda: self.shown() == 2)
        self.done('the desktop shows the notice, and the command line names the same reminder')

    def into_the_bath(self):
        self.app.press('Start now')
        self.app.see('Both feet', 'heading')
        self.app.see(re.compile(r'Direct current · I have a hand free · Aim .*'))
        self.app.see(re.compile(r'Limit 20 mA'))
        self.done('feet, as last time; the limit stands there')
        self.app.begin_as_last('On, at zero, direct current: begin')
        self.done('nothing has changed, the skin is whole, the machine is on: three taps from the call')
        self.app.press('It is comfortable')
        self.app.see(re.compile('Both feet · Direct current · Phase 1 of 2 · .*'))
        self.app.press(re.compile('Enter the meter reading'))
        for key in '15':
            self.app.press(key)
        self.app.press('Enter')
        self.app.see(re.compile('Enter the meter reading, now 15 mA'))
        self.done('the first phase runs at a reading of 15 mA')

    def reading_is_kept(self):
        with contextlib.closing(sqlite3.connect(f'file:{self.store}?mode=ro', uri=True)) as db:
            kept = [json.loads(body) for body, in db.execute("SELECT body FROM fact WHERE kind = 'bath-event'")]
        return any(event['event'] == 'reading' for event in kept)

    def killed_in_the_middle(self):
        # What happens in a session is on the disk a quarter of a second later.
        ui.wait_for('the reading in the record', self.reading_is_kept)
        self.app.kill()
        events = self.run_cli('verify', '--store', self.store)
        assert events['ok'], events
        self.start()
        self.app.see('What did the machine do meanwhile?', 'heading')
        self.app.see(re.compile(r'.*Both feet, Phase 1 of 2, Hold.*'))
        self.done('killed and started again: the same phase, and the question what the machine did meanwhile')
        self.app.press('I do not know')
        self.app.see('All checked, begin')
        self.done('not known: machine off, and the script starts again from its beginning')

    def phase(self, number):
        self.app.press('It is comfortable')
        self.app.see(re.compile(f'Both feet · Direct current · Phase {number} of 2 · .*'))
        self.app.press(re.compile('Enter the meter reading'))
        for key in '16':
            self.app.press(key)
        self.app.press('Enter')
        self.app.press('Current is at zero', patience=PHASE)

    def to_the_end(self):
        self.app.press('All checked, begin')
        self.app.press('On, at zero, direct current')
        self.phase(1)
        self.done('the first phase is over and the current at zero')
        self.app.press('Leads swapped')
        self.phase(2)
        self.app.showing('Done')
        self.done('polarity swapped at zero, the second phase over: done')
        self.app.press('Fine', 'check box')
        self.app.press('Save in the diary')
        self.app.see('Next: Both hands', 'heading')
        self.app.press('Enough for today')
        self.done('kept; the hands are due too, and can wait')

    def call_is_over(self):
        self.app.see('Hands: Dry')
        ui.wait_for('the notice to be withdrawn', lambda: 'Feet: first dew' in self.withdrawn())
        now = self.run_cli('outlook', '--store', self.store, '--today', TODAY, '--site', 'feet')['sites'][0]
        assert now['stage'] == 'keeping-dry' and now['last_session'] == TODAY and now['advice'] == 'none', now
        if self.out:
            (self.out / 'notices.json').write_text(self.desktop.dunstctl('history').stdout, encoding='utf-8')
        self.done('the top-up is in the diary, the call gone, the notice withdrawn')

    def what_was_heard(self):
        self.recorder.terminate()
        self.recorder.wait()
        heard = array.array('h', self.sound.read_bytes())
        loudest = max(map(abs, heard))
        assert LOUD < loudest < CLIPPED, loudest
        seconds = len(heard) / ui.RATE
        spoken = sum(max(map(abs, heard[i:i + ui.RATE])) > LOUD for i in range(0, len(heard), ui.RATE))
        assert SHARE_SPOKEN < spoken / seconds, (spoken, seconds)
        if self.out:
            with wave.open(str(self.out / 'heard.wav'), 'wb') as file:
                file.setparams((1, 2, ui.RATE, 0, 'NONE', 'NONE'))
                file.writeframes(heard.tobytes())
        self.done(f'the session was led aloud: {spoken} of {seconds:.0f} s with voice or tones, loudest {loudest / CLIPPED:.0%}, no clipping')

    def page_for_the_prescriber(self):
        opened = self.open_pdfs_with_a_log()
        self.app.press('Diary')
        self.app.press('Summary for your prescriber', 'push button')
        self.app.press('Share the summary')
        self.app.see('Handed over.')
        pdf = pathlib.Path(ui.wait_for('the opener', lambda: opened.read_text().strip() if opened.exists() else ''))
        assert pdf.name == 'firstdew-summary-2026-03-02.pdf', pdf
        self.done('the summary is handed to the system')
        text = subprocess.run(['pdftotext', '-layout', pdf, '-'], check=True, capture_output=True, text=True).stdout
        for wanted in ('Iontophoresis summary', 'Hands', 'Feet', 'mA', 'HDSS'):
            assert wanted in text, (wanted, text)
        fonts = subprocess.run(['pdffonts', pdf], check=True, capture_output=True, text=True).stdout.splitlines()[2:]
        assert fonts and all(re.search(r' yes +(yes|no) +(yes|no) +\d', line) for line in fonts), fonts
        if self.out:
            shutil.copy(pdf, self.out / 'summary.pdf')
        self.done('the page has text that can be read out, and carries its fonts')

    def open_pdfs_with_a_log(self):
        """The system's opener for PDF files: writes down which file it was given."""
        home = pathlib.Path(self.desktop.env['HOME'])
        log = self.desktop.folder / 'opened'
        applications = home / '.local/share/applications'
        applications.mkdir(parents=True)
        script = home / 'reader.sh'
        script.write_text(f'#!/bin/sh\necho "$1" >"{log}"\n', encoding='utf-8')
        script.chmod(0o700)
        (applications / 'reader.desktop').write_text(
            f'[Desktop Entry]\nType=Application\nName=Reader\nExec={script} %f\nMimeType=application/pdf;\n', encoding='utf-8')
        config = home / '.config'
        config.mkdir(exist_ok=True)
        (config / 'mimeapps.list').write_text('[Default Applications]\napplication/pdf=reader.desktop\n', encoding='utf-8')
        return log

    def on_the_command_line(self):
        self.app.end()
        checked = self.run_cli('verify', '--store', self.store)
        assert checked['ok'], checked
        due = self.run_cli('due', '--store', self.store, '--at', EVENING)['reminders']
        assert not [r for r in due if r['site'] == 'feet'], due
        self.done('the app ends; the store is sound and nothing is due for the feet')


def main():
    app, cli, out = ui.argument('app'), ui.argument('cli'), ui.argument('out')
    if not app or not cli or len(sys.argv) > 1:
        sys.exit(__doc__)
    folder = pathlib.Path(out) if out else None
    if folder:
        folder.mkdir(parents=True, exist_ok=True)
    with ui.Desktop(size=(760, 844), notices=True, sound=True) as desktop:
        tour = Tour(desktop, app, cli, folder)
        try:
            tour.walk()
        except AssertionError as broken:
            if folder:
                desktop.picture(folder / 'broken.png')
            sys.exit(f'not ok: {broken}')
    print(f'tour done, {tour.steps} steps')


main()
