"""A phone's shell in a root of its own, and the app on it, tapped where it is seen."""
import os
import pathlib
import shutil
import signal
import subprocess
import sys
import tempfile
import time

HERE = pathlib.Path(__file__).resolve().parent
DESKTOP = HERE.parents[1] / 'assets/desktop'
sys.path.insert(0, str(HERE.parent / 'system'))
import ui

TOP_BAR = 32  # of the shell, in pixels
HOME_BAR = 15
ROW = 50  # of the keyboard
OPENING = 6  # seconds for a window to come up by itself
CARD = 190  # height at which the overview has the window
STRIP = 8  # below the shell's bar, where an app has its paper
BARE = 12  # of 255: the shell's own background is darker than any paper
HAND = 0.8  # seconds from one tap to the next: closer ones of a wet finger count once
STILL = 0.2  # seconds for which a thing stays where it is before it is tapped
SLOW = 60  # seconds for the shell to be up, on a machine that is busy


class Phone(ui.Desktop):
    """What ui.Desktop is, on a phone: the shell instead of a bare display. `app` is a program of this system, which joins the
    shell by its sockets."""

    def __init__(self, root, size=(360, 720), locked=False, idle=0):
        self.idle = idle
        self.root = pathlib.Path(root)
        self.locked = locked
        super().__init__(size, sound=True)

    def _display(self):
        self.number = 200 + os.getpid() % 30000
        # The sockets lie where both roots see them, by the same path.
        self.shared = pathlib.Path(tempfile.mkdtemp(prefix='phone-', dir='/run'))
        self._put_the_app_there()
        inside = 'root=$1 shared=$2; shift 2; mount --make-rprivate /; mount -t proc proc "$root/proc"; mount --rbind /dev "$root/dev";' \
                 'mkdir -p "$root$shared" "$root/tmp/.X11-unix"; mount --bind "$shared" "$root$shared"; mount --bind /tmp/.X11-unix "$root/tmp/.X11-unix";' \
                 'mount --bind "$3" "$root/src"; exec chroot "$root" sh /src/shell.sh "$shared" "$1" "$2" "$4" $5'
        pathlib.Path('/tmp/.X11-unix').mkdir(mode=0o1777, exist_ok=True)
        self.spawn('unshare', '--mount', '--pid', '--fork', '--kill-child', 'sh', '-euc', inside, 'sh', str(self.root), str(self.shared),
                   str(self.number), f'{self.size[0]}x{self.size[1]}', str(HERE), str(self.idle), '' if self.locked else '--unlocked')
        self.env.update(XDG_RUNTIME_DIR=str(self.shared), DISPLAY=f':{self.number}', WAYLAND_DISPLAY='wayland-0', XDG_SESSION_TYPE='wayland',
                        XDG_CURRENT_DESKTOP='Phosh:GNOME', DBUS_SESSION_BUS_ADDRESS=f'unix:path={self.shared}/bus')
        self.env['GDK_BACKEND'] = 'x11'  # pictures are of the display itself
        del self.env['QT_QPA_PLATFORM']  # as a phone starts it
        self.env['HOME'] = str(self.shared / 'home')
        try:
            ui.wait_for('the shell', lambda: self.asks('org.freedesktop.DBus', '/org/freedesktop/DBus', 'org.freedesktop.DBus.NameHasOwner', 'sm.puri.OSK0') == '(true,)',
                        SLOW)
        except AssertionError:
            for log in sorted(self.shared.glob('*.log')):
                print(f'--- {log.name}\n{log.read_text(errors="replace")[-1500:]}', file=sys.stderr)
            raise

    def _put_the_app_there(self):
        """The app's entry and icon, as its package brings them. What the icon starts only asks this process to start the app, which is
        of another root."""
        mine = self.shared / 'home/.local/share'
        for folder in ('applications', 'icons/hicolor/scalable/apps'):
            (mine / folder).mkdir(parents=True)
        entry = (DESKTOP / 'firstdew.desktop').read_text(encoding='utf-8')
        start = self.shared / 'start'
        start.write_text(f'#!/bin/sh\necho "$@" >{self.shared}/wanted\n', encoding='utf-8')
        start.chmod(0o755)
        (mine / 'applications/firstdew.desktop').write_text(entry.replace('Exec=firstdew', f'Exec={start}'), encoding='utf-8')
        shutil.copy(DESKTOP / 'firstdew.svg', mine / 'icons/hicolor/scalable/apps')

    def icon_was_tapped(self):
        return (self.shared / 'wanted').exists()

    def asks(self, destination, path, method, *arguments):
        return subprocess.run(['gdbus', 'call', '--session', '--dest', destination, '--object-path', path, '--method', method, *arguments],
                              env=self.env, capture_output=True, text=True, check=False).stdout.strip()

    def _bus(self):
        launcher = next(p for p in ('/usr/libexec/at-spi-bus-launcher', '/usr/lib/at-spi2-core/at-spi-bus-launcher') if os.path.exists(p))
        # It presses on the display itself, as a finger on the glass does.
        self.spawn('env', '-u', 'WAYLAND_DISPLAY', 'XDG_SESSION_TYPE=x11', launcher, '--launch-immediately')
        os.environ.update({k: self.env[k] for k in ('DISPLAY', 'DBUS_SESSION_BUS_ADDRESS', 'XDG_RUNTIME_DIR', 'NO_AT_BRIDGE')})
        ui.wait_for('the accessibility bus', lambda: self.asks('org.a11y.Bus', '/org/a11y/bus', 'org.a11y.Bus.GetAddress'))

    def keyboard_is_up(self):
        return '<true>' in self.asks('sm.puri.OSK0', '/sm/puri/OSK0', 'org.freedesktop.DBus.Properties.Get', 'sm.puri.OSK0', 'Visible')

    def tap(self, x, y):
        """A finger on the glass."""
        import pyatspi
        pyatspi.Registry.generateMouseEvent(int(x), int(y), 'b1c')

    def shown(self):
        """The picture on the glass, as bytes; without the shell's bar, which has a clock."""
        width, height = self.size
        return self.pixels((0, TOP_BAR, width, height - TOP_BAR))

    def pixels(self, box):
        """What shows in that box (left, top, width, height)."""
        import gi
        gi.require_version('GdkPixbuf', '2.0')
        from gi.repository import GdkPixbuf
        file = self.folder / 'now.png'
        self.picture(file)
        return GdkPixbuf.Pixbuf.new_from_file(str(file)).new_subpixbuf(*box).copy().get_pixels()

    def brightness(self, box):
        """Mean of what shows in that box (left, top, width, height), 0 to 255."""
        values = self.pixels(box)
        return sum(values) / len(values)

    def is_dark(self):
        """Whether the shell has switched the screen off, as it says itself and as the glass shows."""
        says = self.asks('org.gnome.ScreenSaver', '/org/gnome/ScreenSaver', 'org.gnome.ScreenSaver.GetActive')
        assert says in ('(true,)', '(false,)'), says
        return says == '(true,)' and self.brightness((0, 0, *self.size)) == 0

    def felt(self):
        """What the feedback daemon was asked to let feel."""
        return (self.shared / 'feedbackd.log').read_text(errors='replace')

    def type(self, letters):
        """On the phone's keyboard: a letter is where the layout has it, three rows of ten, nine and seven above the last one."""
        width, height = self.size
        rows = ('qwertyuiop', 'asdfghjkl', 'zxcvbnm')
        for letter in letters:
            row = next(i for i, keys in enumerate(rows) if letter in keys)
            key = width / 10
            x = width / 2 + (rows[row].index(letter) - (len(rows[row]) - 1) / 2) * key
            self.tap(x, height - HOME_BAR - (3.5 - row) * ROW)

    def close(self):
        super().close()
        shutil.rmtree(self.shared, ignore_errors=True)


class App(ui.App):
    """The app on the phone, pressed where it lies on the glass."""

    def _application(self):
        assert self.process.poll() is None, f'the app ended: {self.log()}'
        try:
            return next((app for app in self.pyatspi.Registry.getDesktop(0) if app is not None and app.name == 'firstdew' and app.childCount), None)
        except Exception:  # the tree changes under us
            return None

    def bring_up(self, name, above):
        """Scrolls the page until the thing of that name ends above the place `above`, as what lies at the foot covers it below."""
        width, height = self.desktop.size

        def up():
            x, y, wide, high = self.place(self.find(name))
            if high > 0 and y + high <= above:
                return True
            self.pyatspi.Registry.generateMouseEvent(width // 2, height // 3, 'b5c')
            time.sleep(STILL)
            return False
        ui.wait_for(f'{name!r} in view', up)

    def at_rest(self):
        """Once the shell has opened the window and nothing moves."""
        last, asked = None, time.monotonic()

        def still():
            nonlocal last, asked
            if time.monotonic() > asked + OPENING:  # after a kill the shell may show its overview: the window is a card there
                self.desktop.tap(self.desktop.size[0] / 2, CARD)
                asked = time.monotonic()
            before, last = last, self.desktop.shown()
            return before == last and self.desktop.brightness((0, TOP_BAR, self.desktop.size[0], STRIP)) > BARE
        ui.wait_for('the window open and at rest', still)

    def whereabouts(self, name):
        """The place of the thing of that name; nothing while it is not on the screen."""
        try:
            place = self.place(self.find(name))
        except Exception:  # not there, or it has no place of its own
            return None
        return place if place[3] > 0 else None

    def place(self, node):
        box = node.queryComponent().getExtents(self.pyatspi.DESKTOP_COORDS)  # of the window: Wayland tells no more
        return box.x, box.y, box.width, box.height

    def press(self, name, role=None, top=False, within=None, patience=ui.PATIENCE):
        def ready():
            node = self.reach(name, role, top, within)
            try:
                if node is None or not node.getState().contains(self.pyatspi.STATE_ENABLED):
                    return None
                before = self.place(node)
                time.sleep(STILL)
                return before if before[2] > 0 and self.place(node) == before else None
            except Exception:
                return None
        x, y, width, height = ui.wait_for(f'{name!r} to press', ready, patience)
        self.desktop.tap(x + width / 2, TOP_BAR + y + height / 2)
        time.sleep(HAND)
