"""One walk through a part of the app: finds things by role and by what the language calls them, asks the store what
was kept, and leaves pictures."""
import contextlib
import json
import shutil
import sqlite3

import ui
from tongue import Tongue

TODAY = '2026-03-02'  # of an invented person's record; nothing happens at a real date
EVENING = f'{TODAY}T19:00'
SPEED = 12  # of the session's clock; a tick that comes ten seconds late by it is an absence
PHASE = ui.LONGEST_HOLD / SPEED + ui.PATIENCE  # seconds until a phase must be over


class Walk:
    """`look` is (language, width, height, theme); pictures go into `folder` where there is one."""
    now = EVENING
    page = 'today'
    from_demo = True

    def __init__(self, desktop, programs, demo, look, folder=None):
        self.desktop, self.programs = desktop, programs
        self.language, self.width, self.height, self.theme = look
        self.say = Tongue(self.language)
        self.folder = folder
        self.pictures = 0
        name = type(self).__name__.lower()
        self.name = name
        self.store = desktop.folder / f'{name}-{"-".join(map(str, look))}.db'
        self.demo = demo if self.from_demo else None
        if self.demo:
            shutil.copy(self.demo, self.store)
        self.app = None

    def copy_of(self, store, name):
        """That store as it is now, the part in its log included, for a further walk."""
        copy = self.desktop.folder / f'{name}-{self.store.name}'
        with contextlib.closing(sqlite3.connect(store)) as db, contextlib.closing(sqlite3.connect(copy)) as new:
            db.backup(new)
        copy.chmod(0o600)
        return copy

    def start(self):
        self.app = ui.App(self.desktop, self.programs['app'], self.store, '--test-now', self.now, '--test-speed', SPEED, '--page', self.page,
                          '--size', f'{self.width}x{self.height}', '--theme', self.theme, '--language', self.language)

    def again(self):
        """Killed as a system kills, and opened anew."""
        self.app.kill()
        self.start()

    # What is kept.

    def facts(self, kind):
        """(id, day and minute, corrects, body) of every fact of that kind, in order."""
        with contextlib.closing(sqlite3.connect(f'file:{self.store}?mode=ro', uri=True)) as db:
            return [(i, day, corrects, json.loads(body)) for i, day, corrects, body in db.execute(
                'SELECT id, happened_day, corrects, body FROM fact WHERE kind = ? ORDER BY sequence', (kind,))]

    def kept(self, kind, expected, before):
        """Waits for exactly one further fact of that kind, which holds what is expected."""
        def further():
            found = self.facts(kind)
            return found if len(found) > before else None
        found = ui.wait_for(f'a further {kind}', further)
        assert len(found) == before + 1, f'{len(found) - before} facts of {kind} at once'
        last = found[-1]
        for key, value in expected.items():
            assert last[3].get(key) == value, (key, value, last[3])
        return last

    # What is done.

    def press(self, name, role='push button', top=False, patience=ui.PATIENCE):
        self.app.press(name, role, top, patience=patience)

    def level(self, site, level, top=False):
        """Checks in there."""
        self.press(self.site_is(site, level), 'radio button', top)

    def gone(self, name):
        ui.wait_for(f'{name!r} to be gone', lambda: self.app.reach(name) is None)

    def view(self, node):
        """Brings it into view as the keyboard does."""
        self.app.act(node, 'setfocus')

    def choose(self, name):
        self.press(name, 'radio button')

    def tick(self, name):
        self.press(name, 'check box')

    def see(self, name, role=None):
        return self.app.see(name, role)

    def write(self, label, text):
        self.app.write(label, text)

    def pick_time(self, label, hour, quarter):
        """From the sheet: the hour, then the quarter of it."""
        self.app.press(self.app.pattern(f'{label}: %1'), 'push button')
        for most, which in ((24, hour), (4, quarter)):
            buttons = ui.wait_for('the times', lambda most=most: (lambda b: b if len(b) == most else None)(self.app.of_sheet(self.say('Close', of='Sheet'))))
            assert self.app.act(buttons[which], 'press')

    def place(self, name):
        self.press(self.say(name, of='Words'), 'page tab')

    def site_is(self, site, level):
        return self.pair(self.say(site, of='Words'), self.say(level, of='Words'))

    def pair(self, what, says):
        """A name and what belongs to it, with the colon of the language."""
        return self.say('%1: %2', what, self.within(says), of='Words')

    def within(self, name):
        """A name within a sentence: with a small letter in the languages that write it so."""
        small = self.language.split('_')[0] in ('es', 'fr', 'pt') and not name[1:2].isupper()
        return name[:1].lower() + name[1:] if small else name

    def tap(self, x, y):
        """A finger, at that place of the screen."""
        self.app.pyatspi.Registry.generateMouseEvent(x, y, 'b1c')

    def extents(self, node):
        return node.queryComponent().getExtents(self.app.pyatspi.DESKTOP_COORDS)

    def picture(self, what):
        if not self.folder:
            return
        self.pictures += 1
        self.desktop.still(self.folder / f'{self.name}-{self.pictures:02}-{what}.png', self.width, self.height)

    def run(self):
        try:
            self.start()
            self.walk()
        except BaseException:
            if self.folder and self.app:
                self.desktop.still(self.folder / f'{self.name}-broken.png', self.width, self.height)
            raise
        finally:
            if self.app and self.app.process.poll() is None:
                self.app.kill()

    def walk(self):
        raise NotImplementedError

