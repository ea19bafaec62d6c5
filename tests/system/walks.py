"""The walks: each flow of the app from its beginning to what it leaves in the store."""
import contextlib
import datetime
import re
import sqlite3

import ui
from walk import PHASE, TODAY, Walk

EPOCH = datetime.date(1970, 1, 1)


def day_number(iso):
    return (datetime.date.fromisoformat(iso) - EPOCH).days


class Today(Walk):
    """Two taps a day, with undo; what stirred it up; days that were forgotten."""
    now = '2026-03-04T19:00'

    def walk(self):
        t, before = self.say, len(self.facts('check-in'))
        self.see(t('%1 today?', t('Hands', of='Words')), 'heading')
        self.picture('before')
        self.level('Hands', 'Dry')
        self.kept('check-in', {'site': 'hands', 'level': 'dry'}, before)
        self.see(self.site_is('Hands', 'Dry'), 'heading')
        self.picture('dry')
        self.press(t('Undo'))
        self.see(t('%1 today?', t('Hands', of='Words')), 'heading')
        self.level('Hands', 'Clammy')
        first = self.kept('check-in', {'site': 'hands', 'level': 'clammy'}, before + 1)
        self.tick(t('Heat', of='Words'))
        with_heat = self.kept('check-in', {'site': 'hands', 'level': 'clammy', 'with': ['heat']}, before + 2)
        assert with_heat[2] == first[0], 'a circumstance corrects the check-in that it belongs to'
        self.picture('heat')
        self.fill_in(before + 3)

    def fill_in(self, before):
        t = self.say
        to_fill = re.compile('.*' + re.escape(t('%1, to fill in')).replace('%1', t('Feet', of='Words')))
        day = self.see(to_fill, 'push button')
        self.view(day)
        self.picture('days')
        self.app.press(day.name)
        self.picture('forgotten')
        # Of the sites that the sheet asks for, the last is the feet.
        self.level('Feet', 'Dry', top=True)
        kept = self.kept('check-in', {'site': 'feet', 'level': 'dry'}, before)
        assert day_number(TODAY) <= kept[1] < day_number(TODAY) + 2, kept
        self.press(t('Done', of='DaySheet'))


class Dew(Walk):
    """One clammy evening at rest: the call, and each of its four answers."""

    def walk(self):
        t = self.say
        self.level('Hands', 'Dry')
        self.level('Feet', 'Clammy')
        self.see(t('First dew: top up now', of='Words'), 'heading')
        self.app.kill()
        called = self.store
        for answer in (self.this_evening_then_tomorrow, self.not_this_time, self.start_now):
            self.store = self.copy_of(called, answer.__name__)
            self.start()
            self.see(t('First dew: top up now', of='Words'), 'heading')
            answer()
            self.app.kill()

    def answered(self, expected):
        return self.kept('call-answered', {'site': 'feet', **expected}, 0)

    def this_evening_then_tomorrow(self):
        t = self.say
        self.picture('call')
        self.press(t('This evening'))
        self.answered({'answer': 'this-evening'})
        self.see(t('You put it off to this evening. A reminder will come.'))
        self.picture('this-evening')
        self.press(t('Tomorrow', of='DewCall'))
        self.kept('call-answered', {'site': 'feet', 'answer': 'tomorrow'}, 1)
        self.gone(t('First dew: top up now', of='Words'))  # the hands' own call comes up instead
        self.picture('tomorrow')

    def not_this_time(self):
        t = self.say
        self.press(t('Not this time'))
        self.see(t('My skin needs a rest'), 'push button')
        self.picture('why-not')
        self.press(t('My skin needs a rest'))
        self.answered({'answer': 'not-this-time', 'reason': 'skin'})
        self.gone(t('First dew: top up now', of='Words'))  # the hands' own call comes up instead
        self.picture('not-this-time')

    def start_now(self):
        t = self.say
        self.press(t('Start now'))
        self.answered({'answer': 'start-now'})
        self.see(t('Both feet', of='Words'), 'heading')
        self.picture('start-now')


class Bath(Walk):
    """A whole session, from the card to the diary: as last time."""
    site, way, sounds, follows = 'Both feet', 'I have a hand free', 'feet', True
    page = 'bath'

    def walk(self):
        before = len(self.facts('session'))
        self.choose_it()
        self.begin()
        self.run_through()
        self.afterwards(before)

    def choose_it(self):
        t = self.say
        self.app.choose_session(t(self.site, of='Words'), t(self.way, of='Words'), self.page_text)

    def page_text(self, text):
        """A text of the pages before a session."""
        return self.say(text, of=next((page for page in ('BathAsLast', 'BathChoose', 'BathPrepare', 'BathScreening') if (page, text) in self.say.words), None))

    def begin(self):
        t, screenings = self.say, len(self.facts('screening'))
        self.see(t(self.site, of='Words'), 'heading')
        button = self.see(t('On, at zero, direct current: begin', of='Words'), 'push button')
        assert button.description == t('Not possible yet'), 'nothing is taken for said that was not'
        self.picture('as-last')
        self.app.begin_as_last(t('On, at zero, direct current: begin', of='Words'), self.page_text)
        self.kept('screening', {'full': False}, screenings)
        skin = self.facts('preparation')[-1][3]
        assert (skin['site'], skin.get('antiperspirant'), skin.get('shaved'), skin['small_wounds']) == (self.sounds, None, None, False), skin

    def step_by_step(self):
        """The long way: what is asked, then every line on a page of its own."""
        t = self.say
        self.see(t('Has anything changed?'), 'heading')
        self.picture('screening')
        self.press(t('Nothing has changed'))
        self.see(self.app.pattern(t('%1 of %2', of='BathPrepare')))
        self.picture('question')
        self.app.skin_is_fine(self.page_text)
        self.see(t('Checked'), 'push button')
        self.picture('line')
        while ui.wait_for('the next line', lambda: self.app.reach(t('Begin'), 'push button') or self.app.reach(t('Checked'), 'push button')).name != t('Begin'):
            self.press(t('Checked'))
        self.picture('prepared')
        self.press(t('Begin'))
        self.picture('switch-on')
        self.press(t('On, at zero, direct current', of='Words'))

    def in_phase(self, number):
        """The line on top names the site, the current and the phase."""
        t = self.say
        where = ' · '.join((t(self.site, of='Words'), t('Direct current', of='Words'), t('Phase %1 of %2', number, 2, of='Words')))
        self.see(re.compile(re.escape(ui.plain(where)) + ' · .*'))

    def phase(self, number, reading):
        t = self.say
        self.press(t('It is comfortable', of='Words'))
        self.in_phase(number)
        self.enter(reading)
        self.picture(f'phase-{number}')
        self.press(t('Current is at zero', of='Words'), patience=PHASE)

    def enter(self, reading):
        t = self.say
        self.press(re.compile('|'.join((re.escape(t('Enter the meter reading')) + r'\Z', re.escape(t('Enter the meter reading, now %1')).replace('%1', '.*')))))
        for key in reading:
            self.app.press(key, 'push button')
        self.picture('meter')
        self.app.press(t('Enter'), 'push button')

    def run_through(self):
        t = self.say
        self.see(t('It is comfortable', of='Words'), 'push button')
        self.picture('raise')
        self.phase(1, '12')
        self.see(t('Leads swapped', of='Words'), 'push button')
        self.picture('swap')
        self.press(t('Leads swapped', of='Words'))
        self.phase(2, '13')

    def afterwards(self, before):
        t = self.say
        self.app.showing(t('Done', of='BathAfter'))
        self.picture('after')
        self.choose(t('Strong', of='Words'))
        self.tick(t('Redness', of='Words'))
        self.picture('after-answered')
        self.press(t('Save in the diary'))
        self.kept('session', {'site': self.sounds, 'completed': True, 'comfort': 'strong', 'skin': ['redness']}, before)
        if self.follows:
            self.see(t('Enough for today', of='BathAsLast'), 'push button')
            self.picture('next')
            self.press(t('Enough for today', of='BathAsLast'))
        self.see(self.site_is('Hands', 'Dry'), 'radio button')
        self.picture('kept')


class Helper(Bath):
    """The same, with somebody who taps; a reading above the limit is called out until it is lowered."""
    site, way, sounds, follows = 'Both hands', 'Somebody helps me', 'hands', True

    def phase(self, number, reading):
        if number == 2:
            return super().phase(number, reading)
        t = self.say
        self.press(t('It is comfortable', of='Words'))
        self.in_phase(number)
        self.enter('30')
        self.see(t('Too high. Turn it down on the machine now.'), 'heading')
        self.picture('too-high')
        self.enter(reading)
        self.gone(t('Too high. Turn it down on the machine now.'))
        return self.press(t('Current is at zero', of='Words'), patience=PHASE)


class Under(Bath):
    """Both hands under water: dry hands tap, and while they are under a tap anywhere stops."""
    site, way, sounds, follows = 'Both hands', 'Both hands under water', 'hands', True

    def __init__(self, desktop, programs, demo, look, folder=None):
        super().__init__(desktop, programs, demo, look, folder)
        # Only a remote control can lower the current where both hands are under.
        ui.record_a_remote(programs['cli'], self.store, f'{TODAY}T12:00')
        self.demo = self.copy_of(self.store, 'with-a-remote')

    def walk(self):
        super().walk()
        self.stopped_by_a_tap()

    def begin(self):
        self.step_by_step()

    def run_through(self):
        t = self.say
        for number in (1, 2):
            self.in_phase(number)
            self.see(t('Hold still. Everything stays under water.', of='Words'), 'heading')
            self.picture(f'hold-{number}')
            self.press(t('At zero, hands out and dry', of='Words'), patience=PHASE)
            if number == 1:
                self.press(t('Leads swapped', of='Words'))

    def stopped_by_a_tap(self):
        t = self.say
        self.app.kill()
        self.store = self.copy_of(self.demo, 'tap')
        self.start()
        before = len(self.facts('session'))
        self.choose_it()
        self.begin()
        self.in_phase(1)
        self.tap(self.width // 2, self.height // 3)
        self.app.showing(t('Stopped'))
        self.picture('stopped')
        self.tick(t('Fine', of='Words'))
        self.press(t('Save in the diary'))
        self.kept('session', {'site': 'hands', 'completed': False, 'comfort': None, 'comfortable_ma': None}, before)


class Diary(Walk):
    """The line, a day corrected, the score, a weighing, another treatment, skin."""
    page = 'diary'

    def walk(self):
        t = self.say
        self.see(t('Your dry spells, %1', t('Hands', of='Words')))
        self.picture('works')
        for span in ('Month', 'Quarter', 'Year', 'All'):
            self.choose(t(span, of='Diary'))
            self.picture(span.lower())
        self.choose(t('Month', of='Diary'))
        self.filtered()
        self.correct()
        self.bother()
        self.weigh()
        self.other()
        self.skin()

    def filtered(self):
        t = self.say
        readings = t('Meter readings of the sessions, %1', t('Hands', of='Words'))
        self.choose(t('Quarter', of='Diary'))
        self.press(t('Earlier', of='Diary'))
        self.see(readings)
        self.picture('earlier')
        self.press(t('Filter', of='Diary'))
        self.choose(t('Hidden', of='Diary'))
        self.tick(t('Heat', of='Words'))
        self.picture('filter')
        self.press(t('Done', of='Diary'))
        self.gone(readings)
        self.see(t('Filter: on'), 'push button')
        self.picture('filtered')
        self.press(t('Later', of='Diary'))
        self.choose(t('Month', of='Diary'))

    def correct(self):
        before = len(self.facts('check-in'))
        self.press(self.say('Earlier', of='Diary'))  # weeks that are over have a day in their middle
        chart = self.see(self.say('Dampness over time, %1', self.say('Hands', of='Words')))
        self.view(chart)
        box = self.extents(chart)
        self.tap(box.x + box.width // 2, box.y + box.height // 2)
        self.app.showing(self.say('Hands', of='Words'))
        self.see(self.site_is('Hands', 'Wet'), 'radio button')
        self.picture('day')
        self.level('Hands', 'Dripping')
        self.kept('check-in', {'site': 'hands', 'level': 'dripping'}, before)
        self.picture('corrected')
        self.press(self.say('Back', of='BackButton'))

    def bother(self):
        before = len(self.facts('hdss'))
        self.press(self.say('How much it bothers you', of='Diary'))
        second = self.say('I can live with it, and now and then it gets in my way')
        self.see('2  ' + second, 'push button')
        self.picture('bother')
        self.press('2  ' + second)
        self.kept('hdss', {'site': 'hands', 'score': 2}, before)

    def weigh(self):
        t, before = self.say, len(self.facts('weighing'))
        self.press(t('Weighing', of='Diary'))
        self.write(t('Before, in milligrams'), '1200')
        self.write(t('After, in milligrams'), '1310')
        self.picture('weighing')
        self.press(t('Save', of='WeighPage'))
        self.kept('weighing', {'site': 'hands'}, before)

    def other(self):
        t, before = self.say, len(self.facts('other-treatment'))
        self.press(t('Other treatments', of='Diary'))
        self.choose(t('Tablets', of='Words'))
        self.picture('other')
        self.press(t('Save', of='OtherPage'))
        self.kept('other-treatment', {'what': 'tablets', 'sites': []}, before)

    def skin(self):
        t, before = self.say, len(self.facts('side-effect'))
        self.press(t('Skin after a session', of='Diary'))
        self.tick(t('Blister', of='Words'))
        self.see(t('Burns or blisters: no session there until a clinician has looked at it.'))
        self.picture('skin')
        self.press(t('Save', of='SkinPage'))
        self.kept('side-effect', {'site': 'hands', 'skin': ['blister']}, before)
        self.see(t('Summary for your prescriber', of='Diary'), 'push button')
        self.picture('back')


class Practice(Walk):
    """A whole session without current, from Plan: the record stays as it was, even where the app is killed in its midst."""
    page = 'plan'

    def everything(self):
        with contextlib.closing(sqlite3.connect(f'file:{self.store}?mode=ro', uri=True)) as db:
            return db.execute('SELECT * FROM fact ORDER BY sequence').fetchall()

    def enter(self):
        t = self.say
        self.press(t('Practice', of='Plan'))
        self.see(t('Practice', of='BathPracticeStart'), 'heading')
        self.picture('start')
        self.press(t('Begin practice'))
        self.banner()
        self.picture('list')
        self.press(t('All checked, begin', of='Words'))

    def banner(self):
        self.see(self.say('Practice: machine stays off'))

    def walk(self):
        t, before = self.say, self.everything()
        self.enter()
        self.see(t('Practice: the machine stays off. In a real session you switch it on now. Then tap.', of='Prompts'), 'heading')
        self.again()
        assert self.everything() == before, 'killed in the midst of it'
        self.see(t('Practice', of='Plan'), 'push button')  # and it is not asked what a machine did
        self.enter()
        self.press(t('On, at zero, direct current', of='Words'))
        for number, swap in ((1, t('Leads swapped', of='Words')), (2, None)):
            self.banner()
            self.picture(f'raise-{number}')
            self.press(t('It is comfortable', of='Words'))
            self.picture(f'hold-{number}')
            self.banner()
            self.press(t('Current is at zero', of='Words'), patience=PHASE)
            if swap:
                self.banner()
                self.press(swap)
        self.see(t('That was practice'), 'heading')
        self.picture('over')
        assert self.everything() == before
        self.press(t('Leave practice', of='BathPracticeOver'))
        self.gone(t('Practice: machine stays off'))
        assert self.everything() == before


class Plan(Walk):
    """Everything that Plan holds, each page opened, each thing changed once."""
    page = 'plan'

    def walk(self):
        self.picture('plan')
        self.course()
        self.pause()
        self.taught()
        for title, act in (('Health questions', self.health), ('Days away', self.away), ('Care sheet', self.care_sheet)):
            self.press(self.say(title, of='Plan'))
            act()
            self.back()
        self.settings()

    def settings(self):
        self.press(self.say('Settings', of='Plan'))
        row = self.say('People', of='Settings')
        self.see(row, 'push button')
        self.picture('settings')
        before = len(self.facts('preference'))
        self.tick(self.say('I teach others'))
        self.kept('preference', {'key': 'teaches', 'value': 'on'}, before)
        for title, act in (('Machine and kit', self.machine), ('Reminders', self.reminders), ('Voice and tones', self.sound),
                           ('Appearance and language', self.appearance), ('Move to another phone', self.move),
                           ('Back-up, export and delete', self.keep), ('Caseload', self.caseload), ('About and cautions', self.about), ('People', self.people)):
            self.press(self.say(title, of='Settings'), 'push button')
            act()
            if act != self.people:
                if not self.app.reach(row, 'push button'):
                    self.press(self.say('Back', of='BackButton'))
                self.see(row, 'push button')

    def move(self):
        self.press(self.say('The old one: send from here', of='MovePage'))
        self.write(self.say('Passphrase', of='MovePage'), 'an invented phrase')
        self.picture('phrase')
        self.press(self.say('Make the file', of='MovePage'))
        self.see(self.say('2. Send the file to the new phone', of='MovePage'))
        self.picture('sent')

    def caseload(self):
        t = self.say
        self.see(t('Where the records are'), 'heading')
        self.picture('caseload')
        self.press(t('Make a care sheet', of='Caseload'))
        self.see(t('Choose where to treat.'))
        self.tick(t('Both hands', of='Words'))
        self.write(t('Your name'), 'Invented')
        self.picture('sheet')
        self.press(t('Hand it over', of='MakeSheetPage'))
        self.see(t('On paper'), 'heading')
        self.picture('handed-over')
        for _ in range(2):
            self.press(t('Back', of='BackButton'), top=True)

    def back(self):
        if self.app.reach(self.say('Back', of='BackButton')):
            self.press(self.say('Back', of='BackButton'))
        self.app.showing(self.say('Plan', of='Words'))

    def course(self):
        t, before = self.say, len(self.facts('course'))
        self.press(self.pair(t('Hands', of='Words'), t('Course', of='Plan')))
        self.see(t('Plan the course'), 'push button')
        self.picture('course')
        self.choose(t('Three a week for four weeks', of='Words'))
        self.press(t('Plan the course'))
        self.kept('course', {'site': 'hands', 'plan': 'mwf'}, before)
        self.see(t('First course', of='Words'))
        self.picture('planned')
        self.press(self.pair(t('Hands', of='Words'), t('Course', of='Plan')))
        self.see(t('Sessions of this course'), 'heading')
        self.picture('baths')
        before = len(self.facts('course-move'))
        self.press(t('Move', of='CoursePlan'))
        self.app.press(self.app.pattern(f"{t('New day')}: %1"), top=True)
        days = ui.wait_for('the days', lambda: (lambda b: b if len(b) > 30 else None)(self.app.of_sheet(t('Close', of='Sheet'))))
        self.picture('calendar')
        assert self.app.act(next(n for n in reversed(days) if not n.description), 'press')
        self.picture('move')
        self.press(t('Move', of='CoursePlan'), top=True)
        self.kept('course-move', {'site': 'hands'}, before)
        self.back()

    def pause(self):
        t, before = self.say, len(self.facts('pause'))
        self.press(f"{t('Hands', of='Words')}: {t('Pause')}")
        self.kept('pause', {'site': 'hands'}, before)
        self.see(t('Paused', of='Words'))
        self.press(f"{t('Hands', of='Words')}: {t('Continue', of='Plan')}")
        self.kept('pause', {'site': 'hands'}, before + 1)

    def health(self):
        before = len(self.facts('screening'))
        self.see(self.say('Some answers mean no session until a clinician has said yes. Your answers stay on this phone.'))
        self.picture('health')
        self.press(self.say('Save', of='HealthQuestions'))
        self.kept('screening', {}, before)

    def machine(self):
        before = len(self.facts('machine'))
        self.see(self.say('Is there a remote control?'))
        self.picture('machine')
        self.choose(self.say('Yes', of='MachineForm'))
        self.press(self.say('Save', of='MachinePage'))
        self.kept('machine', {'remote': True}, before)

    def reminders(self):
        before = len(self.facts('reminder-settings'))
        self.see(self.app.pattern(self.say('%1: %2', self.say('Daily check-in'))))
        self.picture('reminders')
        self.pick_time(self.say('Daily check-in'), 19, 1)
        self.press(self.say('Save', of='RemindersPage'))
        self.kept('reminder-settings', {'check_in': '19:15'}, before)

    def sound(self):
        before = len(self.facts('preference'))
        self.see(self.say('A reading above the limit sounds the alarm whatever is chosen here. The phone cannot see the current, only what is entered.'))
        self.picture('sound')
        self.choose(self.say('Tones only', of='SoundPage'))
        self.kept('preference', {'key': 'sound', 'value': 'tones'}, before)

    def away(self):
        before, withdrawn = len(self.facts('away')), len(self.facts('retraction'))
        self.press(self.say('Add', of='AwayPage'))
        self.kept('away', {}, before)
        self.picture('away')
        self.press(re.compile(re.escape(self.say('Remove %1 to %2')).replace('%1', '.*').replace('%2', '.*')))
        self.kept('retraction', {}, withdrawn)
        self.press(self.say('Taking the kit along', of='AwayPage'))
        self.see(self.say('Taking the kit along', of='TravelPage'), 'heading')
        self.picture('travel')
        self.press(self.say('Back', of='BackButton'))

    def taught(self):
        t, before = self.say, len(self.facts('taught'))
        self.press(t('Taught by somebody', of='Plan'))
        self.write(t('Who watched'), 'Nurse Invented')
        self.tick(t('Knows when to stop and whom to call', of='TaughtText'))
        self.picture('taught')
        self.press(t('Save', of='TaughtPage'))
        self.kept('taught', {'who': 'Nurse Invented', 'ticks': ['when-to-stop']}, before)
        self.picture('taught-marked')

    def care_sheet(self):
        self.see(self.say('Add a care sheet'), 'heading')
        self.picture('care-sheet')

    def appearance(self):
        self.see(self.say('Text size'))
        self.picture('appearance')
        self.choose(self.say('Large', of='SettingsPage'))
        self.picture('large')
        self.choose(self.say('Normal', of='SettingsPage'))

    def keep(self):
        self.write(self.say('Passphrase', of='KeepPage'), 'an invented phrase')
        self.picture('keep')
        self.press(self.say('Make a back-up'))
        self.see(re.compile(re.escape(self.say('Done: %1')).replace('%1', '.*') + r'\Z', re.DOTALL))
        self.view(self.see(self.say('Share it')))
        self.picture('backed-up')

    def about(self):
        self.see(self.say('Privacy'), 'heading')
        self.picture('about')

    def people(self):
        t, before = self.say, len(self.facts('person'))
        self.see(t('Each person has a record of their own; nothing is mixed.'))
        self.picture('people')
        self.press(t('Add somebody'))
        self.write(t('First name, or what you like to be called'), 'Mia')
        self.app.pick_birthday(t('Birthday'), datetime.date(2016, 5, 1), 2026, t('Close', of='Sheet'))
        self.write(t('The adult beside the child'), 'Alma')
        self.picture('child')
        self.app.press(t('Add', of='People'))
        self.kept('person', {'name': 'Mia', 'adult': 'Alma'}, before)
        self.see(t('Step %1 of %2', 1, 2))
        self.picture('their-start')


class First(Walk):
    """First start, left in the middle and taken up again."""
    from_demo = False

    def walk(self):
        t = self.say
        self.see(t('Welcome to Firstdew'))
        self.picture('welcome')
        self.press(t('Set up'))
        self.step('Before you begin', t('I have read this'))
        self.tick(t('Both hands', of='Words'))
        self.step('Where?')
        # Four taps, and the check-in is there; the rest is asked when it is needed.
        self.see(self.site_is('Hands', 'Dry'), 'radio button')
        self.picture('usable')
        self.press(t('Continue the set-up'))
        self.see(t('Who is it for?'), 'heading')
        self.write(t('First name, or what you like to be called'), 'Alma')
        self.app.pick_birthday(t('Birthday'), datetime.date(1990, 4, 23), 2026, t('Close', of='Sheet'))
        self.step('Who is it for?')
        self.see(t('Your machine', of='FirstStart'), 'heading')
        self.again()
        self.picture('left')
        self.press(t('Continue the set-up'))
        self.step('Your machine')
        self.health()
        self.hour()

    def step(self, title, button=None):
        self.see(self.say(title, of='FirstStart'), 'heading')
        self.picture(title.lower().strip('?').replace(' ', '-'))
        self.press(button or self.say('Next', of='FirstStart'))

    def health(self):
        t = self.say
        self.see(t('Health questions', of='FirstStart'), 'heading')
        for node in self.app.all(t('No', of='HealthForm'), 'radio button'):
            self.app.act(node, 'press', 'toggle')
        self.step('Health questions')
        asked = self.facts('screening')[-1][3]
        assert len(asked['asked']) == 10 and not asked['yes'], asked

    def hour(self):
        t = self.say
        self.see(t('When should we ask?'), 'heading')
        self.pick_time(t('Check-in at'), 21, 2)
        self.step('When should we ask?', t('Done', of='FirstStart'))
        self.kept('reminder-settings', {'on': True, 'check_in': '21:30'}, 0)
        self.see(t('%1 today?', t('Hands', of='Words')), 'heading')
        self.gone(t('Continue the set-up'))
        self.picture('ready')
