"""When a person has to be reminded, from the rules alone: section by section what the trade and the product ask for, in
plain Python and from the person's own acts. Nothing here is asked of the program.

The rules, and their standing: the reminders that the job needs, quiet hours, nothing twice for one cause on one day, a
done thing withdraws its reminder (the product's own); seven sessions on days 1, 2, 4, 7, 10, 15, 22 (days 1, 2, 4, 7, 10
and 22: NHS hospital leaflet WPR26540; 15: from memory); four alkaline cells last about three sessions (common practice, no
source); full screening again after 28 days, the score weekly during a course, the skin looked at the next day (our choice)."""
import dataclasses
import datetime
import functools

TEMPLATE = (1, 2, 4, 7, 10, 15, 22)
WINDOW = 28
SESSIONS_PER_CELLS = 3
SCREENING_DAYS = 28
LATE = datetime.timedelta(minutes=15)
PUT_OFF = datetime.timedelta(hours=1)


def clock(text):
    return datetime.time.fromisoformat(text)


@dataclasses.dataclass
class Hours:
    check_in: str = '02:15'
    sessions: str = '18:00'
    quiet_from: str = '09:00'
    quiet_until: str = '16:00'


@functools.lru_cache(maxsize=None)
def plan(start, done, earliest):
    """Days for the sessions not done: one a day at most, in order, nearest to the template by the sum of squared shifts,
    the earlier of two as near; inside the window."""
    wanted = [start + datetime.timedelta(days=d - 1) for d in TEMPLATE[done:]]
    last = start + datetime.timedelta(days=WINDOW - 1)

    @functools.lru_cache(maxsize=None)
    def best(index, first):
        if index == len(wanted):
            return 0, ()
        options = []
        day = first
        while day <= last:
            cost, rest = best(index + 1, day + datetime.timedelta(days=1))
            if rest is not None:
                options.append((cost + (day - wanted[index]).days ** 2, (day, *rest)))
            day += datetime.timedelta(days=1)
        return min(options) if options else (0, None)

    return best(0, earliest)[1]


class Oracle:
    """The person's acts go in, what has to be on the screen comes out."""

    def __init__(self, start, hours):
        self.start = start  # the day on which the course begins
        self.hours = hours
        self.check_ins = set()   # (site, day)
        self.sessions = {'hands': [], 'feet': []}
        self.since_cells = 0
        self.hdss = {}
        self.screened = None
        self.clammy = None  # the day on which the feet, treated long ago, were found clammy
        self.paused = set()
        self.in_bath = False
        self.put_off = {}
        self.shown = {}  # key: the time for which it was shown
        self.up = {}     # key: the number of the notice it is on
        self.count = 0

    # What the person does.
    def session(self, site, day):
        self.sessions[site].append(day)
        self.since_cells += 1
        if site == 'feet':
            self.clammy = None

    def later(self, now, key):
        for other in [k for k in self.up if self.up[k] == self.up[key]]:
            self.put_off[other] = (now + PUT_OFF).replace(second=0)

    def wiped_away(self):
        self.up.clear()

    def off(self):
        """The device is switched off; what was up goes with it and was not yet answered."""
        for key in self.up:
            del self.shown[key]
        self.up.clear()

    # What follows from it.
    def used(self):
        return [s for s in ('hands', 'feet') if s not in self.paused]

    def planned(self, day):
        done = [d for d in self.sessions['hands'] if d >= self.start]
        earliest = day + datetime.timedelta(days=1) if done and done[-1] == day else day
        return plan(self.start, len(done), earliest) or ()

    def quiet(self, now):
        return clock(self.hours.quiet_from) <= now.time() < clock(self.hours.quiet_until)

    def causes(self, day):
        """{key: time of day} of all that stands on that day."""
        out = {}
        used = self.used()
        h = self.hours
        for site in used:  # each site is asked about for itself
            if (site, day) not in self.check_ins:
                out[f'check-in:{site}:{day}'] = h.check_in
        bath = day in self.planned(day)
        if bath:
            out[f'course-session:hands:{day}'] = h.sessions
        if 'feet' in used and self.clammy == day:
            out[f'first-dew:feet:{day}'] = h.quiet_until
            bath = True
        if bath and SESSIONS_PER_CELLS - self.since_cells <= 1:
            out[f'cells:{day}'] = h.sessions
        if bath and (day - self.screened).days >= SCREENING_DAYS:
            out[f'screening:{day}'] = h.sessions
        for site in used:
            if self.sessions[site] and self.sessions[site][-1] == day - datetime.timedelta(days=1):
                out[f'skin-check:{site}:{day}'] = max(h.quiet_until, '09:00')
            every = 7 if site == 'hands' else 30
            late = (day - self.hdss[site]).days - every
            if late >= 0 and late % 7 == 0:
                out[f'hdss:{site}:{day}'] = h.check_in
        if len(self.sessions['hands']) == len(TEMPLATE):
            late = (day - self.sessions['hands'][-1]).days - 1
            if late >= 0 and late % 7 == 0:
                out[f'prescriber-review:hands:{day}'] = h.sessions
        return out

    def look(self, now):
        """At a look at that local time: the notices that have to come up, each as the set of what it is about."""
        moments = {}
        if not self.in_bath:
            for key, at in self.causes(now.date()).items():
                moments[key] = self.put_off.get(key, datetime.datetime.combine(now.date(), clock(at)))
        due = set() if self.quiet(now) else {k for k, at in moments.items() if at <= now}
        for key in list(self.up):
            if key not in moments or (key not in due and moments[key] > self.shown[key]):
                del self.up[key]
        fresh = [k for k in due if k not in self.up and (k not in self.shown or moments[k] > self.shown[k])]
        # A question has buttons of its own and so a notice of its own.
        late = [k for k in fresh if moments[k] + LATE < now and not k.startswith('check-in:')]
        if len(late) < 2:
            late = []
        notices = [frozenset(late)] * bool(late) + [frozenset({k}) for k in fresh if k not in late]
        for notice in notices:
            self.count += 1
            for key in notice:
                self.up[key] = self.count
                self.shown[key] = moments[key]
        return notices
