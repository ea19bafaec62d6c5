#!/usr/bin/python3
"""Stands for a phone's feedback daemon, for the desktop's portal and for its notices on the session bus; says each call as a line of JSON.

Usage: fake_desktop.py NAME...     the names on the bus to take"""
import json
import os
import stat
import sys

import dbus
import dbus.service
from dbus.mainloop.glib import DBusGMainLoop
from gi.repository import GLib

FEEDBACK, PORTAL, NOTICES = 'org.sigxcpu.Feedback', 'org.freedesktop.portal.OpenURI', 'org.freedesktop.Notifications'
CHOOSER, REQUEST = 'org.freedesktop.portal.FileChooser', 'org.freedesktop.portal.Request'
SETTINGS, LOOK = 'org.freedesktop.portal.Settings', 'org.gnome.desktop.interface'
APPEARANCE = 'org.freedesktop.appearance'


def say(*what):
    print(json.dumps(what), flush=True)


class Feedback(dbus.service.Object):
    last = 0

    @dbus.service.method(FEEDBACK, in_signature='ssa{sv}i', out_signature='u')
    def TriggerFeedback(self, app, event, hints, timeout):
        Feedback.last += 1
        say('trigger', str(app), str(event), {str(k): str(v) for k, v in hints.items()}, int(timeout), Feedback.last)
        return Feedback.last

    @dbus.service.method(FEEDBACK, in_signature='u')
    def EndFeedback(self, number):
        say('end', int(number))


class Portal(dbus.service.Object):
    @dbus.service.method(PORTAL, in_signature='sha{sv}', out_signature='o')
    def OpenFile(self, _parent, file, options):
        number = file.take()
        kind = os.fstat(number).st_mode
        say('open', os.read(number, 1000).decode() if stat.S_ISREG(kind) else 'no file', bool(options['ask']))
        os.close(number)
        return dbus.ObjectPath('/org/freedesktop/portal/desktop/request/1_1/t')


class Notices(dbus.service.Object):
    """A daemon of notices, with a person's hands at it. Between Hold and LetGo it hangs."""
    last, held, holds = 0, None, False

    @dbus.service.method(NOTICES, in_signature='susssasa{sv}i', out_signature='u', async_callbacks=('answer', 'fail'))
    def Notify(self, app, replaces, icon, title, text, actions, hints, timeout, answer, fail):
        number = int(replaces) or Notices.last + 1
        Notices.last = max(Notices.last, number)
        say('notify', int(replaces), str(title), str(text), [str(a) for a in actions], sorted(map(str, hints)), int(hints['urgency']), int(timeout), number)
        if Notices.holds:
            Notices.held = (answer, number)
        else:
            answer(dbus.UInt32(number))

    @dbus.service.method(NOTICES, in_signature='u')
    def CloseNotification(self, number):
        say('close', int(number))

    @dbus.service.signal(NOTICES, signature='us')
    def ActionInvoked(self, number, action):
        pass

    @dbus.service.signal(NOTICES, signature='uu')
    def NotificationClosed(self, number, reason):
        pass

    @dbus.service.method('org.firstdew.Hands', in_signature='us')
    def Press(self, number, action):
        self.ActionInvoked(dbus.UInt32(number), action)

    @dbus.service.method('org.firstdew.Hands', in_signature='uu')
    def Close(self, number, reason):
        self.NotificationClosed(dbus.UInt32(number), dbus.UInt32(reason))

    @dbus.service.method('org.firstdew.Hands')
    def Hold(self):
        Notices.holds = True

    @dbus.service.method('org.firstdew.Hands')
    def LetGo(self):
        Notices.holds = False
        answer, number = Notices.held
        answer(dbus.UInt32(number))


class Request(dbus.service.Object):
    """Where a portal answers."""

    @dbus.service.signal(REQUEST, signature='ua{sv}')
    def Response(self, code, results):
        pass


class ChoosingPortal(Portal):
    """The person chooses the file named by CHOSEN in the environment, and saves as SAVE_AS or into the folder SAVE_IN.
    Without them the title says what the person does: a path, 'cancel' or 'wait'."""

    def answer(self, sender, options, said, names=('',)):
        path = f"/org/freedesktop/portal/desktop/request/{sender[1:].replace('.', '_')}/{options['handle_token']}"
        if said != 'wait':
            uris = [GLib.filename_to_uri(said + name) for name in names] if said.startswith('/') else []
            chosen = {'uris': dbus.Array(uris, signature='s')} if uris else {}
            request = Request(bus, path)
            GLib.idle_add(lambda: request.Response(dbus.UInt32(0 if chosen else 1), dbus.Dictionary(chosen, signature='sv')))
        return dbus.ObjectPath(path)

    @dbus.service.method(CHOOSER, in_signature='ssa{sv}', out_signature='o', sender_keyword='sender')
    def SaveFile(self, _parent, title, options, sender=None):
        say('save', str(title), str(options['current_name']), bool(options['modal']))
        return self.answer(sender, options, os.environ.get('SAVE_AS', str(title)))

    @dbus.service.method(CHOOSER, in_signature='ssa{sv}', out_signature='o', sender_keyword='sender')
    def SaveFiles(self, _parent, title, options, sender=None):
        names = [bytes(name).rstrip(b'\0').decode() for name in options['files']]
        say('save', str(title), names, bool(options['modal']))
        return self.answer(sender, options, os.environ.get('SAVE_IN', str(title)), ['/' + name for name in names])

    @dbus.service.method(CHOOSER, in_signature='ssa{sv}', out_signature='o', sender_keyword='sender')
    def OpenFile(self, _parent, title, options, sender=None):
        filters = [[str(name), [[int(kind), str(glob)] for kind, glob in patterns]] for name, patterns in options.get('filters', [])]
        say('choose', str(title), 'a folder' if options.get('directory') else filters, bool(options['modal']))
        return self.answer(sender, options, os.environ.get('CHOSEN', str(title)))


class Desktop(ChoosingPortal):
    """Its settings ask for no motion until somebody changes that, and for the clock named by CLOCK."""
    clock = os.environ.get('CLOCK', '24h')

    @dbus.service.method(SETTINGS, in_signature='ss', out_signature='v')
    def Read(self, group, key):
        values = {'enable-animations': dbus.Boolean(False, variant_level=2),
                  'clock-format': dbus.String(Desktop.clock, variant_level=1), 'text-scaling-factor': dbus.Double(1.5, variant_level=2),
                  'contrast': dbus.UInt32(1, variant_level=2)}
        assert group == (APPEARANCE if key == 'contrast' else LOOK)
        return values[key]

    @dbus.service.signal(SETTINGS, signature='ssv')
    def SettingChanged(self, group, key, value):
        pass

    @dbus.service.method('org.firstdew.Hands', in_signature='sb')
    def Set(self, key, on):
        self.SettingChanged(LOOK, key, dbus.Boolean(on, variant_level=1))

    @dbus.service.method('org.firstdew.Hands', in_signature='ssd')
    def SetNumber(self, group, key, value):
        self.SettingChanged(group, key, dbus.Double(value, variant_level=1) if key != 'contrast' else dbus.UInt32(int(value), variant_level=1))


class Accessibility(dbus.service.Object):
    """Asked a second time, the screen reader is on."""
    asked = 0

    @dbus.service.method('org.freedesktop.DBus.Properties', in_signature='ss', out_signature='v')
    def Get(self, interface, name):
        assert (interface, name) == ('org.a11y.Status', 'ScreenReaderEnabled')
        Accessibility.asked += 1
        return Accessibility.asked > 1


DBusGMainLoop(set_as_default=True)
bus = dbus.SessionBus()
names = [dbus.service.BusName(name, bus) for name in sys.argv[1:]]
services = [Feedback(bus, '/org/sigxcpu/Feedback'), Desktop(bus, '/org/freedesktop/portal/desktop'), Accessibility(bus, '/org/a11y/bus'),
            Notices(bus, '/org/freedesktop/Notifications')]
say('ready')
GLib.MainLoop().run()
