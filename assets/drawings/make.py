#!/usr/bin/env python3
"""Draws the pictures of what hands do: assets/drawings/light and dark, one SVG for each word of protocol::Drawing.

Usage: python3 assets/drawings/make.py [--check]     --check writes nothing and fails where a file differs

The drawings are made for this project and have its licence. The colours are those of qml/theme/Theme.h.
"""
import pathlib
import re
import sys

import subjects
from shapes import SIZE, Picture

HERE = pathlib.Path(__file__).resolve().parent
THEME = HERE.parents[1] / "qml/theme/Theme.h"


def mixed(a, b, share):
    """`share` of colour a in colour b."""
    pairs = zip(bytes.fromhex(a[1:]), bytes.fromhex(b[1:]))
    return "#" + bytes(round(x * share + y * (1 - share)) for x, y in pairs).hex()


def themes():
    """The colours of both themes by role; `tone` and `wet` are washes of the other theme's main."""
    tones = re.findall(r"QColor (\w+)\(\) const \{ return (?:m_contrast \? [^:]* : )?tone\(0x(\w{6}), 0x(\w{6})\)", THEME.read_text("utf-8"))
    for number, name in enumerate(("light", "dark")):
        colors = {role: "#" + values[number] for role, *values in tones}
        other = {role: "#" + values[1 - number] for role, *values in tones}
        wash = mixed(other["main"], colors["card"], 0.7)
        yield name, {**{role: colors[role] for role in ("ink", "card", "now", "danger")}, "tone": wash,
                     "wet": mixed(wash, colors["card"], 0.35)}


def svg(picture, colors):
    body = "\n".join(picture.items).format(**colors)
    return (f'<svg xmlns="http://www.w3.org/2000/svg" version="1.2" baseProfile="tiny" width="{SIZE}" height="{SIZE}" '
            f'viewBox="0 0 {SIZE} {SIZE}">\n<g stroke-linecap="round" stroke-linejoin="round">\n{body}\n</g>\n</svg>\n')


def main():
    files = {}
    for word, draw in subjects.ALL.items():
        picture = Picture()
        draw(picture)
        for theme, colors in themes():
            files[HERE / theme / f"{word}.svg"] = svg(picture, colors)
    there = {file for theme in ("light", "dark") for file in (HERE / theme).glob("*.svg")}
    if "--check" in sys.argv:
        wrong = [f for f in files if f not in there or f.read_text("utf-8") != files[f]] + list(there - files.keys())
        for file in wrong:
            print(f"{file.relative_to(HERE)}: not as make.py draws it; run make.py", file=sys.stderr)
        return 1 if wrong else 0
    for file in there - files.keys():
        file.unlink()
    for file, text in files.items():
        file.parent.mkdir(exist_ok=True)
        file.write_text(text, "utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
