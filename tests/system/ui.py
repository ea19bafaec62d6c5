"""Drives the app as a person with a screen reader would: by role and name, over the accessibility tree.

Everything runs in a desktop of its own: a display, a session bus, the accessibility bus, and where asked a
notification daemon and a sound server whose output is recorded."""
import itertools
import json
import os
import pathlib
import re
import shutil
import signal
import socket
import subprocess
import sys
import tempfile
import threading
import time
import uuid

SELDOM = 1  # seconds between two looks at what takes long; looking takes the app's time too
RATE = 16000  # of recorded sound, Hz
SKIN_QUESTIONS = ('%1: antiperspirant with aluminium in the last 24 hours?', '%1: shaved in the last three days?', '%1: small cuts on the skin?')
PATIENCE = int(os.environ.get('PATIENCE', 30))  # seconds after which something awaited counts as missing; far above any real wait
POLL = PATIENCE / 600
LONGEST_HOLD = 15 * 60  # seconds of a session's clock that one phase takes, those of the feet


def plain(text):
    """With a space between a number and its unit, where the app has one that does not break."""
    return text.replace('\u00a0', ' ')


def wait_for(what, condition, patience=PATIENCE):
    """The first true value of condition(); raises when there is none."""
    end = time.monotonic() + patience
    while True:
        value = condition()
        if value:
            return value
        if time.monotonic() > end:
            raise AssertionError(f'{what}: did not come')
        time.sleep(POLL if patience <= PATIENCE else SELDOM)


def role_of(node):
    """The name of the node's role. AT-SPI 2.53 renamed 'push button' to 'button'."""
    name = node.getRoleName()
    return 'push button' if name == 'button' else name


class Desktop:
    """Display, session bus and accessibility bus; with notices=True also dunst, with sound=True also PulseAudio."""

    def __init__(self, size=(800, 1000), notices=False, sound=False):
        self.folder = pathlib.Path(tempfile.mkdtemp(prefix='desktop-'))
        self.processes = []
        self.size = size
        self.env = {k: v for k, v in os.environ.items() if k not in ('DBUS_SESSION_BUS_ADDRESS', 'WAYLAND_DISPLAY')}
        runtime = self.folder / 'runtime'
        runtime.mkdir(mode=0o700)
        self.env.update(XDG_RUNTIME_DIR=str(runtime), HOME=str(self.folder / 'home'), LC_ALL='C.UTF-8',
                        QT_QPA_PLATFORM='xcb', QT_LINUX_ACCESSIBILITY_ALWAYS_ON='1', QT_ACCESSIBILITY='1',
                        QT_QUICK_BACKEND='software', NO_AT_BRIDGE='1', FIRSTDEW_TEST='1')
        (self.folder / 'home').mkdir()
        try:
            self._display()
            self._bus()
            if notices:
                self.start_notices()
            if sound:
                self._sound()
        except BaseException:
            self.close()
            raise

    def spawn(self, *command, **kwargs):
        with open(self.folder / (pathlib.Path(command[0]).name + '.log'), 'ab') as log:
            process = subprocess.Popen(command, env=self.env, stdin=subprocess.DEVNULL, stdout=kwargs.pop('stdout', log),
                                       stderr=log, start_new_session=True, **kwargs)
        self.processes.append(process)
        return process

    def _display(self):
        number = 100 + os.getpid() % 30000
        self.spawn('Xvfb', f':{number}', '-screen', '0', f'{self.size[0]}x{self.size[1]}x24', '-nolisten', 'tcp', '-noreset')

        def answers():
            with socket.socket(socket.AF_UNIX) as probe:
                return probe.connect_ex(f'/tmp/.X11-unix/X{number}') == 0
        wait_for('the display', answers)
        self.env['DISPLAY'] = f':{number}'

    def _bus(self):
        daemon = self.spawn('dbus-daemon', '--session', '--nofork', '--print-address', stdout=subprocess.PIPE)
        with daemon.stdout as out:
            self.env['DBUS_SESSION_BUS_ADDRESS'] = out.readline().decode().strip()
        launcher = next(p for p in ('/usr/libexec/at-spi-bus-launcher', '/usr/lib/at-spi2-core/at-spi-bus-launcher') if os.path.exists(p))
        self.spawn(launcher, '--launch-immediately')
        # This process looks at the same tree.
        os.environ.update({k: self.env[k] for k in ('DISPLAY', 'DBUS_SESSION_BUS_ADDRESS', 'XDG_RUNTIME_DIR', 'NO_AT_BRIDGE')})
        wait_for('the accessibility bus', lambda: subprocess.run(
            ['gdbus', 'call', '--session', '--dest', 'org.a11y.Bus', '--object-path', '/org/a11y/bus', '--method', 'org.a11y.Bus.GetAddress'],
            env=self.env, capture_output=True, check=False).returncode == 0)

    def start_notices(self):
        config = self.folder / 'dunstrc'
        # The daemon lists the actions of what is up to a menu program; this one picks the line wanted.
        menu = self.folder / 'menu.sh'
        menu.write_text(f'#!/bin/sh\nlist=$(cat)\nprintf "%s\\n\\n" "$list" >>"{self.folder}/menu.log"\n'
                        f'printf "%s\\n" "$list" | grep -m 1 -F "$(cat "{self.folder}/wanted")"\n', encoding='utf-8')
        menu.chmod(0o700)
        config.write_text(f'[global]\n    dmenu = {menu}\n    idle_threshold = 0\n    history_length = 100\n    show_age_threshold = -1\n', encoding='utf-8')
        self.spawn('dunst', '-conf', str(config))
        # Asking it something would have the bus start another one, with settings that are not these.
        subprocess.run(['gdbus', 'wait', '--session', f'--timeout={PATIENCE}', 'org.freedesktop.Notifications'], env=self.env, check=True)

    def dunstctl(self, *args):
        return subprocess.run(['dunstctl', *args], env=self.env, capture_output=True, text=True, check=False)

    def answer(self, label, title=''):
        """Presses the button of that name on a notice that is up, where named the one of that title."""
        (self.folder / 'wanted').write_text(f'#{label} ({title}', encoding='utf-8')
        self.dunstctl('context')

    def offered(self):
        """What the notices that are up offer: the title of each with its buttons, the first of which is the notice itself."""
        (self.folder / 'wanted').write_text('nothing of all this', encoding='utf-8')
        # The daemon opens one list at a time. The first to end may have been open already, the second was not.
        self._next_list()
        lines = self._next_list()
        found = {}
        for button, title in re.findall(r'^#(.*) \((.*)\) \[.*\]$', lines, re.M):
            found.setdefault(title, set()).add(button)
        return found

    def _next_list(self):
        log = self.folder / 'menu.log'

        def lists():
            return log.read_text(encoding='utf-8').split('\n\n')[:-1] if log.exists() else []
        ended = len(lists())

        def one_more():
            if int(self.dunstctl('count', 'displayed').stdout or 0) == 0:
                return ['']
            self.dunstctl('context')
            return lists()[ended:]
        return wait_for('the list of actions', one_more)[-1]

    def _sound(self):
        self.env['PULSE_SERVER'] = f"unix:{self.folder}/runtime/pulse.socket"
        self.spawn('pulseaudio', '-n', '--daemonize=no', '--exit-idle-time=-1', '--disable-shm=yes', '--high-priority=no', '--realtime=no',
                   '-L', 'module-null-sink sink_name=ear rate=48000 channels=2',
                   '-L', f'module-native-protocol-unix auth-anonymous=1 socket={self.folder}/runtime/pulse.socket')
        wait_for('the sound server', lambda: subprocess.run(['pactl', 'info'], env=self.env, capture_output=True, check=False).returncode == 0)

    def record(self, file):
        """Records what is heard into raw 16-bit mono; gives the process."""
        with open(file, 'wb') as out:
            return self.spawn('parec', '--device=ear.monitor', f'--rate={RATE}', '--channels=1', '--format=s16le', '--latency-msec=20', stdout=out)

    def picture(self, file, width=None, height=None):
        """What the display shows, as PNG."""
        code = ("import gi,sys;gi.require_version('Gdk','3.0');from gi.repository import Gdk;"
                "w=Gdk.get_default_root_window();"
                "Gdk.pixbuf_get_from_window(w,0,0,int(sys.argv[2]) or w.get_width(),int(sys.argv[3]) or w.get_height()).savev(sys.argv[1],'png',[],[])")
        subprocess.run(['/usr/bin/python3', '-c', code, str(file), str(width or 0), str(height or 0)], env=self.env, check=True, capture_output=True)

    def still(self, file, width, height):
        """A picture once nothing moves any more."""
        import gi
        gi.require_version('Gdk', '3.0')
        from gi.repository import Gdk
        if not hasattr(self, 'screen'):
            self.screen = Gdk.Display.open(self.env['DISPLAY']).get_default_screen().get_root_window()
        last = None

        def at_rest():
            nonlocal last
            before, last = last, Gdk.pixbuf_get_from_window(self.screen, 0, 0, width, height)
            return before and before.get_pixels() == last.get_pixels()
        try:
            wait_for('a still picture', at_rest, patience=3)
        except AssertionError:
            pass  # a running clock moves each second, and is good as it is
        last.savev(str(file), 'png', [], [])

    def close(self):
        for process in reversed(self.processes):
            try:
                os.killpg(process.pid, signal.SIGTERM)
                process.wait(timeout=5)
            except ProcessLookupError:
                process.wait()
            except subprocess.TimeoutExpired:
                os.killpg(process.pid, signal.SIGKILL)
                process.wait()
        self.processes.clear()
        shutil.rmtree(self.folder, ignore_errors=True)

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self.close()


class Ear:
    """Hears what the desktop plays, and knows when. Sample times are those at which the piece that holds them came."""

    def __init__(self, desktop):
        import numpy  # of the sound tests alone
        self.numpy = numpy
        self.folder = desktop.folder
        self.pieces = []
        self.process = desktop.spawn('parec', '--device=ear.monitor', f'--rate={RATE}', '--channels=1', '--format=s16le', '--latency-msec=20',
                                     stdout=subprocess.PIPE)
        self.thread = threading.Thread(target=self._listen, daemon=True)
        self.thread.start()
        wait_for('sound from the sink', lambda: self.pieces)

    def _listen(self):
        while piece := self.process.stdout.read1(1 << 16):
            self.pieces.append((time.monotonic(), piece))

    def heard(self):
        """All samples so far, and for each piece its first sample and time."""
        pieces = list(self.pieces)
        marks, at = [], 0
        for when, piece in pieces:
            marks.append((at, when))
            at += len(piece) // 2
        samples = self.numpy.frombuffer(b''.join(p for _, p in pieces), dtype='<i2').astype('float32')
        return samples, marks

    def when(self, sample, marks):
        """The time at which that sample was heard."""
        start, moment = max((m for m in marks if m[0] <= sample), default=marks[0])
        following = next((m for m in marks if m[0] > sample), None)
        length = (following[0] - start) / RATE if following else 0
        return moment - length + (sample - start) / RATE

    def find(self, clip, samples, least=0.6):
        """Where `clip` (samples) was played: first samples, by normalised cross-correlation of at least `least`."""
        np = self.numpy
        # The first second tells them apart.
        key = clip[:RATE] - clip[:RATE].mean()
        if len(samples) < len(key):
            return []
        size = 1 << (len(samples) + len(key)).bit_length()
        likeness = np.fft.irfft(np.fft.rfft(samples, size) * np.conj(np.fft.rfft(key, size)), size)[:len(samples) - len(key) + 1]
        power = np.concatenate(([0], np.cumsum(samples.astype('float64') ** 2)))
        energy = np.sqrt(np.maximum(power[len(key):] - power[:-len(key)], 1)) * np.linalg.norm(key)
        score = np.where(energy > np.linalg.norm(key) ** 2 / 4, likeness / energy, 0)
        found = []
        while score.max() >= least:
            best = int(score.argmax())
            found.append(best)
            score[max(0, best - RATE):best + RATE] = 0
        return sorted(found)

    def clip(self, file):
        import wave
        if file.suffix == '.opus':
            decoded = self.folder / f'{file.stem}.wav'
            subprocess.run(['opusdec', '--quiet', '--rate', str(RATE), file, decoded], check=True)
            file = decoded
        with wave.open(str(file)) as w:
            assert w.getframerate() == RATE and w.getnchannels() == 1, file
            return self.numpy.frombuffer(w.readframes(w.getnframes()), dtype='<i2').astype('float32')


class App:
    """The running app; what is on its screen, and presses."""

    def __init__(self, desktop, program, store, *options):
        self.desktop = desktop
        self.process = desktop.spawn(program, '--store', str(store), *map(str, options))
        import pyatspi  # after the buses are there
        self.pyatspi = pyatspi
        self.tree = wait_for('the app in the accessibility tree', self._application)

    def _application(self):
        assert self.process.poll() is None, f'the app ended: {self.log()}'
        try:
            for app in self.pyatspi.Registry.getDesktop(0):
                if app is not None and app.get_process_id() == self.process.pid and app.childCount:
                    return app
        except Exception:  # the tree changes under us
            pass
        return None

    def log(self):
        return (self.desktop.folder / (pathlib.Path(self.process.args[0]).name + '.log')).read_text(errors='replace')

    def nodes(self, root=None):
        """Everything of the page, or of that part of it, in order, scrolled into view or not. What the page hides is not in the tree,
        or stands there as neither visible nor in a place of its own."""
        def walk(node):
            try:
                yield node
                children = [node.getChildAtIndex(i) for i in range(node.childCount)]
            except Exception:
                return
            for child in children:
                if child is not None:
                    yield from walk(child)
        return walk(root or self.tree)

    def names(self):
        out = []
        for n in self.nodes():
            try:
                if n.name:
                    out.append(n.name)
            except Exception:
                pass
        return out

    def all(self, name, role=None, within=None):
        """Every thing of that name, in order, where named of that group alone; what is scrolled out of view cannot be told
        from what is hidden."""
        pattern = name if hasattr(name, 'search') else re.compile(re.escape(plain(name)) + r'\Z')
        for n in self.nodes() if within is None else itertools.chain.from_iterable(self.nodes(group) for group in self.all(within)):
            try:
                if n.name and pattern.match(plain(n.name)) and (role is None or role_of(n) == role):
                    yield n
            except Exception:  # the tree changes under us
                continue

    @staticmethod
    def pattern(text):
        """That text with anything where values go, and the space that some languages put before a colon."""
        return re.compile(re.sub(r'%\d', '.*', re.escape(plain(text)).replace('\\%', '%')).replace(':', ' ?:') + r'\Z')

    def find(self, name, role=None):
        return next(self.all(name, role), None)

    def is_seen(self, node):
        try:
            return node.getState().contains(self.pyatspi.STATE_VISIBLE)
        except Exception:
            return False

    def act(self, node, *wanted):
        """Does the first action that has one of those names; whether there is one."""
        try:
            action = node.queryAction()
            names = [action.getName(i).lower() for i in range(action.nActions)]
            which = next((i for i, n in enumerate(names) if n in wanted), None)
        except Exception:
            return False
        if which is None:
            return False
        try:
            action.doAction(which)
        except Exception:
            pass  # it took the thing away before it could answer
        return True

    def reach(self, name, role=None, top=False, within=None):
        """The thing of that name which is in view, or comes into view when it is given the keyboard; nothing where all
        of that name are hidden. Of several the first, or the one that lies on top."""
        found = list(self.all(name, role, within))
        if top:
            found.reverse()
        for node in found:
            if self.is_seen(node):
                return node
        return next((n for n in found if self.act(n, 'setfocus') and self.is_seen(n)), None)

    def below(self, heading, role='check box', until='push button'):
        """Names of the things of that role that follow the heading, to the first button."""
        found = None
        for node in self.nodes():
            kind = role_of(node)
            if found is None:
                found = [] if node.name == heading and kind == 'heading' else None
            elif kind == until:
                return found
            elif kind == role:
                found.append(node.name)
        return found or []

    def see(self, name, role=None):
        """Waits until it shows."""
        try:
            return wait_for(f'{name!r}', lambda: self.find(name, role))
        except AssertionError as missing:
            raise AssertionError(f'{missing}; on the screen: {self.names()}\n{self.log()[-2000:]}') from None

    def showing(self, name):
        """Waits until it is in view, not only on a page that lies behind."""
        wait_for(f'{name!r} in view', lambda: any(n.name == name and n.getState().contains(self.pyatspi.STATE_SHOWING) for n in self.nodes()))

    def press(self, name, role=None, top=False, within=None, patience=PATIENCE):
        def attempt():
            node = self.reach(name, role, top, within)
            try:
                ready = node is not None and node.getState().contains(self.pyatspi.STATE_ENABLED)
            except Exception:
                return False
            return ready and self.act(node, 'press', 'toggle')
        try:
            wait_for(f'{name!r} to press', attempt, patience)
        except AssertionError as missing:
            raise AssertionError(f'{missing}; on the screen: {self.names()}\n{self.log()[-2000:]}') from None

    def skin_is_fine(self, say=lambda text: text):
        """Answers what the preparation asks of the skin; `say` gives a text in the language of the app."""
        for question in SKIN_QUESTIONS:
            self.press(say('No'), 'radio button', within=self.pattern(say(question)))

    def choose_session(self, site, way, say=lambda text: text):
        """On the page of the session: that site and way of working, from the card or from the choice itself."""
        change, where = say('Change'), say('Who can tap the phone')
        wait_for('the session', lambda: self.reach(change, 'push button') or self.find(where, 'heading'))
        if not self.find(where, 'heading'):
            self.press(change, 'push button')
        self.press(site, 'radio button')
        self.press(way, 'radio button')
        self.press(say('Continue'), 'push button')

    def begin_as_last(self, begin, say=lambda text: text):
        """The short way: one statement, and the button that says that the machine is on."""
        self.press(say('True'), 'radio button')
        self.press(begin, 'push button')

    def step_by_step(self, say=lambda text: text):
        """The long way, as far as the last page: one answer, one thing to check a page. Gives how many were checked."""
        self.press(say('Nothing has changed'), 'push button')
        self.skin_is_fine(say)
        checked = 0
        while wait_for('the next line', lambda: self.reach(say('Begin'), 'push button') or self.reach(say('Checked'), 'push button')).name != say('Begin'):
            self.press(say('Checked'), 'push button')
            checked += 1
        return checked

    def write(self, name, text):
        """Types into the field of that name; of several, the one that lies on top."""
        node = wait_for(f'{name!r} to write in', lambda: self.reach(name, 'text', top=True) or self.hidden_letters(name))
        self.act(node, 'setfocus')
        wait_for(f'the keyboard at {name!r}', lambda: node.getState().contains(self.pyatspi.STATE_FOCUSED))
        self.pyatspi.Registry.generateMouseEvent(1, 1, 'abs')  # without a manager of windows, the keys go where the pointer is
        self.pyatspi.Registry.generateKeyboardEvent(0, text, self.pyatspi.KEY_STRING)

    def of_sheet(self, close='Close'):
        """The buttons of the sheet on top, in order."""
        nodes = [n for n in self.nodes() if role_of(n) == 'push button' and self.is_seen(n)]
        at = max((i for i, n in enumerate(nodes) if n.name == close), default=len(nodes))
        return nodes[at + 1:]

    def pick_birthday(self, label, day, this_year, close='Close'):
        """By ten years, year, month and day."""
        self.press(self.pattern(f'{label}: %1'), 'push button', top=True)
        for most, which in ((8, this_year // 10 - day.year // 10), (10, day.year % 10), (12, day.month - 1), (31, 3 + day.day - 1)):
            buttons = wait_for('the next choice', lambda most=most: (lambda b: b if most - 4 < len(b) < most + 4 and len(b) > which else None)(self.of_sheet(close)))
            assert self.act(buttons[which], 'press'), buttons[which].name

    def hidden_letters(self, name):
        """The field for a passphrase, which has no name of its own, below the words `name`."""
        nodes = list(self.nodes())
        at = next((i for i, n in enumerate(nodes) if n.name == name and role_of(n) == 'label' and self.is_seen(n)), len(nodes))
        return next((n for n in nodes[at:] if role_of(n) == 'password text'), None)

    def kill(self):
        os.killpg(self.process.pid, signal.SIGKILL)
        self.process.wait()

    def end(self):
        self.process.terminate()
        self.process.wait(timeout=PATIENCE)


def record_a_remote(cli, store, at):
    """Records on the machine of the one person of that store that it has a remote control, as Plan does."""
    with tempfile.TemporaryDirectory(prefix='remote-') as folder:
        everything, further = pathlib.Path(folder) / 'everything.json', pathlib.Path(folder) / 'further.json'
        subprocess.run([cli, 'export', '--store', store, '--format', 'json', '--out', everything], check=True, stdout=subprocess.DEVNULL)
        record = json.loads(everything.read_text(encoding='utf-8'))
        machine = [f for f in record['facts'] if f['kind'] == 'machine'][-1]
        assert not machine['is']['remote'], 'the invented person has no remote control'
        last = max(f['recorded_ms'] for f in record['facts'])
        record['facts'] = [{**machine, 'id': uuid.uuid4().hex, 'happened': at, 'recorded_ms': last + 1, 'is': {**machine['is'], 'remote': True}}]
        further.write_text(json.dumps(record), encoding='utf-8')
        added = subprocess.run([cli, '--json', 'import', further, '--store', store], check=True, capture_output=True, text=True).stdout
        assert json.loads(added)['added'] == 1, added


def argument(name, otherwise=None):
    """--name VALUE from the command line, taken out of it."""
    if f'--{name}' in sys.argv:
        at = sys.argv.index(f'--{name}')
        value = sys.argv[at + 1]
        del sys.argv[at:at + 2]
        return value
    return otherwise
