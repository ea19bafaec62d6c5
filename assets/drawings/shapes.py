"""The pen and the parts that the drawings share: hands, feet, trays, machine, leads, figures.

Every picture is 240 units square. A colour is named by its role; make.py puts the values of a theme in its place.
"""
import math

SIZE = 240
LINE = 5  # the one thickness of a contour


class Part:
    """A rounded stroke, or a filled outline with rounded corners, `width` across."""

    def __init__(self, points, width, closed=False, smooth=False):
        self.points, self.width, self.closed, self.smooth = points, width, closed, smooth


def place(parts, x, y, scale=1.0, turn=0, flip=False):
    """The parts scaled, flipped left to right, turned clockwise by degrees, and moved."""
    cos, sin = math.cos(math.radians(turn)) * scale, math.sin(math.radians(turn)) * scale
    side = -1 if flip else 1
    return [Part([(x + side * px * cos - py * sin, y + side * px * sin + py * cos) for px, py in part.points],
                 part.width * scale, part.closed, part.smooth) for part in parts]


def path(points, closed=False, smooth=False):
    """Path data; a smooth one runs through the middles of its sides."""
    def at(p):
        return f"{p[0]:.1f} {p[1]:.1f}".replace(".0 ", " ").removesuffix(".0")

    def middle(a, b):
        return ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)

    if not smooth:
        return "M" + "L".join(at(p) for p in points) + ("Z" if closed else "")
    if closed:
        start = middle(points[-1], points[0])
        curves = [(p, middle(p, points[(i + 1) % len(points)])) for i, p in enumerate(points)]
    else:
        start = points[0]
        curves = [(p, middle(p, q)) for p, q in zip(points[1:-1], points[2:])]
        curves[-1] = (curves[-1][0], points[-1])
    return "M" + at(start) + "".join(f"Q{at(p)} {at(q)}" for p, q in curves) + ("Z" if closed else "")


def arc(cx, cy, r, start, end, steps=24):
    """Points on a circle, degrees clockwise from the right."""
    angles = [math.radians(start + (end - start) * i / steps) for i in range(steps + 1)]
    return [(cx + r * math.cos(a), cy + r * math.sin(a)) for a in angles]


def curve(a, via, b, steps=24):
    """Points from a to b on a curve that is drawn towards `via`."""
    shares = [i / steps for i in range(steps + 1)]
    return [tuple(p * (1 - t) ** 2 + 2 * q * t * (1 - t) + r * t * t for p, q, r in zip(a, via, b)) for t in shares]


class Picture:
    def __init__(self):
        self.items = []

    def stroke(self, points, width=LINE, color="ink", closed=False, smooth=False):
        self.items.append(f'<path d="{path(points, closed, smooth)}" fill="none" stroke="{{{color}}}" '
                          f'stroke-width="{width:.4g}"/>')

    def fill(self, points, color, smooth=False):
        self.items.append(f'<path d="{path(points, True, smooth)}" fill="{{{color}}}" stroke="none"/>')

    def shape(self, points, color="card", smooth=False):
        self.items.append(f'<path d="{path(points, True, smooth)}" fill="{{{color}}}" stroke="{{ink}}" '
                          f'stroke-width="{LINE}"/>')

    def box(self, x, y, width, height, radius=8, color="card", line="ink"):
        edge = f'stroke="{{{line}}}" stroke-width="{LINE}"' if line else 'stroke="none"'
        self.items.append(f'<rect x="{x:.4g}" y="{y:.4g}" width="{width:.4g}" height="{height:.4g}" rx="{radius}" '
                          f'fill="{{{color}}}" {edge}/>')

    def disc(self, x, y, r, color="card", line="ink"):
        edge = f'stroke="{{{line}}}" stroke-width="{LINE}"' if line else 'stroke="none"'
        self.items.append(f'<circle cx="{x:.4g}" cy="{y:.4g}" r="{r:.4g}" fill="{{{color}}}" {edge}/>')

    def blob(self, parts, color="card"):
        """Parts grown together: one contour around them all."""
        for grow, role in ((LINE, "ink"), (-LINE, color)):
            for part in parts:
                inside = f"{{{role}}}" if part.closed else "none"
                self.items.append(f'<path d="{path(part.points, part.closed, part.smooth)}" fill="{inside}" '
                                  f'stroke="{{{role}}}" stroke-width="{max(part.width + grow, 0.1):.4g}"/>')

    def arrow(self, points, width=11, head=15, color="now"):
        """A block arrow along the points: what is to be done now."""
        (ax, ay), (bx, by) = points[-2], points[-1]
        length = math.hypot(bx - ax, by - ay)
        ux, uy = (bx - ax) / length, (by - ay) / length
        base = (bx - ux * head, by - uy * head)
        shaft = [p for p in points[:-1] if math.hypot(p[0] - bx, p[1] - by) > head] + [base]
        tip = [(bx, by), (base[0] - uy * head * .85, base[1] + ux * head * .85),
               (base[0] + uy * head * .85, base[1] - ux * head * .85)]
        self.blob([Part(shaft, width), Part(tip, 5, True)], color)

    def slow_arrow(self, points, width=11, size=15, color="now"):
        """The same in small steps: do it little by little. An even number of steps along the points."""
        count = len(points)
        parts = []
        for step in range(3):
            start = step * count // 4
            parts.append(Part([points[start], points[start + count // 12]], width))
        self.blob(parts, color)
        self.arrow(points[3 * count // 4:], width, size, color)

    def forbidden(self, a, b):
        """Strikes out what lies between the two points."""
        self.stroke([a, b], 17, "card")
        self.stroke([a, b], 9, "danger")

    def drop(self, x, y, size=10, color="tone"):
        self.shape([(x, y - size * 1.7), (x + size * .35, y - size * .7), (x + size, y), (x + size * .9, y + size),
                    (x, y + size * 1.3), (x - size * .9, y + size), (x - size, y), (x - size * .35, y - size * .7)],
                   color, True)


# Limbs. The local origin is the wrist or heel, fingers and toes point up.

def hand(arm=46):
    """A left hand from above, fingers side by side; a right one is its flip."""
    return [Part([(-27, -48), (27, -48), (21, -14), (8, 0), (-10, 0), (-22, -14)], 18, True),
            Part([(-27, -48), (-34, -82)], 17), Part([(-9, -50), (-12, -103)], 18),
            Part([(9, -50), (10, -109)], 18), Part([(27, -48), (31, -98)], 18),
            Part([(18, -20), (40, -36), (50, -62)], 19), Part([(0, 0), (0, arm)], 38)]


def foot(leg=46):
    """A left foot from above with the leg towards the viewer; a right one is its flip."""
    return [Part([(-15, 4), (-19, -26), (-24, -56), (-27, -84), (-8, -98), (12, -102), (27, -84), (20, -50), (17, -22),
                  (14, 4)], 12, True, True),
            Part([(17, -107), (17, -112)], 26), Part([(-2, -106), (-2, -110)], 17), Part([(-15, -99), (-16, -103)], 15),
            Part([(-25, -89), (-26, -93)], 14), Part([(-31, -77), (-32, -80)], 12), Part([(0, 0), (0, leg)], 44)]


def pointing(arm=46):
    """A hand from the side whose finger points up; the tip is the origin."""
    return [Part([(0, 8), (0, 52)], 18), Part([(2, 54), (46, 54), (40, 92), (10, 92)], 18, True),
            Part([(18, 44), (18, 58)], 17), Part([(34, 46), (34, 58)], 17), Part([(49, 52), (48, 64)], 15),
            Part([(2, 78), (-8, 62), (4, 54)], 16), Part([(24, 92), (28, 92 + arm)], 34)]


def cuff(picture, x, y, width):
    """The end of a sleeve or trouser leg."""
    picture.box(x - width / 2, y, width, 26, 6, "tone")


def limb(picture, kind, x, y, scale=1.0, right=False, end=206, color="card"):
    """A hand or foot with its wrist or heel at (x, y), down to a cuff at `end`."""
    width = 44 if kind is foot else 38
    picture.blob(place(kind((end + 8 - y) / scale - width / 2), x, y, scale, 0, right), color)
    cuff(picture, x, end, (width + 20) * scale)


# Things

def tray(picture, x, y, width, height, water="tone"):
    picture.box(x, y, width, height, 16)
    picture.box(x + 10, y + 10, width - 20, height - 20, 9, water)


def meter(picture, x, y, r, share):
    """A half round meter; `share` from 0 to 1 is where the needle stands. Its 0 is lit while the needle is there."""
    picture.shape(arc(x, y, r, 180, 360) + [(x + r, y + r * .28), (x - r, y + r * .28)], "card")
    for mark in range(1, 5):
        angle = 195 + mark * 37.5
        picture.stroke([arc(x, y, r * .84, angle, angle, 1)[0], arc(x, y, r * .66, angle, angle, 1)[0]], 4)
    zx, zy = arc(x, y, r * .93, 195, 195, 1)[0]
    picture.disc(zx, zy, r * .4, "card", "ink" if share else "now")
    number(picture, "0", zx - r * .12, zy - r * .19, r * .38, 4.5)
    angle = 195 + share * 150
    picture.stroke([(x, y), arc(x, y, r * (.72 if share else .45), angle, angle, 1)[0]], 6)
    picture.disc(x, y, r * .12, "ink")


def knob(picture, x, y, r, share):
    picture.disc(x, y, r, "tone")
    angle = 135 + share * 270
    picture.stroke([arc(x, y, r * .25, angle, angle, 1)[0], arc(x, y, r * .8, angle, angle, 1)[0]], 7)


def rocker(picture, x, y, on, width=64, height=34):
    """The power switch: I on the left, O on the right; the pressed side is dark."""
    picture.box(x - width / 2, y - height / 2, width, height, 7)
    half = x - width / 2 if on else x
    picture.box(half, y - height / 2, width / 2, height, 7, "ink")
    picture.stroke([(x - width / 4, y - height * .22), (x - width / 4, y + height * .22)], 5, "card" if on else "ink")
    picture.stroke(arc(x + width / 4, y, height * .2, 0, 360), 5, "ink" if on else "card")


def lamp(picture, x, y, on, r=9):
    picture.disc(x, y, r, "now" if on else "card")
    if on:
        for angle in range(0, 360, 45):
            picture.stroke([arc(x, y, r + 8, angle, angle, 1)[0], arc(x, y, r + 15, angle, angle, 1)[0]], 4)


def socket(picture, x, y, color):
    """Where the plug of the same colour goes."""
    picture.disc(x, y, 15, color)
    picture.disc(x, y, 4, "card" if color == "ink" else "ink", None)


def plug(picture, x, y, color):
    """A plug that points up; its lead leaves below. The tip is at (x, y)."""
    picture.stroke([(x, y), (x, y + 20)], 9)
    picture.box(x - 14, y + 16, 28, 44, 9, color)
    picture.stroke([(x, y + 60), (x, SIZE - 4)], 7)


def lens(picture, x, y, r, turn=45, glass='fill="{card}"'):
    """A magnifying glass to look through."""
    a, b = arc(x, y, r + 4, turn, turn, 1)[0], arc(x, y, r + 46, turn, turn, 1)[0]
    picture.blob([Part([a, b], 12)], "tone")
    for look in (f"{glass} stroke=\"none\"", 'fill="none" stroke="{ink}" stroke-width="13"',
                 'fill="none" stroke="{card}" stroke-width="3.5"'):
        picture.items.append(f'<circle cx="{x}" cy="{y}" r="{r}" {look}/>')


def machine(picture, share=0.0, on=False, y=14):
    """The whole front; `share` from 0 to 1 is where meter and knob stand."""
    picture.box(14, y, 212, 132, 16, "wet")
    meter(picture, 84, y + 64, 46, share)
    knob(picture, 172, y + 52, 32, share)
    rocker(picture, 80, y + 104, on, 84, 40)
    lamp(picture, 172, y + 106, on)


def side_tray(picture, x, y, width, height=34, water="tone"):
    """A tray from the side."""
    picture.shape([(x, y), (x + width, y), (x + width - 8, y + height), (x + 8, y + height)], water)
    picture.stroke([(x - 3, y), (x + width + 3, y)], 9)


def lattice(picture, corner, across, down, columns, rows, color="card"):
    """A grid: a slanted sheet from a corner along two sides."""
    def at(i, j):
        return (corner[0] + across[0] * i + down[0] * j, corner[1] + across[1] * i + down[1] * j)
    picture.shape([at(0, 0), at(1, 0), at(1, 1), at(0, 1)], color)
    for i in range(1, columns):
        picture.stroke([at(i / columns, 0), at(i / columns, 1)], 4)
    for j in range(1, rows):
        picture.stroke([at(0, j / rows), at(1, j / rows)], 4)


def bust(picture, x, y, arm=()):
    """Somebody from the front in a vest; no arms but what is given."""
    picture.blob([Part([(x, y), (x, y + 50)], 24)])
    picture.blob([Part([(x - 34, y + 58), (x + 34, y + 58), (x + 28, y + 128), (x - 28, y + 128)], 26, True), *arm])
    picture.shape([(x - 30, y + 47), (x - 15, y + 47), (x - 12, y + 66), (x + 12, y + 66), (x + 15, y + 47),
                   (x + 30, y + 47), (x + 31, y + 74), (x + 41, y + 92), (x + 41, y + 141), (x - 41, y + 141),
                   (x - 41, y + 92), (x - 31, y + 74)], "wet")
    picture.disc(x, y, 26)


def arms_up(picture, y):
    """The same with both arms raised, so that the armpits are open."""
    bust(picture, 120, y, [Part([(120 + side * 34, y + 60), (120 + side * 84, y + 34), (120 + side * 68, y - 14)], 25)
                           for side in (-1, 1)])


def arm_up(picture, x, y):
    """The same with one arm raised, its hand behind the head."""
    bust(picture, x, y, [Part([(x - 32, y + 62), (x - 84, y + 16), (x - 14, y - 4)], 27)])


def figure(picture, y, pads=None):
    """The same with the arms down, and pads of those two colours under the arms where given."""
    bust(picture, 120, y)
    for side, color in zip((-1, 1), pads or (None, None)):
        if color:
            pad(picture, 120 + side * 48, y + 102, side * -12, color, 1.15)
        picture.blob([Part([(120 + side * 52, y + 64), (120 + side * 84, y + 142)], 25)])


def pad(picture, x, y, turn=0, color="tone", size=1.0):
    """A sponge pad."""
    picture.blob(place([Part([(-10, -18), (10, -18), (10, 18), (-10, 18)], 14, True)], x, y, size, turn), color)


def number(picture, text, x, y, height=22, width=5, color="ink"):
    """Figures and letters as strokes, since type differs from phone to phone; returns where the next one starts."""
    glyphs = {
        "0": [[(5, 0), (10, 0), (10, 8), (10, 16), (5, 16), (0, 16), (0, 8), (0, 0), (5, 0)]],
        "2": [[(0, 4), (1, -1), (9, -1), (12, 5), (5, 11), (0, 16)], [(0, 16), (10, 16)]],
        "3": [[(0, 1), (3, 0), (12, -1), (10, 8), (3, 7.5)], [(3, 7.5), (11, 7), (13, 17), (3, 16.5), (0, 15)]],
        "4": [[(7, 16), (7, 0), (0, 11), (10, 11)]],
        "5": [[(9, 0), (2, 0), (1, 7)], [(1, 7), (5, 5), (11, 6), (11, 16), (4, 17), (0, 15)]],
        "h": [[(1, 0), (1, 16)], [(1, 10), (4, 6), (9, 7), (9, 12), (9, 16)]],
        "m": [[(0, 6), (0, 16)], [(0, 9), (2, 6), (6, 6), (6, 10), (6, 16)],
              [(6, 9), (8, 6), (12, 6), (12, 10), (12, 16)]],
        "l": [[(1, 0), (1, 16)]],
        " ": []}
    wide = {"m": 12, "l": 2, " ": 0}
    scale = height / 16
    for letter in text:
        for points in glyphs[letter]:
            picture.stroke([(x + px * scale, y + py * scale) for px, py in points], width, color,
                           smooth=letter not in "4l" and len(points) > 3)
        x += (wide.get(letter, 10) + 5) * scale
    return x
