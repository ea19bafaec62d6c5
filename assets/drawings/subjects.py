"""What each drawing shows. ALL names them by the words of protocol::Drawing."""
from shapes import (LINE, Part, arc, arm_up, arms_up, bust, curve, figure, foot, hand, knob, lamp, lattice, lens, limb,
                    machine, meter, number, pad, place, plug, pointing, rocker, side_tray, socket, tray)


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
    """Somebody seated, from above: hand and foot of one side in trays on leads, the others at rest."""
    def at(*points):
        return [(240 - x if left else x, y) for x, y in points]

    def edge(x, width):
        return 240 - x - width if left else x

    p.stroke(at((174, 30), (200, 30)))
    p.stroke(at((214, 52), (214, 98)))
    tray(p, edge(116, 64), 6, 64, 92)
    tray(p, edge(176, 60), 92, 60, 88)
    p.box(edge(192, 44), 8, 44, 46, 8, "tone")
    x, y = at((214, 34))[0]
    p.shape(arc(x, y, 11, 180, 360), "card")
    for knee, heel, treated in ((72, 150), (52, 80), False), ((152, 150), (148, 82), True):
        p.blob(place(foot(40), *at(heel)[0], 0.5, 0, treated != left), "wet" if treated else "card")
        p.blob([Part(at((120 + (heel[0] - 100) / 3, 196), knee, (heel[0], 118)), 30, smooth=True)], "tone")
    for points, wrist, angle, treated in (((84, 208), (34, 206), (46, 176)), (54, 158), 24, False), \
                                         (((156, 208), (206, 222), (206, 190)), (206, 160), 0, True):
        tilt = -angle if left else angle
        p.blob(place(hand(30), *at(wrist)[0], 0.5, tilt, treated != left), "wet" if treated else "card")
        p.blob([Part(at(*points), 24, smooth=True)], "tone")
    p.blob([Part(at((92, 214), (148, 214)), 42)], "tone")
    p.disc(120, 212, 25)


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
    arms_up(p, 58)
    for side, color in ((-1, "card"), (1, "ink")):
        pad(p, 120 + side * 74, 150, side * -8, color, 1.3)
    p.arrow(curve((72, 134), (120, 96), (170, 138)), 10, 18)
    p.arrow(curve((168, 162), (120, 206), (70, 166)), 10, 18)


def pads_off(p):
    arms_up(p, 54)
    for side in (-1, 1):
        pad(p, 120 + side * 88, 196, side * -20, "tone", 1.15)
        p.arrow([(120 + side * 46, 128), (120 + side * 76, 166)], 12, 18)


def soak_pads(p):
    p.fill([(25, 150), (215, 150), (206, 190), (181, 223), (59, 223), (34, 190)], "wet")
    pad(p, 84, 186, 76, "tone", 1.3)
    pad(p, 156, 48, 14, "tone", 1.3)
    p.stroke([(18, 122), (34, 190), (60, 224), (180, 224), (206, 190), (222, 122)], smooth=False)
    p.stroke([(26, 150), (60, 144), (90, 154), (120, 146), (150, 154), (182, 144), (214, 150)], LINE, smooth=True)
    p.arrow([(156, 94), (156, 186)], 14, 21)


# The tray

def plate_under_grid(p):
    p.shape([(56, 166), (226, 166), (186, 210), (14, 210)], "card")
    p.shape([(14, 210), (186, 210), (180, 230), (24, 230)], "card")
    p.shape([(186, 210), (226, 166), (216, 190), (180, 230)], "card")
    p.stroke([(62, 172), (212, 172), (181, 205), (28, 205)], 3, closed=True)
    p.shape([(64, 92), (214, 92), (176, 136), (26, 136)], "ink")
    lattice(p, (64, 14), (150, 0), (-38, 44), 6, 3)
    p.arrow([(120, 62), (120, 94)], 12, 17)
    p.arrow([(120, 138), (120, 178)], 12, 17)


def water_level(p):
    """The whole jug goes into the low tray; the level is marked across it."""
    p.fill([(8, 186), (196, 186), (186, 232), (18, 232)], "tone")
    p.stroke([(5, 162), (17, 233), (188, 233), (200, 162)], 7)
    p.stroke([(9, 186), (196, 186)], 5)
    number(p, "350 ml", 60, 199, 22, 4.5)
    p.arrow([(230, 186), (203, 186)], 12, 17)

    def at(*points):
        return place([Part(points, 0)], 132, 80, 1, -58)[0].points

    p.blob([Part(at((46, -30), (66, -22), (58, 20), (40, 24)), 8)])
    outline = at((-56, -46), (-44, -36), (-36, 50), (36, 50), (46, -46))
    p.shape(outline)
    p.fill(at((-53, -44), (-43, -34), (-39, 8), (42, -44)), "tone")
    p.stroke(at((-39, 8), (43, -44)), 4)
    p.stroke(outline, closed=True)
    x, y = outline[0]
    p.blob([Part(curve((x, y + 8), (x - 12, y + 10), (x - 12, 180)), 9)], "tone")


def table(p, y):
    p.box(10, y, 220, 20, 6, "wet")
    p.stroke([(26, y + 10), (70, y + 10)], 3)
    p.stroke([(92, y + 10), (150, y + 10)], 3)
    p.stroke([(172, y + 10), (210, y + 10)], 3)


def trays_on_table(p):
    for x in (34, 190):
        p.box(x - 2, 138, 18, 92, 4, "wet")
    table(p, 122)
    for x in (22, 144):
        side_tray(p, x, 82, 74, 38, "card")
        p.arrow([(x + 37, 18), (x + 37, 66)], 14, 20)


def trays_on_floor(p):
    p.fill([(0, 208), (240, 208), (240, 240), (0, 240)], "wet")
    for x in (70, 150, 230):
        p.stroke([(x, 208), (x - 32, 240)], 3)
    p.stroke([(0, 208), (240, 208)], 5)
    p.stroke([(12, 28), (12, 204)], 9)
    p.stroke([(58, 126), (58, 204)], 9)
    p.box(6, 116, 62, 14, 5, "tone")
    for x in (84, 176):
        side_tray(p, x, 172, 54, 33, "card")
        p.arrow([(x + 27, 92), (x + 27, 156)], 14, 21)


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
    p.box(14, 84, 212, 146, 16, "wet")
    rocker(p, 70, 201, True, 76, 36)
    lamp(p, 186, 190, True, 11)
    lens(p, 94, 88, 80, -28)
    for mark in range(2, 7):
        out, into = (arc(108, 108, r, 180 + mark * 30, 180 + mark * 30, 1)[0] for r in (52, 38))
        p.stroke([out, into], 6)
    p.disc(48, 106, 29, "now")
    p.disc(48, 106, 22, "card", None)
    number(p, "0", 40.5, 94, 24, 6)
    p.stroke([(108, 108), (82, 107)], 9)
    p.disc(108, 108, 9, "ink")


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
    p.box(4, 30, 232, 122, 16, "wet")
    meter(p, 62, 112, 40, share)
    knob(p, 172, 106, 34, share)
    gripping(p, 172, 104)
    around = arc(172, 106, 56, 200, 334, 24)
    p.slow_arrow(around if up else around[::-1], 12, 18)


def turn_up(p):
    turn(p, True)


def turn_down(p):
    turn(p, False)


def leads_in(p):
    p.box(14, 10, 212, 92, 16, "wet")
    meter(p, 78, 64, 40, 0)
    rocker(p, 170, 50, False, 80, 42)
    for x, color in ((72, "card"), (168, "ink")):
        socket(p, x, 100, color)
        plug(p, x, 164, color)
        p.arrow([(x, 156), (x, 119)], 13, 19)


def swap_leads(p):
    p.box(14, 6, 212, 138, 16, "wet")
    meter(p, 124, 58, 40, 0)
    for x, color in ((48, "card"), (192, "ink")):
        socket(p, x, 112, color)
        plug(p, x, 128, color)
    p.arrow(curve((64, 102), (120, 70), (174, 104)), 12, 19)
    p.arrow(curve((174, 166), (120, 232), (66, 168)), 12, 19)


def flip_switch(p):
    p.box(10, 14, 220, 132, 16, "wet")
    meter(p, 71, 70, 37, 0)
    p.box(116, 78, 104, 50, 8)
    p.box(168, 78, 52, 50, 8, "tone")
    for x, first in ((130, True), (182, False)):
        for dx, plus in ((0, first), (24, not first)):
            p.stroke([(x + dx - 7, 103), (x + dx + 7, 103)])
            if plus:
                p.stroke([(x + dx, 96), (x + dx, 110)])
    p.arrow(arc(167, 92, 44, 218, 322), 13, 19)
    p.blob(place(pointing(60), 194, 124, 0.95, 0, True))


def cells_in(p):
    p.box(22, 92, 196, 140, 16, "wet")
    p.box(38, 106, 164, 112, 8)
    cell(p, 58, 120, False, "card")
    cell(p, 58, 172, True)
    cell(p, 58, 10, False)
    p.arrow([(120, 56), (120, 112)], 14, 20)


def cell(p, x, y, flip, color="tone"):
    nub = x - 8 if flip else x + 116
    p.box(nub, y + 9, 14, 14, 3, "card")
    p.box(x, y, 120, 32, 6, color)
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
    p.box(4, 46, 232, 176, 12, "wet")
    for x, left in ((44, True), (196, False)):
        tray(p, x - 34, 56, 68, 126)
        limb(p, hand, x + (-4 if left else 4), 160, 0.66, not left, 206)
    for x, into in ((86, 98), (154, 142)):  # its place on the table
        for y, towards in ((92, 104), (206, 194)):
            p.stroke([(x, towards), (x, y), (into, y)], 4)
    remote(p, 120, 104, 42, 90, "card")
    p.arrow(curve((206, 20), (120, 6), (120, 84)), 13, 20)


def remote_press(p, up):
    remote(p, 84, 16, 84, 200)
    y = 72 if up else 142
    p.blob(place(pointing(60), 96, y, 0.95, -64))
    meter(p, 192, 190 if up else 62, 42, 0.6 if up else 0)
    way = [(18, 200 - i * 6.6) for i in range(25)]
    p.slow_arrow(way if up else way[::-1])


def remote_up(p):
    remote_press(p, True)


def remote_down(p):
    remote_press(p, False)


# Skin

def jewellery_off(p):
    limb(p, hand, 84, 186, 1.08, True, 210)
    p.disc(73, 52, 17, "now")
    p.disc(73, 52, 9)
    p.shape([(61, 16), (85, 16), (91, 24), (73, 40), (55, 24)], "tone")
    p.stroke([(57, 24), (89, 24)], 3)
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


def sore(p, x, y):
    """A cut and red spots: what to look for."""
    a, b = (x - 26, y + 12), (x + 26, y - 10)
    p.fill(curve(a, (x - 6, y - 12), b) + curve(b, (x + 6, y + 14), a), "danger")
    for dx, dy, r in ((-14, -20, 6), (20, 16, 7), (-4, 26, 5)):
        p.disc(x + dx, y + dy, r, "danger", None)


def look_at_hands(p):
    limb(p, hand, 96, 190, 1.3, False, 210)
    lens(p, 96, 138, 46, 30)
    sore(p, 96, 136)


def look_at_feet(p):
    limb(p, foot, 96, 184, 1.32, False, 210)
    lens(p, 98, 116, 46, 30)
    sore(p, 98, 114)


def look_at_armpits(p):
    bust(p, 146, 62, [Part([(114, 122), (62, 66), (136, 34)], 29)])
    p.disc(82, 146, 50, "tone", None)
    p.shape([(68, 102), (92, 98), (116, 112), (128, 142), (122, 170), (106, 188), (100, 176), (98, 162), (92, 148),
             (78, 136), (56, 112)], "card", True)
    for x, y, r in ((90, 116, 6), (112, 124, 7), (102, 140, 6), (117, 148, 5)):
        p.disc(x, y, r, "danger", None)
    lens(p, 82, 146, 50, 60, 'fill="none"')


def stick(p, x, y, turn):
    """The rounded top is at the origin, the case below it."""
    p.blob(place([Part([(-14, 16), (14, 16), (14, 34), (-14, 34)], 26, True)], x, y, 1, turn))
    p.blob(place([Part([(-24, 40), (24, 40), (24, 108), (-24, 108)], 12, True)], x, y, 1, turn), "tone")
    p.blob(place([Part([(-10, 64), (10, 64), (10, 84), (-10, 84)], 10, True)], x, y, 1, turn))


def no_antiperspirant(p):
    arm_up(p, 176, 42)
    stick(p, 108, 124, 42)
    p.forbidden((24, 122), (122, 214))
    number(p, "24 h", 146, 204, 28)


def razor(p, x, y, turn):
    """The head is at the origin, the handle below it."""
    p.blob(place([Part([(0, 14), (0, 34)], 10)], x, y, 1, turn))
    p.blob(place([Part([(0, 42), (0, 100)], 19)], x, y, 1, turn), "tone")
    for dy in (50, 62, 74):
        p.stroke(place([Part([(-5, dy), (5, dy)], 4)], x, y, 1, turn)[0].points, 4)
    p.blob(place([Part([(-30, -6), (30, -6), (30, 8), (-30, 8)], 14, True)], x, y, 1, turn))
    for dy in (-5, 5):
        p.stroke(place([Part([(-29, dy), (29, dy)], 5)], x, y, 1, turn)[0].points, 5)


def not_shaved(p):
    arm_up(p, 184, 30)
    razor(p, 104, 94, 58)
    p.forbidden((34, 72), (108, 156))
    for i in range(3):
        day(p, 15 + i * 74, 181)


def day(p, x, y):
    """A day gone by: a leaf of a calendar, crossed off."""
    p.box(x, y, 62, 56, 7)
    p.box(x, y, 62, 16, 7, "ink")
    for ring in (18, 44):
        p.stroke([(x + ring, y - 4), (x + ring, y + 4)], 6)
    for side in (-1, 1):
        p.stroke([(x + 31 - side * 13, y + 25), (x + 31 + side * 13, y + 47)], 6)


# Beside you, afterwards

def helper_beside(p):
    p.blob([Part([(56, 92), (56, 200)], 44)])
    for x, hand_x in ((36, 27), (76, 85)):
        p.blob([Part([(x, 92), (hand_x, 182)], 18)])
    p.disc(56, 40, 25)
    p.blob([Part([(204, 88), (210, 190)], 48)], "tone")
    p.disc(202, 36, 25)
    for x in (9, 67):
        side_tray(p, x, 174, 38, 32)
    p.box(120, 140, 66, 66, 8, "wet")
    p.shape(arc(138, 194, 12, 180, 360), "card")
    table(p, 208)
    p.disc(156, 164, 16, "tone")
    p.blob([Part([(206, 94), (222, 134), (196, 152)], 20)], "tone")
    p.blob([Part([(196, 152), (188, 157)], 17), Part([(186, 157), (161, 165)], 9)])


def drying(p, kind):
    """Two limbs under a towel that rubs to and fro."""
    for x, left in ((62, True), (178, False)):
        limb(p, kind, x, 164, 1.05, not left, 208)
    p.shape([(16, 80), (224, 80), (230, 160), (216, 166), (120, 158), (24, 166), (10, 160)], "tone")
    p.arrow([(76, 104), (176, 104)], 12, 19)
    p.arrow([(164, 134), (64, 134)], 12, 19)


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
