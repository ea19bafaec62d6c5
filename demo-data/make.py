#!/usr/bin/python3
"""Makes record.json: the record of a person who does not exist.

Usage: make.py [--seed N] > record.json
Two years of a diary for hands and feet, kept on a phone: a first course of seven sessions, then some thirty top-ups.
Everything in it is invented; the ranges are those of the trade (top-ups from twice a week to once a month, a worse
time in summer, days without a check-in, tiredness of the diary in holidays).
"""
import argparse
import datetime
import json
import math
import random
import sys

END = datetime.date(2026, 3, 1)  # the last day that is lived
KEPT = datetime.date(2026, 2, 24)  # the last day of the diary: the day before a call; `demo --today` moves everything
DAYS = 730
LEVELS = ["dry", "clammy", "wet", "dripping"]


class Record:
    def __init__(self, rng):
        self.rng = rng
        self.facts = []

    def add(self, kind, date, minute, **fields):
        day = datetime.datetime.combine(date, datetime.time()) + datetime.timedelta(minutes=minute)
        recorded = int((day - datetime.datetime(1970, 1, 1)).total_seconds() * 1000)
        identity = "".join(self.rng.choice("0123456789abcdef") for _ in range(32))
        self.facts.append({"id": identity, "person": "p1", "happened": day.strftime("%Y-%m-%dT%H:%M"),
                           "recorded_ms": recorded, "kind": kind, "is": fields})
        return identity


def warmth(date):
    """0 in January, 1 in late July."""
    return 0.5 - 0.5 * math.cos(2 * math.pi * (date - datetime.date(date.year, 1, 20)).days / 365.25)


def heatwave(date):
    return datetime.date(date.year, 7, 18) <= date <= datetime.date(date.year, 7, 25)


class Site:
    """How one site truly behaves, which the diary only half shows."""

    def __init__(self, rng, name, median):
        self.rng = rng
        self.name = name
        self.median = median
        self.state = 3
        self.left = 0  # days of dryness left

    def treat(self, date, course_number=None):
        if course_number is not None and course_number < 4:
            self.state = max(0, 3 - course_number + (self.rng.random() < 0.3))
            self.left = 1
            return
        self.state = 0
        shrink = 1 - 0.28 * warmth(date)
        self.left = max(3, round(self.median * shrink * self.rng.weibullvariate(1, 4.2) / 0.916))

    def live(self, date):
        if self.left > 0:
            self.left -= 2 if heatwave(date) else 1
            if self.left > 0:
                return
            self.state = 1
        elif self.state < 3 and self.rng.random() < (0.5 if heatwave(date) else 0.22):
            self.state += 1

    def report(self, stirred):
        level = self.state
        if stirred and level < 3 and self.rng.random() < 0.3:
            level += 1
        elif not stirred and level == 1 and self.rng.random() < 0.1:
            level = 0
        return level


def make(seed):
    rng = random.Random(seed)
    record = Record(rng)
    start = END - datetime.timedelta(days=DAYS - 1)
    first = start + datetime.timedelta(days=9)
    while first.weekday() != 0:
        first += datetime.timedelta(days=1)
    course = [first + datetime.timedelta(days=d - 1) for d in (1, 2, 4, 7, 11, 15, 22)]  # the fifth a day late
    rows = ["pregnancy", "powered-implant", "metal-implant", "metal-iud", "heart-rhythm-or-epilepsy", "tumour-or-thrombosis",
            "loss-of-sensation", "under-five", "under-eighteen", "eczema-at-site", "large-wound", "fixed-braces"]

    record.add("person", start, 1130, name="Mira Santt", birth="1993-05-14", height_cm=168, weight_kg=63, adult="")
    for site in ("hands", "feet"):
        record.add("site-use", start, 1131, site=site, in_use=True)
    record.add("machine", start, 1133, name="Kitchen table set", direct=True, pulsed=True, swap="leads", remote=False, power="cells")
    record.add("reminder-settings", start, 1134, check_in="20:30", sessions="18:30", quiet_from="22:00", quiet_until="07:00", on=True, backup_monthly=False)

    hands, feet = Site(rng, "hands", 16), Site(rng, "feet", 23)
    for site in ("hands", "feet"):
        record.add("course", first, 1000, site=site, plan="seven", days=[], start=first.isoformat(), free=[])
    for site, score in (("hands", 4), ("feet", 3)):
        record.add("hdss", first, 1001, site=site, score=score)

    comfortable = {"hands": 7.0, "feet": 9.0}
    used = {"cells": 3}
    screened = None
    waiting = {}
    reviewed = first + datetime.timedelta(days=24)
    trip = (datetime.date(END.year - 1, 8, 9), datetime.date(END.year - 1, 8, 20))

    def session(date, site, number=None):
        nonlocal screened
        if screened is None or (date - screened).days >= 28:
            record.add("screening", date, 1090, full=True, asked=rows, yes=[])
            screened = date
        if used["cells"] >= 3:
            record.add("cells-changed", date, 1091, machine="Kitchen table set")
            used["cells"] = 0
        used["cells"] += 1
        name = site.name
        step = rng.choice([0, 0, 0.5, 0.5, 1]) if comfortable[name] < (15.5 if name == "hands" else 17) else rng.choice([-0.5, 0, 0, 0.5])
        comfortable[name] = min(19, comfortable[name] + step)
        peak = min(20, comfortable[name] + rng.choice([0.5, 1, 1.5]))
        minutes = 20 if name == "hands" else 30
        feels = rng.choices(["comfortable", "strong", "unpleasant"], [0.78, 0.19, 0.03])[0]
        skin = rng.choices([["fine"], ["redness"], ["dryness"]], [0.8, 0.14, 0.06])[0]
        record.add("session", date, 1110 + rng.randrange(60) + (70 if name == "feet" else 0), site=name, waveform="direct",
                   peak_ma=peak, comfortable_ma=comfortable[name], completed=True, comfort=feels, skin=skin,
                   charge_ma_min=round(minutes * (comfortable[name] - 0.8), 1), machine="Kitchen table set", bath="", note="")
        site.treat(date, number)
        if rng.random() < 0.06:
            record.add("side-effect", date + datetime.timedelta(days=1), 560, site=name, skin=[rng.choice(["redness", "itch", "dryness"])],
                       note=rng.choice(["", "gone by evening", "on the wrists, at the water line"]))

    date = start
    while date <= END:
        away = trip[0] <= date <= trip[1]
        heat = heatwave(date) or rng.random() < 0.22 * warmth(date) ** 2
        with_ = (["heat"] if heat else []) + (["exertion"] if rng.random() < 0.09 else []) + (["stress"] if rng.random() < 0.07 else [])
        skips = rng.random() < (0.55 if away else 0.13)
        for site in (hands, feet):
            if date in course:
                session(date, site, course.index(date))
            elif site.name in waiting and waiting[site.name] <= date and not away and date > reviewed:
                del waiting[site.name]
                session(date, site)
            else:
                site.live(date)
            if skips:
                continue
            level = site.report(bool(with_))
            record.add("check-in", date, 1225 + rng.randrange(25), site=site.name, level=LEVELS[level], **{"with": with_ if level > 0 or rng.random() < 0.3 else []})
            if level >= 1 and date > reviewed and site.name not in waiting and not (with_ and level == 1):
                waiting[site.name] = date + datetime.timedelta(days=rng.choice([1, 1, 2, 3]))
        if date == first + datetime.timedelta(days=10):
            record.add("hdss", date, 1240, site="hands", score=3)
        if date == first + datetime.timedelta(days=23):
            record.add("hdss", date, 1240, site="hands", score=2)
            record.add("hdss", date, 1241, site="feet", score=2)
        if date == reviewed:
            for name in ("hands", "feet"):
                record.add("review-done", date, 1200, site=name, keep_going=True)
        if date > reviewed and (date - reviewed).days % 31 == 0:
            for site in (hands, feet):
                record.add("hdss", date, 1243, site=site.name, score=1 if site.state == 0 else 2)
        date += datetime.timedelta(days=1)
    record.add("question", END - datetime.timedelta(days=6), 1260, text="May I treat a day before a wedding even if still dry?")
    return record


def main():
    parser = argparse.ArgumentParser(description="make the invented person's record")
    parser.add_argument("--seed", type=int, default=11)
    record = make(parser.parse_args().seed)
    record.facts = [f for f in record.facts if f["happened"] <= f"{KEPT}T24:00"]
    record.facts.sort(key=lambda f: f["recorded_ms"])
    sys.stdout.write('{"format": "firstdew-record", "version": 1, "facts": [\n')
    sys.stdout.write(",\n".join(json.dumps(f, ensure_ascii=False, separators=(",", ":")) for f in record.facts))
    sys.stdout.write("\n]}\n")


if __name__ == "__main__":
    main()
