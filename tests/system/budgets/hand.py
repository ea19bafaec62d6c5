"""A hand that touches the app's window where a thing stands, counts its taps, and notes what had to be read and where the
thing stood. Nothing is pressed over the accessibility tree: what is not in view is scrolled to, and that counts as well."""
import re
import time

import ui

WHEEL_DOWN, WHEEL_UP = 'b5c', 'b4c'
MOST_SCROLLS = 90
SOON = 5  # seconds in which a page is there
LEFT_TO_SCROLL = 0.2  # seconds until a page has followed the wheel
READ = ('label', 'heading', 'push button', 'radio button', 'check box', 'text', 'page tab', 'static')


class Hand:
    def __init__(self, app, width, height):
        self.app, self.width, self.height = app, width, height
        self.taps = self.scrolls = self.lowest = 0
        self.pages, self.read = [], set()

    def box(self, node):
        return node.queryComponent().getExtents(self.app.pyatspi.DESKTOP_COORDS)

    def shown(self):
        """Everything visible that has a name, with its place, in order."""
        for node in self.app.nodes():
            try:
                if node.name and self.app.is_seen(node):
                    yield node, ui.role_of(node), self.box(node)
            except Exception:  # the tree changes under us
                continue

    def in_view(self, box):
        middle = box.y + box.height / 2
        return box.width > 0 and box.height > 0 and 0 <= middle < self.height and 0 <= box.x + box.width / 2 < self.width

    def look(self):
        """Notes what is to be read now."""
        first = None
        for node, role, box in self.shown():
            if not self.in_view(box):
                continue
            if role in READ:
                self.read.add(node.name)
            if role == 'heading' and first is None:
                first = node.name
        if first and (not self.pages or self.pages[-1] != first):
            self.pages.append(first)

    def pattern(self, name):
        return name if hasattr(name, 'search') else re.compile(re.escape(name) + r'\Z')

    def find(self, name, role):
        """The thing of that name that is in view, on top where there are several; otherwise one that is scrolled out of view, which the
        tree does not tell from a hidden one."""
        pattern = self.pattern(name)

        def attempt():
            found = []
            for n in self.app.all(pattern, role):
                try:
                    found.append((n, self.box(n)))
                except Exception:  # the tree changes under us
                    continue
            seen = [(n, b) for n, b in found if self.app.is_seen(n) and b.height > 0]
            return (seen or [(n, b) for n, b in found if b.height > 0])[-1:]
        (node, box), = ui.wait_for(f'{name!r}; on the screen: {self.app.names()}', attempt)
        return node, box

    def whole(self, node, box):
        return self.app.is_seen(node) and box.y >= 0 and box.y + box.height <= self.height

    def at(self, name, role=None):
        """How far down the thing reaches that is needed next, unscrolled."""
        _, box = self.find(name, role)
        self.lowest = max(self.lowest, box.y + box.height)

    def at_rest(self, name, role, patience=SOON):
        """As find, once it moves no more: nobody hits what is on its way. Looks first for what is in view, since a page that is
        still being made has its things in the tree before they are shown."""
        try:
            ui.wait_for(name, lambda: any(self.app.is_seen(n) for n in self.app.all(self.pattern(name), role)), patience)
        except AssertionError:
            pass  # to be scrolled for
        before = None
        while True:
            node, box = self.find(name, role)
            place = (box.x, box.y, box.width, box.height)
            if place == before:
                return node, box
            before = place
            time.sleep(LEFT_TO_SCROLL)

    def tap(self, name, role=None):
        node, box = self.at_rest(name, role)
        self.look()
        self.lowest = max(self.lowest, box.y + box.height)
        mouse = self.app.pyatspi.Registry.generateMouseEvent
        while not self.whole(node, box):
            assert self.scrolls < MOST_SCROLLS, f'{name!r} does not come into view'
            mouse(self.width // 2, self.height // 2, WHEEL_DOWN if box.y > 0 else WHEEL_UP)
            self.scrolls += 1
            time.sleep(LEFT_TO_SCROLL)
            node, box = self.at_rest(name, role, 0)  # a touch on a page that still glides only stops it
            self.look()

        def ready():
            return node.getState().contains(self.app.pyatspi.STATE_ENABLED) and not (node.description or '').startswith('Not possible')
        ui.wait_for(f'{name!r} to be possible', ready)
        mouse(int(box.x + box.width / 2), int(box.y + box.height / 2), 'b1c')
        self.taps += 1

    def words(self):
        return sum(len(re.findall(r"[^\W_]+(?:['’.,][^\W_]+)*", text)) for text in self.read)

    def result(self):
        return {'taps': self.taps, 'pages': len(self.pages), 'words': self.words(), 'lowest': self.lowest, 'scrolls': self.scrolls}
