#!/usr/bin/python3
"""What a person hears who uses the app with a screen reader and a keyboard: Orca on a desktop of the test's own, over Today, the
Diary, a sheet, an error and a whole session with an alarm. Each line that it says is held to a file in told/.

Usage: reader_test.py --app FILE --cli FILE [FLOW]...     FIRSTDEW_WRITE_TOLD=1 writes the files again
Each flow is a process of its own: the accessibility library joins one desktop in the life of a process."""
import os
import pathlib
import re
import subprocess
import sys

import orca
import ui

TODAY = '2026-03-02'
SPEED = 12  # of the session's clock; a tick that comes ten seconds late by it is an absence
WORDS_OF = '43.'  # each version says things in its own way
TOLD = pathlib.Path(__file__).parent / 'told'
KEYS = {'Tab': 0xff09, 'Escape': 0xff1b, 'Return': 0xff0d, 'space': 0x20, 'Down': 0xff54, 'Page_Down': 0xff56}


class Listener:
    """A person at the keyboard, who hears and does not see."""

    def __init__(self, desktop, programs, page):
        self.desktop = desktop
        store = desktop.folder / 'record.db'
        subprocess.run([programs['cli'], 'demo', '--out', store, '--today', TODAY], check=True, stdout=subprocess.DEVNULL)
        self.reader = orca.Reader(desktop)
        self.app = ui.App(desktop, programs['app'], store, '--test-now', f'{TODAY}T19:00', '--test-speed', SPEED, '--size', '390x844',
                          '--language', 'en', '--page', page)
        self.app.see('Places', 'page tab list')
        self.reader.heard()
        orca.activate(desktop)
        self.told = []
        self.hear('the window', 'Firstdew')

    def hear(self, what, until=None):
        said = self.reader.heard(until)
        self.told += [f'{what}:'] + [f'    {line}' for line in said]
        return said

    def key(self, name, until=None):
        self.app.pyatspi.Registry.generateKeyboardEvent(KEYS[name], None, self.app.pyatspi.KEY_SYM)
        return self.hear(name, until)

    def type(self, text, until=None):
        self.app.pyatspi.Registry.generateKeyboardEvent(0, text, self.app.pyatspi.KEY_STRING)
        return self.hear(f'"{text}"', until)

    def tab_to(self, what, most=40):
        """With Tab, until that is said."""
        for _ in range(most):
            if any(what in line for line in self.key('Tab', '')):
                return
        raise AssertionError(f'{what!r} is not reached; said: {self.told}')


def today(l):
    """Everything on Today, a check-in, and taking it back."""
    l.tab_to('Hands: Wet')
    l.key('space', 'Saved.')
    l.tab_to('Plan page tab')


def sheet(l):
    l.tab_to('Not this time')
    l.key('Return', 'dialog')
    l.key('Tab', 'button')
    l.key('Page_Down')
    l.key('Escape', 'Not this time')


def diary(l):
    l.tab_to('Diary page tab')
    l.key('space', 'Diary')
    l.tab_to('As a table')
    l.key('space', 'checked')
    l.tab_to('Weighing push button')
    l.key('Return', 'Weighing')
    l.key('Escape', 'Weighing push button')


def error(l):
    """A weighing in which the skin gave weight away, and a statement that was not made."""
    l.tab_to('Diary page tab')
    l.key('space', 'Diary')
    l.tab_to('Weighing push button')
    l.key('Return', 'Weighing')
    l.tab_to('Before, in milligrams')
    l.type('900')
    l.tab_to('After, in milligrams')
    l.type('100', 'cannot weigh less')


def session(l):
    """As last time: both hands, somebody helps. Everything that is announced, from the alarm to the end."""
    app = l.app
    app.choose_session('Both hands', 'Somebody helps me')
    app.begin_as_last('On, at zero, direct current: begin')
    patience = ui.LONGEST_HOLD / SPEED + ui.PATIENCE
    enter = re.compile('Enter the meter reading')
    for phase in (1, 2):
        app.press('It is comfortable')
        if phase == 1:
            app.press(enter)
            for key in '30':
                app.press(key, 'push button')
            app.press('Enter', 'push button')
            app.see('Too high. Turn it down on the machine now.', 'heading')
        app.press(enter)
        for key in '12':
            app.press(key, 'push button')
        app.press('Enter', 'push button')
        app.press('Current is at zero', patience=patience)
        if phase == 1:
            app.press('Leads swapped')
    app.showing('Done')
    said = [line for line in l.reader.heard('Done.') if line.startswith('notification')]
    alarm = next(i for i, line in enumerate(said) if 'Too high' in line)
    # What is said of the control that has the keyboard depends on when the machine finds time for it. So does how often something
    # is said that a busy reader left out at first, and what it left out while the page came: from the alarm on, each sentence once.
    l.told = ['announced:'] + sorted({f'    {line}' for line in said[alarm:]})


FLOWS = {f.__name__: f for f in (today, sheet, diary, error, session)}


def hold(name, told):
    if not orca.version().startswith(WORDS_OF):
        print(f'ok  {name}  {len(told)} lines, not compared: the words are those of Orca {WORDS_OF}')
        return
    file = TOLD / f'reader-{name}.txt'
    text = '\n'.join(told) + '\n'
    if os.environ.get('FIRSTDEW_WRITE_TOLD'):
        file.parent.mkdir(exist_ok=True)
        file.write_text(text, encoding='utf-8')
    expected = file.read_text(encoding='utf-8') if file.exists() else ''
    if text != expected:
        import difflib
        sys.stdout.writelines(difflib.unified_diff(expected.splitlines(True), text.splitlines(True), str(file), 'said now'))
        raise SystemExit(f'{name}: something else is said')
    print(f'ok  {name}  {len(told)} lines', flush=True)


def main():
    programs = {'app': ui.argument('app'), 'cli': ui.argument('cli')}
    chosen = sys.argv[1:] or list(FLOWS)
    if not all(programs.values()) or set(chosen) - set(FLOWS):
        sys.exit(__doc__)
    if len(chosen) > 1:
        for name in chosen:
            subprocess.run([sys.executable, __file__, '--app', programs['app'], '--cli', programs['cli'], name], check=True)
        return
    name = chosen[0]
    with ui.Desktop(size=(390, 844), sound=name == 'session') as desktop:
        listener = Listener(desktop, programs, 'bath' if name == 'session' else 'today')
        try:
            FLOWS[name](listener)
        except BaseException:
            print('\n'.join(listener.told))
            raise
        finally:
            listener.app.kill()
    hold(name, listener.told)


main()
