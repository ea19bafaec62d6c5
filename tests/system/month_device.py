"""A desktop whose clock and zone are set by hand, with the reminders' program run on it as the system's timer runs it."""
import json
import pathlib
import subprocess
import time
import uuid

import dbus
import dbus.lowlevel
from _dbus_bindings import HANDLER_RESULT_HANDLED
from dbus.mainloop.glib import DBusGMainLoop
from gi.repository import GLib

import ui

FAKETIME = next(iter(pathlib.Path('/usr/lib').glob('*/faketime/libfaketimeMT.so.1')), None)
PERSON = uuid.uuid4().hex
NOTES = ('org.freedesktop.Notifications', '/org/freedesktop/Notifications')


class Device:
    """A desktop whose clock and zone are set by hand, with the reminders' program on it while the app is closed."""
    opened = False

    def __init__(self, program, command):
        assert FAKETIME, 'libfaketime is not there'
        self.program, self.command = program, command
        self.desktop = ui.Desktop(notices=True)
        self.store = self.desktop.folder / 'record.db'
        self.moment = self.desktop.folder / 'moment'
        self.faked = {'LD_PRELOAD': str(FAKETIME), 'FAKETIME_FMT': '%s', 'FAKETIME_TIMESTAMP_FILE': str(self.moment),
                      'FAKETIME_NO_CACHE': '1', 'FAKETIME_DONT_FAKE_MONOTONIC': '1'}
        self.process = None
        self.bus = dbus.bus.BusConnection(self.desktop.env['DBUS_SESSION_BUS_ADDRESS'])
        self.calls = []
        self.listen(DBusGMainLoop())

    def listen(self, loop):
        """Hears every call to the notification daemon, in order."""
        self.monitor = dbus.bus.BusConnection(self.desktop.env['DBUS_SESSION_BUS_ADDRESS'], mainloop=loop)

        def hear(_, message):
            if message.get_member() in ('Notify', 'ActionInvoked', 'HeardSoFar') and message.get_type() in (1, 4):
                self.calls.append((str(message.get_member()), message.get_args_list()))
            return HANDLER_RESULT_HANDLED
        self.monitor.add_message_filter(hear)
        self.monitor.call_blocking('org.freedesktop.DBus', '/org/freedesktop/DBus', 'org.freedesktop.DBus.Monitoring', 'BecomeMonitor', 'asu', ([], 0))

    def heard(self):
        """What was heard since the last time. The bus keeps the order, so that all is heard once our own mark is."""
        self.bus.send_message(dbus.lowlevel.SignalMessage('/month', 'org.firstdew.Month', 'HeardSoFar'))
        self.bus.flush()
        end = time.monotonic() + ui.PATIENCE
        while not self.calls or self.calls[-1][0] != 'HeardSoFar':
            assert time.monotonic() < end, 'the bus is not heard'
            if not GLib.MainContext.default().iteration(False):
                time.sleep(0.001)
        out, self.calls = self.calls[:-1], []
        return out

    def set_clock(self, zone, epoch):
        self.faked['TZ'] = zone
        self.moment.write_text(f'{epoch}\n', encoding='ascii')

    def cli(self, *args):
        done = subprocess.run([self.command, '--json', *map(str, args)], capture_output=True, text=True, env={**self.desktop.env, **self.faked}, check=False)
        assert done.returncode == 0, f'{args}: {done.stderr}'
        return json.loads(done.stdout)

    def take(self, now, **facts):
        """Records what a person tells the app and the command line has no verb for."""
        entries = [{'id': uuid.uuid4().hex, 'person': PERSON, 'happened': now.isoformat('T', 'minutes'), 'recorded_ms': int(self.moment.read_text()) * 1000 + i,
                    'kind': kind.rstrip('_').replace('_', '-'), 'is': value} for kind, values in facts.items() for i, value in enumerate(values)]
        file = self.desktop.folder / 'facts.json'
        file.write_text(json.dumps({'format': 'firstdew-record', 'version': 1, 'facts': entries}), encoding='utf-8')
        assert self.cli('import', file, '--store', self.store)['added'] == len(entries)

    def owner(self):
        return next((n for n in self.bus.list_names() if n.startswith('org.firstdew.Reminders.')), None)

    def looked(self):
        """Asks whoever looks after the reminders to look; whether it has."""
        name = self.owner()
        if name is None:
            return False
        try:
            self.bus.call_blocking(name, '/org/firstdew/Reminders', 'org.firstdew.Reminders', 'Update', '', (), timeout=ui.PATIENCE)
            return True
        except dbus.DBusException:  # not there yet, or just gone
            return False

    def look(self):
        """The timer's moment: the program is run, or the one that waits for an answer looks, as it does each minute."""
        if self.process is not None and self.process.poll() is None and self.looked():
            return self.settle()
        if self.process is None or self.process.wait(timeout=ui.PATIENCE) is not None:
            self.process = self.desktop.spawn('env', *(f'{k}={v}' for k, v in self.faked.items()), self.program, '--store', str(self.store), '--remind')
        end = time.monotonic() + ui.PATIENCE
        while self.process.poll() is None and not self.looked():
            assert time.monotonic() < end, 'the program neither looked nor ended'
        return self.settle()

    def settle(self):
        """What it holds to be up, {key: number}; with nothing up it ends by itself."""
        up = self.up()
        if not up:
            assert self.process.wait(timeout=ui.PATIENCE) == 0
        ui.wait_for(f'{len(set(up.values()))} notices up', lambda: self.displayed() == len(set(up.values())))
        return up

    def up(self):
        """Of this daemon; one that is gone has nothing up."""
        try:
            kept = json.loads((self.store.parent / 'record.db.notices').read_text(encoding='utf-8'))
        except FileNotFoundError:
            return {}
        same = kept['daemon'].startswith(self.bus.get_name_owner(NOTES[0]) + '@')
        return {key: int(n['id']) for key, n in kept['notices'].items() if n['id'] and same}

    def displayed(self):
        return int(self.bus.call_blocking(*NOTES, 'org.freedesktop.DBus.Properties', 'Get', 'ss', ('org.dunstproject.cmd0', 'displayedLength')))

    def press(self, number, action):
        """The person presses that button; back when the program has taken it."""
        (self.desktop.folder / 'wanted').write_text(f'[{number},{action}]', encoding='utf-8')
        self.desktop.dunstctl('context')
        heard = []
        ui.wait_for(f'{action} to be pressed', lambda: heard.extend(self.heard()) or any(name == 'ActionInvoked' for name, _ in heard))
        assert self.looked() or self.process.wait(timeout=ui.PATIENCE) == 0
        return self.settle()

    def wipe_away(self):
        self.bus.call_blocking(*NOTES, 'org.dunstproject.cmd0', 'NotificationCloseAll', '', ())
        ui.wait_for('nothing up', lambda: self.displayed() == 0)
        return self.process.wait(timeout=ui.PATIENCE)

    def restart(self):
        """Off and on again: no process outlives it."""
        if self.process is not None and self.process.poll() is None:
            self.process.kill()
            self.process.wait()
        daemon = next(p for p in self.desktop.processes if p.args[0] == 'dunst' and p.poll() is None)
        daemon.kill()
        daemon.wait()
        ui.wait_for('the daemon to be gone', lambda: not self.bus.name_has_owner(NOTES[0]))
        self.desktop.start_notices()


class OpenedDevice(Device):
    """The same with the app open all the time; only a device that is switched off ends it."""
    opened = True

    def look(self):
        """The app looks each minute; here it is asked to."""
        if self.process is None or self.process.poll() is not None:
            self.process = self.desktop.spawn('env', *(f'{k}={v}' for k, v in self.faked.items()), 'QT_QPA_PLATFORM=offscreen', self.program, '--store', str(self.store))
        ui.wait_for('the app to look', self.looked)
        return self.settle()

    def settle(self):
        up = self.up()
        ui.wait_for(f'{len(set(up.values()))} notices up', lambda: self.displayed() == len(set(up.values())))
        return up

    def wipe_away(self):
        self.bus.call_blocking(*NOTES, 'org.dunstproject.cmd0', 'NotificationCloseAll', '', ())
        ui.wait_for('nothing up', lambda: self.displayed() == 0)
        ui.wait_for('the app to know', lambda: not self.up())
