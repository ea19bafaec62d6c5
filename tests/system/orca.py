"""The screen reader of Debian on a desktop of the test's own, and what it says: each sentence as a line of a file.

Orca is told to use a speech server that writes instead of speaking; everything else of it is as people use it."""
import ctypes
import ctypes.util
import json
import os
import subprocess
import time

import ui

# A speech server of Orca that writes what it is given. It is a module of its own, which Orca imports by name.
WRITER = '''
import os
from orca.speechserver import SpeechServer as Base, VoiceFamily

class SpeechServer(Base):
    _one = None

    @staticmethod
    def getFactoryName():
        return "written"

    @staticmethod
    def getSpeechServers():
        return [SpeechServer.getSpeechServer()]

    @staticmethod
    def getSpeechServer(info=None):
        SpeechServer._one = SpeechServer._one or SpeechServer()
        return SpeechServer._one

    @staticmethod
    def shutdownActiveServers():
        pass

    def __init__(self):
        super().__init__()
        self.out = open(os.environ["FIRSTDEW_SPOKEN"], "a", encoding="utf-8", buffering=1)

    def getInfo(self):
        return ["written", "default"]

    def getVoiceFamilies(self):
        return [VoiceFamily({VoiceFamily.NAME: "default", VoiceFamily.LANG: "en", VoiceFamily.DIALECT: "", VoiceFamily.VARIANT: None})]

    def _write(self, text):
        text = " ".join(str(text or "").split())
        if text:
            self.out.write(text + "\\n")

    def speak(self, text=None, acss=None, interrupt=True):
        self._write(text)

    def speakCharacter(self, character, acss=None):
        self._write(character)

    def sayAll(self, utterances, progress):
        for context, acss in utterances:
            self._write(context.utterance)
'''
SETTINGS = {'speechServerFactory': 'written', 'speechServerInfo': ['written', 'default'], 'enableBraille': False, 'enableEchoByWord': False,
            'enableKeyEcho': False, 'enableEchoByCharacter': False, 'enableSound': False, 'enableTutorialMessages': False}
QUIET = 1.2  # seconds without a word after which somebody has heard all that is said


def version():
    return subprocess.run(['/usr/bin/orca', '--version'], capture_output=True, text=True, check=True, env={**os.environ, 'LC_ALL': 'C.UTF-8'}).stdout.strip()


def activate(desktop):
    """Gives the keyboard to the app's window, as a manager of windows would; here there is none."""
    x11 = ctypes.CDLL(ctypes.util.find_library('X11'))
    x11.XOpenDisplay.restype = ctypes.c_void_p
    forgive = ctypes.CFUNCTYPE(ctypes.c_int, ctypes.c_void_p, ctypes.c_void_p)(lambda *_: 0)
    x11.XSetErrorHandler(forgive)  # not every window of that name is shown
    display = ctypes.c_void_p(x11.XOpenDisplay(desktop.env['DISPLAY'].encode()))
    root, parent, count = ctypes.c_ulong(), ctypes.c_ulong(), ctypes.c_uint()
    children = ctypes.POINTER(ctypes.c_ulong)()
    x11.XQueryTree(display, ctypes.c_ulong(x11.XDefaultRootWindow(display)), ctypes.byref(root), ctypes.byref(parent), ctypes.byref(children), ctypes.byref(count))
    for i in range(count.value):
        name = ctypes.c_char_p()
        if x11.XFetchName(display, ctypes.c_ulong(children[i]), ctypes.byref(name)) and name.value == b'Firstdew':
            x11.XSetInputFocus(display, ctypes.c_ulong(children[i]), 2, 0)
    x11.XSync(display, 0)
    x11.XCloseDisplay(display)


class Reader:
    """Orca on that desktop. What it said since the last look is asked with heard()."""

    def __init__(self, desktop):
        self.desktop = desktop
        folder = desktop.folder / 'reader'
        folder.mkdir()
        (folder / 'written.py').write_text(WRITER, encoding='utf-8')
        self.file = folder / 'spoken.txt'
        self.file.touch()
        self.at = 0
        prefs = folder / 'orca'
        prefs.mkdir()
        general = {'startingProfile': ['Default', 'default'], **SETTINGS}
        (prefs / 'user-settings.conf').write_text(json.dumps(
            {'general': general, 'profiles': {'default': {'profile': ['Default', 'default'], 'pronunciations': {}, 'keybindings': {}, **SETTINGS}},
             'pronunciations': {}, 'keybindings': {}}), encoding='utf-8')
        desktop.env.update(FIRSTDEW_SPOKEN=str(self.file), PYTHONPATH=str(folder), LC_ALL='C.UTF-8', LANG='C.UTF-8')
        subprocess.run(['gdbus', 'call', '--session', '--dest', 'org.a11y.Bus', '--object-path', '/org/a11y/bus', '--method',
                        'org.freedesktop.DBus.Properties.Set', 'org.a11y.Status', 'ScreenReaderEnabled', '<true>'],
                       env=desktop.env, check=True, capture_output=True)
        self.process = desktop.spawn('/usr/bin/orca', '--replace', '--user-prefs', str(prefs), '--debug-file', str(folder / 'debug.txt'))
        ui.wait_for('the screen reader', lambda: 'Screen reader on.' in self.lines(), patience=60)

    def lines(self):
        return self.file.read_text(encoding='utf-8').split('\n')[:-1]

    def heard(self, until=None, patience=ui.PATIENCE):
        """What was said since the last time, once `until` is among it and nothing more is said for a while."""
        end = time.monotonic() + patience
        last, since = -1, time.monotonic()
        while True:
            said = [ui.plain(line) for line in self.lines()[self.at:]]
            if len(said) != last:
                last, since = len(said), time.monotonic()
            there = until is None or any(until in line for line in said)
            if there and time.monotonic() - since > QUIET:
                self.at += len(said)
                return said
            if time.monotonic() > end:
                raise AssertionError(f'{until!r} was not said, but {said}')
            time.sleep(ui.POLL)
