#!/usr/bin/python3
"""What the app asks of the system while it is used: no socket but local ones, no file others can read.

Usage: privacy_test.py --app FILE --cli FILE"""
import pathlib
import re
import stat
import subprocess
import sys
import unittest

import ui

APP, CLI = ui.argument('app'), ui.argument('cli')
# Exits with 0 if somebody offers something on that clipboard.
OFFERED = """import sys, gi
gi.require_version('Gtk', '3.0'); gi.require_version('Gdk', '3.0')
from gi.repository import Gdk, Gtk
Gtk.init([])
found, targets = Gtk.Clipboard.get(Gdk.Atom.intern(sys.argv[1], False)).wait_for_targets()
sys.exit(0 if found and targets else 1)"""
OFFER = """import gi
gi.require_version('Gtk', '3.0'); gi.require_version('Gdk', '3.0')
from gi.repository import Gdk, Gtk
Gtk.init([])
Gtk.Clipboard.get(Gdk.SELECTION_CLIPBOARD).set_text('something', -1)
print('there', flush=True)
Gtk.main()"""
PERSONAL = ('Mira', 'Santt', 'wedding')  # of the invented person's record


class Privacy(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.desktop = ui.Desktop(size=(390, 844), notices=True, sound=True)
        cls.addClassCleanup(cls.desktop.close)
        cls.store = cls.desktop.folder / 'kept' / 'record.db'
        cls.store.parent.mkdir()
        subprocess.run([CLI, 'demo', '--out', cls.store, '--today', '2026-03-02'], check=True, capture_output=True)
        cls.calls = cls.desktop.folder / 'calls'
        wrapper = cls.desktop.folder / 'firstdew'
        wrapper.write_text(f'#!/bin/sh\nexec strace -f -qq -e trace=socket,connect,sendto,bind -o "{cls.calls}" "{APP}" "$@"\n', encoding='utf-8')
        wrapper.chmod(0o700)
        cls.use(str(wrapper))

    @classmethod
    def use(cls, program):
        app = Traced(cls.desktop, program, cls.store, '--test-now', '2026-03-02T19:00', '--size', '390x844', '--language', 'en')
        app.press('Hands: Clammy')
        app.press('Diary')
        app.press('Summary for your prescriber', 'push button')
        cls.seen = ' '.join(app.names())
        app.press('Share the summary')
        app.see(re.compile('Saved as|Handed over'))
        app.press('Back')
        app.press('Session', 'page tab')
        app.press('True', 'radio button')  # the voice speaks
        app.press('Plan')
        cls.offered = [name for name in ('CLIPBOARD', 'PRIMARY') if cls.on_clipboard(name)]
        app.kill()

    @classmethod
    def on_clipboard(cls, name):
        return subprocess.run([sys.executable, '-c', OFFERED, name], env=cls.desktop.env, stderr=subprocess.DEVNULL).returncode == 0

    def test_every_socket_is_a_local_one(self):
        calls = self.calls.read_text(errors='replace')
        families = set(re.findall(r'socket\((AF_\w+)', calls))
        self.assertIn('AF_UNIX', families)  # the display, so that it is known to have looked
        self.assertLessEqual(families, {'AF_UNIX', 'AF_LOCAL'}, calls[:2000])

    def test_what_is_kept_is_the_owners_alone(self):
        kept = [p for p in self.store.parent.rglob('*') if p.is_file()]
        kept += pathlib.Path(self.desktop.env['HOME']).rglob('*.pdf')
        self.assertGreater(len(kept), 1)
        for file in kept:
            self.assertEqual(stat.S_IMODE(file.stat().st_mode) & 0o077, 0, file)

    def test_the_clipboard_is_left_alone(self):
        self.assertEqual(self.offered, [])
        with subprocess.Popen([sys.executable, '-c', OFFER], env=self.desktop.env, stdout=subprocess.PIPE, text=True) as other:
            self.assertEqual(other.stdout.readline(), 'there\n')
            self.assertTrue(self.on_clipboard('CLIPBOARD'))  # so that it is known to have looked
            other.kill()

    def test_nothing_personal_is_written_to_the_log(self):
        self.assertIn('wedding', self.seen)  # on the screen it was
        for file in self.desktop.folder.glob('*.log'):
            for word in PERSONAL:
                self.assertNotIn(word, file.read_text(errors='replace'), file)


class Traced(ui.App):
    """The app as the child of what traces it."""

    def _application(self):
        assert self.process.poll() is None, f'the app ended: {self.log()}'
        try:
            for app in self.pyatspi.Registry.getDesktop(0):
                if app is not None and app.name == 'firstdew' and app.childCount:
                    return app
        except Exception:  # the tree changes under us
            pass
        return None


if not APP or not CLI:
    sys.exit(__doc__)
unittest.main()
