"""What each drawing shows. ALL names them by the words of protocol::Drawing."""
from shapes import (LINE, Part, arc, bust, figure, foot, hand, knob, lamp, lattice, lens, limb, machine, meter,
                    number, pad, place, plug, pointing, rocker, side_tray, tray)


# In position

def hands_in_trays(p):
    for x, left in ((63, True), (177, False)):
        tray(p, x - 53, 14, 106, 164)
        limb(p, hand, x + (-5 if left else 5), 152, 0.88, not left, 206, "wet")


def feet_in_trays(p):
    for x, left in ((63, True), (177, False)):
        tray(p, x - 51, 12, 102, 178)
        limb(p, foot, x, 162, 1.02, not left, 206, "wet")


def hand_and_foot(p, left):
    """Seen from above by whoever sits there: the treated side in trays, the other at rest beside them."""
    for right in (False, True):
        x = 180 if right else 60
        treated = right != left
        color = "wet" if treated else "card"
        if treated:
            tray(p, x - 50, 4, 100, 96)
            tray(p, x - 56, 120, 112, 90)
        limb(p, foot, x, 82, 0.58, right, 88, color)
        limb(p, hand, x + (4 if right else -4), 194, 0.62, right, 212, color)


def hand_foot_right(p):
    hand_and_foot(p, False)


def hand_foot_left(p):
    hand_and_foot(p, True)


def lead(p, points):
    p.stroke(points, LINE, "ink", smooth=True)


def pads_fitted(p):
    lead(p, [(62, 130), (48, 200), (70, 222), (100, 218)])
    lead(p, [(178, 130), (192, 200), (170, 222), (140, 218)])
    figure(p, 34, ("tone", "tone"))
    p.box(84, 194, 72, 40, 8, "tone")
    p.disc(138, 214, 8)
    p.shape(arc(108, 220, 13, 180, 360), "card")


def exchange_pads(p):
    bust(p, 120, 36, [Part([(120 + side * 34, 96), (120 + side * 82, 70), (120 + side * 66, 22)], 25)
                      for side in (-1, 1)])
    for x, color in ((30, "card"), (210, "ink")):
        pad(p, x, 196, 0, color, 1.25)
    p.arrow([(58, 192), (160, 120)], 13, 20)
    p.arrow([(182, 192), (80, 120)], 13, 20)


def pads_off(p):
    figure(p, 44)
    pad(p, 32, 54, -30)
    pad(p, 208, 54, 30)
    p.arrow([(72, 120), (48, 88)], 11, 16)
    p.arrow([(168, 120), (192, 88)], 11, 16)


def soak_pads(p):
    p.fill([(25, 150), (215, 150), (206, 190), (181, 223), (59, 223), (34, 190)], "tone")
    pad(p, 92, 188, 80, "wet", 1.15)
    pad(p, 156, 60, 20, "tone", 1.3)
    p.stroke([(18, 122), (34, 190), (60, 224), (180, 224), (206, 190), (222, 122)], smooth=False)
    p.stroke([(26, 150), (60, 144), (90, 154), (120, 146), (150, 154), (182, 144), (214, 150)], LINE, smooth=True)
    p.arrow([(156, 102), (156, 140)], 12, 17)
    p.drop(116, 70, 7)
    p.drop(196, 88, 7)


# The tray

def plate_under_grid(p):
    p.shape([(56, 166), (226, 166), (186, 210), (14, 210)], "card")
    p.shape([(14, 210), (186, 210), (180, 230), (24, 230)], "card")
    p.shape([(186, 210), (226, 166), (216, 190), (180, 230)], "card")
    p.fill([(66, 174), (208, 174), (179, 203), (34, 203)], "tone")
    p.shape([(64, 92), (214, 92), (176, 136), (26, 136)], "ink")
    lattice(p, (64, 14), (150, 0), (-38, 44), 6, 3)
    p.arrow([(120, 62), (120, 94)], 12, 17)
    p.arrow([(120, 138), (120, 178)], 12, 17)


def water_level(p):
    p.blob([Part([(16, 104), (56, 170)], 34), Part([(64, 184), (102, 188)], 30), Part([(100, 186), (164, 192)], 20),
            Part([(72, 194), (92, 208), (122, 213)], 15)])
    p.blob(place([Part([(-14, -8), (14, -8), (14, 8), (-14, 8)], 8, True)], 10, 92, 1, 58 - 90), "tone")
    p.items.append('<path d="M11 162L189 162L180 226L20 226Z" fill="{tone}" fill-opacity="0.45"/>')
    p.stroke([(11, 162), (189, 162)], 4)
    p.stroke([(2, 132), (20, 228), (180, 228), (198, 132)], 7)
    p.arrow([(231, 162), (202, 162)], 12, 19)
    p.shape([(96, 8), (186, 8), (176, 98), (106, 98)], "card")
    p.fill([(99, 36), (183, 36), (176.2, 97), (106, 97)], "tone")
    p.stroke([(98.5, 36), (183.5, 36)], 4)
    p.stroke([(186, 18), (212, 24), (208, 66), (181, 72)], 8)
    number(p, "350", 113, 46, 20, 4.5)
    number(p, "ml", 128, 76, 16, 4)
    p.arrow([(141, 110), (141, 152)], 12, 17)


def table(p, y):
    p.box(10, y, 220, 20, 6, "wet")
    p.stroke([(26, y + 10), (70, y + 10)], 3)
    p.stroke([(92, y + 10), (150, y + 10)], 3)
    p.stroke([(172, y + 10), (210, y + 10)], 3)


def trays_on_table(p):
    for x in (34, 190):
        p.box(x - 2, 138, 18, 92, 4, "wet")
    table(p, 122)
    for x in (28, 128):
        side_tray(p, x, 82, 84, 38)
        p.arrow([(x + 42, 24), (x + 42, 68)], 12, 17)


def trays_on_floor(p):
    p.fill([(0, 208), (240, 208), (240, 240), (0, 240)], "wet")
    for x in (70, 150, 230):
        p.stroke([(x, 208), (x - 32, 240)], 3)
    p.stroke([(0, 208), (240, 208)], 5)
    p.stroke([(16, 28), (16, 204)], 9)
    p.stroke([(70, 126), (70, 204)], 9)
    p.box(8, 116, 72, 14, 5, "tone")
    for x in (94, 168):
        side_tray(p, x, 172, 62, 33)
        p.arrow([(x + 31, 92), (x + 31, 158)], 14, 21)


# Machine and leads

def press(p, x, y, turn=0):
    p.blob(place(pointing(60), x, y, 0.95, turn))


def machine_off(p):
    machine(p)
    press(p, 100, 136, -8)


def switch_on(p):
    machine(p, on=True)
    press(p, 58, 136)


def at_zero(p):
    machine(p, on=True, y=96)
    lens(p, 98, 98, 86, 50, 'fill="{card}"')
    for mark in range(7):
        out, into = (arc(118, 120, r, 180 + mark * 30, 180 + mark * 30, 1)[0] for r in (52, 38))
        if mark:
            p.stroke([out, into], 6)
    p.disc(46, 120, 24, "now")
    number(p, "0", 40, 108, 24, 6)
    p.stroke([(118, 120), (78, 120)], 9)
    p.disc(118, 120, 9, "ink")


def gripping(p, x, y):
    """Finger and thumb around a knob."""
    p.blob([Part([(x + 34, y + 58), (x + 50, y + 24), (x + 38, y - 4)], 20),
            Part([(x + 4, y + 82), (x - 36, y + 48), (x - 38, y + 14)], 20),
            Part([(x, y + 74), (x + 34, y + 60), (x + 46, y + 84), (x + 40, y + 104), (x + 14, y + 104)], 22, True),
            Part([(x + 28, y + 100), (x + 34, y + 160)], 40)])
    p.blob([Part([(x + 8, y + 70), (x + 8, y + 50)], 17), Part([(x + 24, y + 70), (x + 25, y + 46)], 17)])
    p.fill([(x + 2, y + 68), (x + 32, y + 66), (x + 32, y + 82), (x + 2, y + 82)], "card")


def turn(p, up):
    share = 0.62 if up else 0.0
    p.box(10, 30, 220, 122, 16, "wet")
    meter(p, 66, 112, 46, share)
    knob(p, 164, 106, 34, share)
    gripping(p, 164, 104)
    around = arc(164, 106, 56, 200, 334, 24)
    p.slow_arrow(around if up else around[::-1], 12, 18)


def turn_up(p):
    turn(p, True)


def turn_down(p):
    turn(p, False)


def leads_in(p):
    p.box(14, 10, 212, 96, 16, "wet")
    meter(p, 70, 68, 44, 0)
    rocker(p, 166, 52, False, 80, 42)
    for x, color in ((84, "card"), (156, "ink")):
        p.disc(x, 106, 12, "ink")
        plug(p, x, 146, color)
        out = -38 if x < 120 else 38
        p.arrow([(x + out, 206), (x + out, 148)], 14, 20)


def swap_leads(p):
    p.box(26, 8, 188, 92, 16, "wet")
    meter(p, 120, 64, 44, 0)
    for x, color in ((58, "card"), (182, "ink")):
        p.disc(x, 100, 12, "ink")
        plug(p, x, 166, color)
    p.arrow([(72, 172), (164, 120)], 13, 20)
    p.arrow([(168, 172), (76, 120)], 13, 20)


def flip_switch(p):
    p.box(10, 14, 220, 132, 16, "wet")
    meter(p, 62, 66, 40, 0)
    p.box(112, 78, 110, 50, 8)
    p.box(167, 78, 55, 50, 8, "tone")
    for x, first in ((128, True), (182, False)):
        for dx, plus in ((0, first), (24, not first)):
            p.stroke([(x + dx - 7, 103), (x + dx + 7, 103)])
            if plus:
                p.stroke([(x + dx, 96), (x + dx, 110)])
    p.arrow(arc(167, 92, 44, 218, 322), 13, 19)
    p.blob(place(pointing(60), 194, 124, 0.95, 0, True))


def cells_in(p):
    p.box(30, 96, 180, 130, 16, "wet")
    p.box(46, 112, 148, 98, 8)
    for y, flip in ((124, False), (168, True)):
        cell(p, 58, y, flip) if y > 130 else None
    p.stroke([(62, 126), (178, 126)], 3)
    p.stroke([(62, 152), (178, 152)], 3)
    cell(p, 58, 20, False)
    p.arrow([(120, 66), (120, 128)], 12, 17)


def cell(p, x, y, flip):
    nub = x - 8 if flip else x + 116
    p.box(nub, y + 9, 14, 14, 3, "card")
    p.box(x, y, 120, 32, 6, "tone")
    end = x + 18 if flip else x + 102
    p.stroke([(end - 7, y + 16), (end + 7, y + 16)])
    p.stroke([(end, y + 9), (end, y + 23)])
    other = x + 102 if flip else x + 18
    p.stroke([(other - 7, y + 16), (other + 7, y + 16)])


def remote(p, x, y, width, height, color="wet"):
    p.box(x - width / 2, y, width, height, 12, color)
    s = width / 44
    for up, cy in ((True, y + height * .28), (False, y + height * .62)):
        t = -1 if up else 1
        p.shape([(x, cy + t * 10 * s), (x + 11 * s, cy - t * 7 * s), (x - 11 * s, cy - t * 7 * s)], "card")


def remote_in_reach(p):
    for x, left in ((44, True), (196, False)):
        tray(p, x - 38, 22, 76, 150)
        limb(p, hand, x + (-5 if left else 5), 148, 0.72, not left, 206, "wet")
    remote(p, 120, 98, 46, 104, "card")
    p.arrow([(120, 20), (120, 84)], 14, 21)


def remote_press(p, up):
    remote(p, 92, 16, 92, 200)
    y = 72 if up else 142
    p.blob(place(pointing(60), 104, y, 0.95, -64))
    meter(p, 192, 196 if up else 62, 42, 0.6 if up else 0)
    way = [(22, 200 - i * 6.6) for i in range(25)]
    p.slow_arrow(way if up else way[::-1])


def remote_up(p):
    remote_press(p, True)


def remote_down(p):
    remote_press(p, False)


# Skin

def jewellery_off(p):
    limb(p, hand, 84, 186, 1.08, True, 210)
    p.disc(73, 48, 16, "now")
    p.disc(73, 48, 8)
    p.arrow([(128, 74), (128, 22)], 13, 19)
    p.blob([Part([(194, 76), (194, 172)], 26)], "tone")
    p.disc(194, 124, 28)
    p.stroke([(194, 110), (194, 124), (204, 130)])
    p.arrow([(128, 200), (178, 200)], 13, 19)


def wound(p, x, y):
    p.blob([Part([(x - 13, y + 10), (x + 13, y - 10)], 24)], "tone")
    p.stroke([(x - 14, y + 9), (x - 3, y + 5), (x + 2, y - 4), (x + 14, y - 9)], 6, "danger")


def jelly_on_cut(p):
    limb(p, hand, 74, 196, 1.25, False, 210)
    wound(p, 72, 160)
    p.blob(place(pointing(60), 96, 150, 1.05, -62))
    p.box(162, 26, 68, 56, 10, "tone")
    p.box(158, 10, 76, 22, 6)


def look_at_hands(p):
    limb(p, hand, 96, 190, 1.3, False, 210)
    lens(p, 96, 128, 44, 30)


def look_at_feet(p):
    limb(p, foot, 96, 184, 1.32, False, 210)
    lens(p, 98, 112, 44, 30)


def look_at_armpits(p):
    bust(p, 146, 62, [Part([(114, 122), (62, 66), (136, 34)], 29)])
    p.disc(82, 146, 50, "tone", None)
    p.shape([(68, 102), (92, 98), (116, 112), (128, 142), (122, 170), (106, 188), (100, 176), (98, 162), (92, 148),
             (78, 136), (56, 112)], "card", True)
    for x, y in ((94, 122), (108, 120), (101, 138), (115, 138), (110, 156)):
        p.stroke([(x, y), (x + 3, y + 5), (x + 1, y + 11)], 4, smooth=True)
    lens(p, 82, 146, 50, 60, 'fill="none"')


def stick(p):
    p.disc(114, 54, 38)
    p.box(74, 58, 80, 126, 14, "tone")
    p.box(86, 94, 56, 46, 6)


def no_antiperspirant(p):
    stick(p)
    p.forbidden((40, 184), (186, 30))
    number(p, "24 h", 150, 202, 28)


def razor(p, x, y, turn):
    """The head is at the origin, the handle below it."""
    p.blob(place([Part([(0, 14), (-5, 46), (6, 104)], 19, smooth=True)], x, y, 1, turn), "tone")
    p.blob(place([Part([(-36, -8), (36, -8), (36, 10), (-36, 10)], 18, True)], x, y, 1, turn))
    for dy in (-8, 2, 12):
        p.stroke(place([Part([(-34, dy), (34, dy)], 4)], x, y, 1, turn)[0].points, 4)


def not_shaved(p):
    razor(p, 92, 48, -42)
    p.forbidden((52, 150), (196, 16))
    for i in range(3):
        day(p, 15 + i * 74, 178)


def day(p, x, y):
    """A day gone by: a leaf of a calendar, crossed off."""
    p.box(x, y, 62, 56, 7)
    p.box(x, y, 62, 16, 7, "ink")
    for ring in (18, 44):
        p.stroke([(x + ring, y - 8), (x + ring, y + 4)], 6)
    for side in (-1, 1):
        p.stroke([(x + 31 - side * 13, y + 25), (x + 31 + side * 13, y + 47)], 6)


# Beside you, afterwards

def helper_beside(p):
    p.blob([Part([(58, 92), (58, 180)], 48)])
    for x, hand_x in ((38, 34), (80, 88)):
        p.blob([Part([(x, 92), (hand_x, 178)], 19)])
    p.disc(58, 40, 25)
    p.blob([Part([(194, 88), (200, 190)], 52)], "tone")
    p.disc(192, 36, 25)
    for x in (8, 66):
        side_tray(p, x, 170, 50, 34)
    p.box(128, 152, 64, 54, 8, "wet")
    p.shape(arc(148, 188, 13, 180, 360), "card")
    p.disc(176, 182, 8, "card")
    table(p, 208)
    p.blob([Part([(196, 94), (214, 138), (182, 166)], 21)], "tone")
    p.blob([Part([(184, 164), (178, 170)], 19)])


def drying(p, kind):
    """Two limbs under a towel that rubs to and fro."""
    for x, left in ((62, True), (178, False)):
        limb(p, kind, x, 164, 1.05, not left, 208)
    p.shape([(16, 80), (224, 80), (230, 160), (216, 166), (120, 158), (24, 166), (10, 160)], "tone")
    p.arrow([(76, 104), (176, 104)], 12, 19)
    p.arrow([(164, 134), (64, 134)], 12, 19)
    p.drop(120, 36, 9)


def dry_hands(p):
    drying(p, hand)


def dry_feet(p):
    drying(p, foot)


def hands_out(p):
    for x, left in ((52, True), (188, False)):
        side_tray(p, x - 45, 186, 90, 44)
        p.blob(place(hand(60), x, 46, 0.78, 180, left))
        p.box(x - 25, -6, 50, 30, 6, "tone")
        p.drop(x, 166, 7)
    p.arrow([(120, 170), (120, 62)], 15, 23)


def kit_drying(p):
    p.box(8, 216, 224, 20, 8, "tone")
    p.blob(place([Part([(-20, -140), (20, -140), (20, 0), (-20, 0)], 20, True)], 58, 166, 1, -8))
    p.stroke(place([Part([(-18, -136), (18, -136), (18, -4), (-18, -4)], 4)], 58, 166, 1, -8)[0].points, 4, closed=True)
    p.blob(place([Part([(-18, -124), (18, -124), (18, 2), (-18, 2)], 8, True)], 126, 166, 1, -8), "ink")
    lattice(p, (155, 52), (46, -6), (18, 122), 4, 9)
    for x in (24, 96, 162, 226):
        p.stroke([(x, 138), (x, 180)], 7)
    p.stroke([(10, 182), (230, 182)], 9)
    for x in (58, 126, 194):
        p.drop(x, 204, 7)


ALL = {
    "jewellery-off": jewellery_off,
    "look-at-hands": look_at_hands,
    "look-at-feet": look_at_feet,
    "look-at-armpits": look_at_armpits,
    "jelly-on-cut": jelly_on_cut,
    "no-antiperspirant": no_antiperspirant,
    "not-shaved": not_shaved,
    "water-level": water_level,
    "trays-on-table": trays_on_table,
    "trays-on-floor": trays_on_floor,
    "plate-under-grid": plate_under_grid,
    "soak-pads": soak_pads,
    "cells-in": cells_in,
    "leads-in": leads_in,
    "helper-beside": helper_beside,
    "remote-in-reach": remote_in_reach,
    "machine-off": machine_off,
    "switch-on": switch_on,
    "at-zero": at_zero,
    "turn-up": turn_up,
    "turn-down": turn_down,
    "remote-up": remote_up,
    "remote-down": remote_down,
    "hands-in-trays": hands_in_trays,
    "feet-in-trays": feet_in_trays,
    "hand-foot-right": hand_foot_right,
    "hand-foot-left": hand_foot_left,
    "pads-fitted": pads_fitted,
    "hands-out": hands_out,
    "swap-leads": swap_leads,
    "flip-switch": flip_switch,
    "exchange-pads": exchange_pads,
    "pads-off": pads_off,
    "dry-hands": dry_hands,
    "dry-feet": dry_feet,
    "kit-drying": kit_drying,
}
