#!/usr/bin/python3
"""What each job costs: taps, pages, words to read, and whether the needed button is in view. By a pointer on the real app at
two sizes of screen; fails where a budget is exceeded.

Usage: budgets_test.py --app FILE --cli FILE [--out FILE]     the table goes into that file, too"""
import pathlib
import shutil
import subprocess
import sys
import unittest

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parents[1]))
import ui  # noqa: E402
from hand import Hand  # noqa: E402

APP, CLI, OUT = ui.argument('app'), ui.argument('cli'), ui.argument('out')
TODAY = '2026-03-02'  # of an invented person's record
SIZES = ((390, 844), (320, 568))
SPEED = 12  # of the session's clock
PHASE = ui.LONGEST_HOLD / SPEED + ui.PATIENCE
# job: (taps, pages, words); the needed button never needs scrolling.
BUDGETS = {
    'check in, two sites': (2, 1, 100),
    'from the call to the first milliamp': (3, 2, 230),
    'the second site, chained': (2, 1, 170),
    'put the call off to this evening': (1, 1, 90),
    'not this time': (2, 2, 100),
    'summary made and shared': (2, 2, 200),
    'yesterday\'s session written down': (4, 2, 200),
    'from opening to a usable check-in': (4, 3, 300),
}
TABLE = []


class Budgets(unittest.TestCase):
    @classmethod
    def setUpClass(cls):  # the accessibility library joins one desktop in the life of a process
        cls.desktop = ui.Desktop(size=(400, 860), sound=True)
        cls.addClassCleanup(cls.desktop.close)
        cls.demo = cls.desktop.folder / 'demo.db'
        subprocess.run([CLI, 'demo', '--out', cls.demo, '--today', TODAY], check=True, stdout=subprocess.DEVNULL)

    def hand(self, size, demo=True, clammy=(), page='today'):
        store = self.desktop.folder / f'{self.id()}-{size[0]}-{len(TABLE)}.db'
        if demo:
            shutil.copy(self.demo, store)
        for site in clammy:
            subprocess.run([CLI, 'checkin', '--store', store, '--date', TODAY, '--at', '18:30', '--site', site, '--level', 'clammy'],
                           check=True, stdout=subprocess.DEVNULL)
        app = ui.App(self.desktop, APP, store, '--test-now', f'{TODAY}T19:00', '--test-speed', SPEED, '--size', f'{size[0]}x{size[1]}',
                     '--page', page, '--language', 'en')
        self.addCleanup(lambda: app.process.poll() is None and app.kill())
        return Hand(app, *size)

    def end(self, hand, job, size):
        cost, budget = hand.result(), BUDGETS[job]
        TABLE.append((job, f'{size[0]} × {size[1]}', cost, budget))
        print(job, size, cost, hand.pages, file=sys.stderr)
        for what, most in zip(('taps', 'pages', 'words'), budget):
            self.assertLessEqual(cost[what], most, f'{job}, {size}: {what}')
        self.assertEqual(cost['scrolls'], 0, f'{job}, {size}: a button had to be looked for')
        self.assertLessEqual(cost['lowest'], size[1], f'{job}, {size}: below the screen')

    def each(self, job, work, **how):
        for size in SIZES:
            with self.subTest(size=size):
                hand = self.hand(size, **how)
                work(hand, lambda hand=hand, size=size: self.end(hand, job, size))
                if hand.app.process.poll() is None:
                    hand.app.kill()

    def test_check_in(self):
        def work(hand, end):
            hand.app.see('Hands: Dry')
            hand.tap('Hands: Dry', 'radio button')
            hand.app.see('Hands: Dry', 'heading')  # the feet have come up to where they stay
            hand.tap('Feet: Dry', 'radio button')
            hand.app.see('Feet: Dry', 'heading')
            end()
        self.each('check in, two sites', work)

    def test_first_milliamp_and_second_site(self):
        def work(hand, end):
            hand.app.see('First dew: top up now', 'heading')
            for button, role in (('Start now', 'push button'), ('True', 'radio button'), ('On, at zero, direct current: begin', 'push button')):
                hand.tap(button, role)
            hand.app.see('It is comfortable', 'push button')
            end()
            self.to_the_end(hand.app)
            second = Hand(hand.app, hand.width, hand.height)
            second.tap('True', 'radio button')
            second.tap('On, at zero, direct current: begin', 'push button')
            hand.app.see('It is comfortable', 'push button')
            self.end(second, 'the second site, chained', (hand.width, hand.height))
        self.each('from the call to the first milliamp', work, clammy=('hands', 'feet'))

    def to_the_end(self, app):
        for number in (1, 2):
            app.press('It is comfortable')
            app.press('Current is at zero', patience=PHASE)
            if number == 1:
                app.press('Leads swapped')
        app.press('Fine', 'check box')
        app.press('Save in the diary')
        app.see('Next: Both hands' if app.find('Next: Both hands') else 'Next: Both feet', 'heading')

    def test_put_off(self):
        def work(hand, end):
            hand.app.see('First dew: top up now', 'heading')
            hand.tap('This evening', 'push button')
            hand.app.see('You put it off to this evening. A reminder will come.')
            end()
        self.each('put the call off to this evening', work, clammy=('hands', 'feet'))

    def test_not_this_time(self):
        def work(hand, end):
            hand.app.see('First dew: top up now', 'heading')
            hand.tap('Not this time', 'push button')
            hand.tap('My skin needs a rest', 'push button')
            end()
        self.each('not this time', work, clammy=('hands', 'feet'))

    def test_summary(self):
        def work(hand, end):
            hand.tap('Diary', 'page tab')
            hand.tap('Send to your prescriber', 'push button')
            hand.app.see('Handed over.')
            end()
        self.each('summary made and shared', work)

    def test_write_down(self):
        def work(hand, end):
            if hand.height < 600:  # the call is brief there until the check-ins are given
                hand.tap('More', 'push button')
            hand.tap('I did one', 'push button')
            hand.tap('Yesterday', 'radio button')
            hand.tap('Save', 'push button')
            hand.app.see('Hands: Dry')
            end()
        self.each('yesterday\'s session written down', work)

    def test_begin(self):
        def work(hand, end):
            for button, role in (('Set up', 'push button'), ('I have read this', 'push button'), ('Both hands', 'check box'), ('Next', 'push button')):
                hand.tap(button, role)
            hand.at('Hands: Dry', 'radio button')
            end()
        self.each('from opening to a usable check-in', work, demo=False)


def table():
    lines = ['| job | size | taps | pages | words | needed button ends at y | scrolls |', '| --- | --- | --- | --- | --- | --- | --- |']
    for job, size, cost, budget in sorted(TABLE, key=lambda row: (list(BUDGETS).index(row[0]), row[1])):
        lines.append(f"| {job} | {size} | {cost['taps']} of {budget[0]} | {cost['pages']} of {budget[1]} | {cost['words']} of {budget[2]} | "
                     f"{cost['lowest']} | {cost['scrolls']} |")
    return '\n'.join(lines) + '\n'


if not APP or not CLI:
    sys.exit(__doc__)
try:
    unittest.main()
finally:
    print(table())
    if OUT:
        pathlib.Path(OUT).write_text(table(), encoding='utf-8')
