#!/usr/bin/python3
"""A month of reminders, with the app closed (the program as the system's timer runs it) or open all the time, in the
device's own zone and on a clock set by hand, on a real session bus with a real notification daemon. At every look what comes up and what is up is
held against month_oracle.py, which knows the rules and not the program.

The two months lead through both changes of daylight saving time in three zones, a flight over the date line and back, a
clock set back by an hour and put right again, two days switched off.

Usage: month_test.py --app FILE --cli FILE [--opened] spring|autumn"""
import collections
import datetime
import json
import os
import pathlib
import signal
import sys
import zoneinfo

import ui
from month_device import Device, OpenedDevice
from month_oracle import Hours, Oracle

APP, CLI, MONTH = ui.argument('app'), ui.argument('cli'), sys.argv[-1]
EVERY = 300  # seconds: OnCalendar=*:0/5 of the timer that the app installs; tests/linux holds it to that
FAR = 36     # where nothing can change: one look in so many

Span = collections.namedtuple('Span', 'zone start end boots hours', defaults=(False, None))
# Local times of the device. Between two spans it is off, unless the second does not boot: then its clock was set.
# A check-in at 02:15, or at 01:45 where the hour from one to two comes twice, is one whose minute the change takes away
# or brings twice.
MONTHS = {
    'spring': ('2026-03-06', [
        Span('America/St_Johns', '2026-03-06T12:00', '2026-03-12T21:00', True),    # forward on 8 March at two
        Span('Pacific/Auckland', '2026-03-14T09:00', '2026-03-14T22:00', True),    # then two days off
        Span('Pacific/Auckland', '2026-03-16T20:41', '2026-03-18T20:00', True),
        Span('Pacific/Honolulu', '2026-03-18T06:00', '2026-03-22T20:00', True),    # the same day again
        Span('Pacific/Auckland', '2026-03-24T05:00', '2026-03-24T21:00', True),    # a day is left out
        Span('Europe/Berlin', '2026-03-26T08:00', '2026-03-30T02:40', True),       # forward on 29 March at two
        Span('Europe/Berlin', '2026-03-30T01:40', '2026-03-30T05:40'),             # the clock set back by an hour
        Span('Europe/Berlin', '2026-03-30T06:40', '2026-04-01T12:00'),             # and put right
        Span('Australia/Lord_Howe', '2026-04-03T10:00', '2026-04-06T12:00', True, Hours(check_in='01:45')),  # half an hour back on 5 April at two
    ]),
    'autumn': ('2026-10-01', [
        Span('Australia/Lord_Howe', '2026-10-01T12:00', '2026-10-06T20:00', True),  # half an hour forward on 4 October at two
        Span('Pacific/Auckland', '2026-10-07T12:00', '2026-10-08T20:00', True),
        Span('Pacific/Honolulu', '2026-10-08T06:00', '2026-10-11T20:00', True),
        Span('Pacific/Auckland', '2026-10-13T05:00', '2026-10-14T20:00', True),
        Span('Europe/Berlin', '2026-10-16T08:00', '2026-10-20T22:00', True),        # then two days off
        Span('Europe/Berlin', '2026-10-22T20:41', '2026-10-24T02:40', True),
        Span('Europe/Berlin', '2026-10-24T01:40', '2026-10-24T05:40'),
        Span('Europe/Berlin', '2026-10-24T06:40', '2026-10-27T12:00'),              # back on 25 October at three
        Span('America/St_Johns', '2026-10-29T08:00', '2026-11-03T12:00', True, Hours(check_in='01:45')),  # back on 1 November at two
    ]),
}


def minute(text):
    return datetime.datetime.fromisoformat(text)


class Month:
    """Leads person, program and oracle through one month; stops at the first difference."""

    def __init__(self, name):
        start, self.spans = MONTHS[name]
        self.day1 = datetime.date.fromisoformat(start)
        self.device = (OpenedDevice if '--opened' in sys.argv else Device)(APP, CLI)
        self.oracle = Oracle(self.day1, Hours())
        self.done = set()
        self.seen = collections.Counter()
        self.answers = []  # (day, site, level) that a notice was answered with
        self.looks = 0
        self.together = 0  # the most that one notice was about

    def once(self, what):
        if what in self.done:
            return False
        self.done.add(what)
        return True

    def begin(self, now):
        """A person whose feet were treated long ago begins a course for the hands, after a full screening ten days before."""
        asked = [
            'pregnancy', 'powered-implant', 'metal-implant', 'metal-iud', 'heart-rhythm-or-epilepsy', 'tumour-or-thrombosis', 'loss-of-sensation',
            'under-five', 'under-eighteen', 'eczema-at-site', 'large-wound', 'fixed-braces']
        self.asked = {'full': True, 'asked': asked, 'yes': []}
        before = now - datetime.timedelta(days=10)
        self.device.take(before, person=[{'name': 'Invented', 'birth': '1990-01-01', 'adult': ''}], screening=[self.asked])
        self.device.take(now - datetime.timedelta(days=20), session=[self.session_fact('feet')])
        self.device.take(now, site_use=[{'site': s, 'in_use': True} for s in ('hands', 'feet')],
                         machine=[{'name': '', 'direct': True, 'pulsed': True, 'swap': 'leads', 'remote': False, 'power': 'cells'}],
                         cells_changed=[{'machine': ''}], course=[{'site': 'hands', 'plan': 'seven', 'days': [], 'start': str(self.day1), 'free': []}],
                         hdss=[{'site': s, 'score': 4} for s in ('hands', 'feet')], check_in=[{'site': 'feet', 'level': 'clammy', 'with': []}])
        o = self.oracle
        o.screened, o.clammy, o.hdss = before.date(), self.day1, {'hands': self.day1, 'feet': self.day1}
        o.sessions['feet'] = [(now - datetime.timedelta(days=20)).date()]
        o.check_ins.add(('feet', self.day1))
        self.take_hours(now, Hours())

    @staticmethod
    def session_fact(site, bath=''):
        return {'site': site, 'waveform': 'direct', 'completed': True, 'skin': [], 'machine': '', 'bath': bath, 'note': ''}

    def take_hours(self, now, hours):
        self.oracle.hours = hours
        self.device.take(now, reminder_settings=[{**vars(hours), 'on': True, 'backup_monthly': False}])

    def check_in(self, now, site, level):
        self.device.cli('checkin', '--store', self.device.store, '--date', now.date(), '--site', site, '--level', level, '--at', f'{now:%H:%M}')
        self.oracle.check_ins.add((site, now.date()))

    def before_look(self, now, booted):
        """What the person does of themselves: mostly with the command line, as somebody without a screen would."""
        o, day = self.oracle, now.date()
        number = (day - self.day1).days
        if number == 2 and self.once('feet paused'):
            self.device.take(now, pause=[{'site': 'feet', 'paused': True}])
            o.paused.add('feet')
        if number % 7 == 0 and number and now.time() >= datetime.time(1, 20) and self.once(('early', day)):
            for site in o.used():  # before the hour: nothing is to be asked
                self.check_in(now, site, 'dry')
        if day in o.planned(day) and now >= booted + datetime.timedelta(minutes=45):
            self.treat(now, day)

    def treat(self, now, day):
        o = self.oracle
        nth = len(o.sessions['hands']) + 1
        if nth == 4 and now.time() >= datetime.time(17, 50) and self.once('bath begun'):
            bath = {'bath': 'b4', 'site': 'hands', 'waveform': 'direct', 'age': 'adult', 'swap': 'leads', 'way': 'hands-under', 'first_side': 'left',
                    'limit_ma': 20, 'target_ma': 10, 'raise_s': 60, 'lower_s': 20, 'swapping_s': 45}
            event = {'bath': 'b4', 'sequence': 0, 'event': 'begin', 'wall_ms': 0, 'monotonic_ms': 0}
            self.device.take(now, bath_prepared=[bath], bath_event=[event])
            o.in_bath = True
        if now.time() < datetime.time(19, 5):
            return
        if nth == 3:
            self.device.take(now, cells_changed=[{'machine': ''}])
            o.since_cells = 0
        if (day - o.screened).days >= 28:
            self.device.take(now, screening=[self.asked])
            o.screened = day
        if o.in_bath:
            self.device.take(now, session=[self.session_fact('hands', 'b4')])
            o.in_bath = False
            o.session('hands', day)
        for site in ('hands', 'feet'):
            if (site == 'hands' and day in o.planned(day)) or (site == 'feet' and o.clammy == day):
                self.device.cli('session', '--store', self.device.store, '--date', day, '--site', site, '--waveform', 'direct', '--at', f'{now:%H:%M}')
                o.session(site, day)

    def after_look(self, now, up):
        """How the person answers what is up: each day of a week in another way."""
        o, day = self.oracle, now.date()
        for key in [k for k in list(up) if k in up]:
            kind = key.split(':')[0]
            if kind == 'check-in':
                up = self.answer(now, key, up, (day - self.day1).days % 7)
            elif kind == 'hdss' and now >= o.shown[key] + datetime.timedelta(minutes=20) and self.once(key):
                self.device.take(now, hdss=[{'site': 'hands', 'score': 3}])
                o.hdss['hands'] = day
            elif kind == 'course-session' and len(o.sessions['hands']) == 2 and self.once('started'):
                self.start(up[key])
                return

    def answer(self, now, key, up, way):
        o, day = self.oracle, now.date()
        later = o.put_off.get(key)
        site = key.split(':')[1]
        level = {1: 'dry', 2: 'clammy', 5: 'wet', 6: 'dripping'}.get(way)
        if way == 2 and later is None:
            o.later(now, key)
            up = self.device.press(up[key], 'later')
            o.look(now)
        elif level:
            self.answers.append((str(day), site, level))
            o.check_ins.add((site, day))
            up = self.device.press(up[key], level)
            o.look(now)
        elif way == 4 and now >= o.shown[key] + datetime.timedelta(minutes=30):
            self.check_in(now, site, 'dry')  # by hand, and no look between
        elif way == 3 and (day - self.day1).days // 7 % 2 == 0 and len(up) == 1:
            self.device.wipe_away()
            o.wiped_away()
            up = {}
        assert set(up) == set(o.up), (now, key, up, o.up)
        return up

    def start(self, number):
        """Start, on the notice: the app opens at the bath and looks after the reminders from then on."""
        if self.device.opened:
            self.device.press(number, 'start')  # its window comes to the front
            return
        waiting = self.device.process
        (self.device.desktop.folder / 'wanted').write_text(f'[{number},start]', encoding='utf-8')
        self.device.desktop.dunstctl('context')
        assert waiting.wait(timeout=ui.PATIENCE) == 0  # the app has taken over
        ui.wait_for('the app to look', self.device.looked)
        name = self.device.owner()
        pid = self.device.bus.call_blocking('org.freedesktop.DBus', '/org/freedesktop/DBus', 'org.freedesktop.DBus', 'GetConnectionUnixProcessID', 's', (name,))
        words = pathlib.Path(f'/proc/{pid}/cmdline').read_text(encoding='utf-8').split('\0')
        assert words[1:-1] == ['--store', str(self.device.store), '--page', 'bath'], words
        os.kill(pid, signal.SIGTERM)
        ui.wait_for('the app to end', lambda: self.device.owner() is None)

    def look(self, now, booted):
        self.before_look(now, booted)
        wanted = self.oracle.look(now)
        up = self.device.look()
        calls = [arguments for name, arguments in self.device.heard() if name == 'Notify']
        self.looks += 1

        def together(numbers):
            return {frozenset(k for k in numbers if numbers[k] == n) for n in numbers.values()}
        assert together(up) == together(self.oracle.up), f'{now}: up is {together(up)}, and not {together(self.oracle.up)}'
        assert len(calls) == len(wanted), f'{now}: shown anew {[c[3] for c in calls]}, and not {wanted}'
        shown = {frozenset(k for k in up if up[k] == n) for n in up.values()} & set(wanted)
        assert shown == set(wanted), f'{now}: {shown}, and not {wanted}'
        for keys in wanted:
            self.seen.update(keys)
            self.together = max(self.together, len(keys))
        for call in calls:
            if 'dry or clammy today?' in str(call[3]):
                assert [str(a) for a in call[5]][2::2] == ['dry', 'clammy', 'wet', 'dripping', 'later'], call
        self.after_look(now, up)
        self.device.heard()

    def worth_a_look(self, zone, epoch, index):
        """What is shown follows from the record and the local minute alone, so that between the moments that matter one look
        in a while shows that nothing comes; around a change of the clocks none is left out."""
        def local(at):
            return datetime.datetime.fromtimestamp(at, zone)
        if index == 0 or index % FAR == 0 or local(epoch - 10800).utcoffset() != local(epoch + 10800).utcoffset():
            return True
        h = self.oracle.hours
        now = local(epoch).hour * 60 + local(epoch).minute
        again = int(h.check_in[:2]) * 60 + int(h.check_in[3:]) + 60  # put off
        if again - 5 <= now <= again + 15:
            return True
        for text, after in ((h.check_in, 40), (h.sessions, 15), (h.quiet_from, 10), (h.quiet_until, 15), ('00:00', 10), ('17:50', 5), ('19:05', 10)):
            at = int(text[:2]) * 60 + int(text[3:])
            if at - 10 <= now <= at + after:
                return True
        return False

    def run(self):
        booted = None
        for span in self.spans:
            zone = zoneinfo.ZoneInfo(span.zone)
            first, last = (int(minute(t).replace(tzinfo=zone).timestamp()) for t in (span.start, span.end))
            if booted and span.boots:
                self.oracle.off()
                self.device.restart()
            booted = minute(span.start) if span.boots else booted
            moments = [first, *range(first - first % EVERY + EVERY, last, EVERY)]
            for index, epoch in enumerate(moments):
                if not self.worth_a_look(zone, epoch, index):
                    continue
                now = datetime.datetime.fromtimestamp(epoch, zone).replace(tzinfo=None, fold=0)
                self.device.set_clock(span.zone, epoch)
                if not self.looks:
                    self.begin(now)
                elif index == 0 and span.hours:
                    self.take_hours(now, span.hours)
                self.look(now, booted)

    def judge(self):
        """What a month has to have shown at the least, and that every answer from a notice is in the record."""
        kinds = collections.Counter(key.split(':')[0] for key in self.seen)
        print(f'{MONTH}: {self.looks} looks, {sum(self.seen.values())} reminders shown: {dict(kinds)}')
        assert set(kinds) >= {'check-in', 'course-session', 'first-dew', 'skin-check', 'cells', 'screening', 'hdss', 'prescriber-review'}, kinds
        assert len(self.answers) >= 8, self.answers
        assert self.together > 1, 'two days off have to end in one notice for several'
        assert 'started' in self.done
        file = self.device.desktop.folder / 'all.json'
        self.device.cli('export', '--store', self.device.store, '--format', 'json', '--out', file)
        facts = json.loads(file.read_text(encoding='utf-8'))['facts']
        stored = {(f['happened'][:10], f['is']['site'], f['is']['level']) for f in facts if f['kind'] == 'check-in'}
        assert stored >= set(self.answers), set(self.answers) - stored
        put_off = {f['is']['key'] for f in facts if f['kind'] == 'reminder-handled'}
        assert put_off == set(self.oracle.put_off), (put_off, self.oracle.put_off)


if not APP or not CLI or MONTH not in MONTHS:
    sys.exit(__doc__)
month = Month(MONTH)
try:
    month.run()
    month.judge()
finally:
    month.device.desktop.close()
