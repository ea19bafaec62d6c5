"""A hand that touches the app's window where a thing stands, counts its taps, and notes what had to be read and where the
thing stood. Nothing is pressed over the accessibility tree: what is not in view is scrolled to, and that counts as well."""
import re

import ui

WHEEL_DOWN, WHEEL_UP = 'b5c', 'b4c'
MOST_SCROLLS = 60
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
                    yield node, node.getRoleName(), self.box(node)
            except Exception:  # the tree changes under us
                continue

    def in_view(self, box):
        middle = box.y + box.height / 2
        return box.width > 0 and box.height > 0 and 0 <= middle < self.height and 0 <= box.x + box.width / 2 < self.width

    def look(self):
        """Notes what is to be read now."""
        for _, role, box in self.shown():
            if role == 'heading' and self.in_view(box):
                break
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

    def find(self, name, role):
        pattern = name if hasattr(name, 'search') else re.compile(re.escape(name) + r'\Z')

        def attempt():
            found = [(n, b) for n, r, b in self.shown() if (role is None or r == role) and pattern.match(n.name) and b.height > 0]
            # What lies on top comes last in the tree.
            return found[-1] if found else None
        return ui.wait_for(f'{name!r}; on the screen: {self.app.names()}', attempt, 10)

    def at(self, name, role=None):
        """How far down the thing reaches that is needed next, unscrolled."""
        _, box = self.find(name, role)
        self.lowest = max(self.lowest, box.y + box.height)

    def tap(self, name, role=None):
        node, box = self.find(name, role)
        self.look()
        self.lowest = max(self.lowest, box.y + box.height)
        mouse = self.app.pyatspi.Registry.generateMouseEvent
        for _ in range(MOST_SCROLLS):
            if box.y >= 0 and box.y + box.height <= self.height:
                break
            mouse(self.width // 2, self.height // 2, WHEEL_DOWN if box.y > 0 else WHEEL_UP)
            self.scrolls += 1
            node, box = self.find(name, role)
            self.look()
        ready = lambda: node.getState().contains(self.app.pyatspi.STATE_ENABLED) and not (node.description or '').startswith('Not possible')
        ui.wait_for(f'{name!r} to be possible', ready, 10)
        mouse(int(box.x + box.width / 2), int(box.y + box.height / 2), 'b1c')
        self.taps += 1

    def words(self):
        return sum(len(re.findall(r"[^\W_]+(?:['’.,][^\W_]+)*", text)) for text in self.read)

    def result(self):
        return {'taps': self.taps, 'pages': len(self.pages), 'words': self.words(), 'lowest': self.lowest, 'scrolls': self.scrolls}
