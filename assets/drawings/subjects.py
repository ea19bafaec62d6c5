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
    def at(x, width):
        return 240 - x - width if left else x
    tray(p, at(14, 96), 10, 96, 166)
    limb(p, foot, at(62, 0), 152, 0.95, not left, 206, "wet")
    tray(p, at(122, 106), 36, 106, 146)
    limb(p, hand, at(180, 0), 158, 0.84, not left, 206, "wet")


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
    figure(p, 34, ("tone", "ink"))
    p.arrow(arc(120, 166, 58, 214, 328), 12, 19)
    p.arrow(arc(120, 124, 86, 42, 138), 13, 20)


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
    p.blob([Part([(-20, 86), (60, 182)], 32), Part([(62, 188), (106, 194)], 22), Part([(104, 196), (158, 198)], 14)])
    p.items.append('<path d="M28 178L212 178L204 226L36 226Z" fill="{tone}" fill-opacity="0.5"/>')
    p.stroke([(28, 178), (212, 178)], 4)
    p.stroke([(18, 146), (36, 228), (204, 228), (222, 146)], 7)
    p.stroke([(52, 220), (188, 220)], 7)
    for x in range(56, 190, 22):
        p.stroke([(x, 208), (x + 8, 208)], 5)
    p.shape([(116, 12), (206, 12), (196, 108), (126, 108)], "card")
    p.fill([(119.5, 44), (202.5, 44), (196.2, 107), (126, 107)], "tone")
    p.stroke([(119, 44), (203, 44)], 4)
    p.stroke([(206, 24), (230, 30), (226, 76), (201, 82)], 8)
    number(p, "350", 133, 54, 20, 4.5)
    number(p, "ml", 148, 84, 16, 4)
    p.arrow([(161, 122), (161, 164)], 12, 17)


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
    p.stroke([(10, 226), (230, 226)], 7)
    p.stroke([(40, 34), (40, 222)], 9)
    p.stroke([(108, 150), (108, 222)], 9)
    p.blob([Part([(76, 74), (74, 122)], 46), Part([(76, 124), (158, 126), (170, 200)], 34)])
    p.blob([Part([(78, 66), (104, 112), (138, 108)], 20)])
    p.disc(82, 30, 22)
    p.box(34, 142, 84, 14, 5, "wet")
    side_tray(p, 134, 182, 92, 40)


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
    machine(p, on=True, y=76)
    lens(p, 88, 98, 76, 50, 'fill="{card}"')
    meter(p, 100, 112, 46, 0)
    number(p, "0", 30, 92, 20)


def gripping(p, x, y):
    """Finger and thumb around a knob."""
    p.blob([Part([(x + 34, y + 58), (x + 50, y + 24), (x + 38, y - 4)], 20),
            Part([(x + 4, y + 82), (x - 36, y + 48), (x - 38, y + 14)], 20),
            Part([(x, y + 74), (x + 34, y + 60), (x + 46, y + 84), (x + 40, y + 104), (x + 14, y + 104)], 22, True),
            Part([(x + 28, y + 100), (x + 34, y + 160)], 40)])
    p.blob([Part([(x + 8, y + 70), (x + 8, y + 50)], 17), Part([(x + 24, y + 70), (x + 25, y + 46)], 17)])
    p.fill([(x + 2, y + 68), (x + 32, y + 66), (x + 32, y + 82), (x + 2, y + 82)], "card")


def turn(p, up):
    share = 0.45 if up else 0.0
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
    for x, left in ((45, True), (195, False)):
        tray(p, x - 37, 22, 74, 150)
        limb(p, hand, x + (-4 if left else 4), 148, 0.7, not left, 206, "wet")
    remote(p, 120, 92, 44, 100, "now")
    for side in (-1, 1):
        p.arrow([(120 + side * 40, 52), (120 + side * 22, 62), (120 + side * 14, 86)], 9, 14)


def remote_press(p, up):
    remote(p, 92, 16, 92, 200)
    y = 72 if up else 142
    p.blob(place(pointing(60), 104, y, 0.95, -64))
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
    bust(p, 136, 66, [Part([(98, 126), (44, 78), (96, 24)], 27)])
    lens(p, 84, 148, 42, 60)


def stick(p):
    p.disc(114, 54, 38)
    p.box(74, 58, 80, 126, 14, "tone")
    p.box(86, 94, 56, 46, 6)


def no_antiperspirant(p):
    stick(p)
    p.forbidden((40, 184), (186, 30))
    number(p, "24 h", 150, 202, 28)


def not_shaved(p):
    p.blob([Part([(52, 196), (112, 92)], 22)], "tone")
    p.blob([Part([(66, 50), (162, 106)], 36)])
    p.stroke([(74, 46), (168, 101)], 4)
    p.stroke([(64, 58), (158, 113)], 4)
    p.forbidden((190, 30), (40, 176))
    for i in range(3):
        day(p, 112 + i * 42, 192)


def day(p, x, y):
    p.box(x, y, 34, 38, 5)
    p.box(x, y, 34, 11, 5, "ink")


# Beside you, afterwards

def helper_beside(p):
    p.blob([Part([(178, 84), (188, 160)], 58)], "tone")
    p.blob([Part([(64, 92), (64, 180)], 48)])
    for x, hand_x in ((46, 38), (82, 100)):
        p.blob([Part([(x, 92), (hand_x, 176)], 19)])
    p.blob([Part([(156, 84), (128, 112), (90, 88)], 21)], "tone")
    p.blob([Part([(94, 90), (88, 87)], 18)])
    p.disc(64, 42, 26)
    p.disc(178, 34, 26)
    table(p, 200)
    for x in (14, 76):
        side_tray(p, x, 162, 50, 34)
    p.box(152, 156, 72, 40, 8, "wet")
    p.disc(206, 176, 9, "card")
    p.shape(arc(176, 182, 14, 180, 360), "card")


def drying(p, kind):
    """Two limbs under a towel."""
    for x, left in ((62, True), (178, False)):
        limb(p, kind, x, 164, 1.05, not left, 208)
    p.shape([(16, 84), (224, 84), (230, 160), (216, 166), (120, 158), (24, 166), (10, 160)], "tone")
    for dy in (0, 14):
        p.stroke([(14, 140 - dy), (120, 134 - dy), (226, 140 - dy)], 4, "card")
    p.drop(120, 30, 9)


def dry_hands(p):
    drying(p, hand)


def dry_feet(p):
    drying(p, foot)


def hands_out(p):
    for x, left in ((63, True), (177, False)):
        tray(p, x - 53, 8, 106, 94)
        limb(p, hand, x, 198, 0.86, not left, 211)
    p.arrow([(120, 46), (120, 132)], 14, 21)


def kit_drying(p):
    for x in (14, 92, 152, 226):
        p.stroke([(x, 130), (x, 182)], 7)
    tray(p, 22, 30, 66, 148, "card")
    p.box(102, 46, 42, 132, 5, "ink")
    lattice(p, (162, 46), (56, 0), (0, 132), 4, 9)
    p.stroke([(10, 184), (230, 184)], 9)
    for x, y in ((54, 212), (122, 222), (190, 212)):
        p.drop(x, y, 9)


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
