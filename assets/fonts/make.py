#!/usr/bin/python3
"""Makes the typefaces of this folder from Debian's, so that anybody can check where they come from.

Usage: make.py FOLDER     the folder with Inter-Regular.otf and Inter-SemiBold.otf, as the package fonts-inter has it in
                          /usr/share/fonts/opentype/inter; needs fontTools (package python3-fonttools)
       make.py --check FOLDER     makes them elsewhere, and says how they differ from those of this folder

Debian's Inter has cubic outlines (CFF). Quadratic ones (TrueType) are read several times as fast. Symbols, keys and
alternative shapes that the app never shows are left out, and the glyphs stand in the order of their characters, which
makes the character table small. The feature `calt` is left out too: it swaps brackets and colons beside figures for
shapes that have no character, so a PDF could not be searched for them.

The Noto Sans Arabic files are those of the package fonts-noto-core, unchanged."""
import pathlib
import sys
import tempfile

from fontTools import subset
from fontTools.pens.cu2quPen import Cu2QuPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont, newTable
from fontTools.ttLib.reorderGlyphs import reorderGlyphs

HERE = pathlib.Path(__file__).resolve().parent
WEIGHTS = ('Regular', 'SemiBold')
TOLERANCE = 1  # largest distance of the new outline from the old, in units of 2816 to the em
FEATURES = ['ccmp', 'locl', 'kern', 'mark']
# Letters, figures and signs of text; of the symbols only those that stand in running text.
KEPT = [(0x20, 0x1FFF), (0x2000, 0x20DA), (0x2100, 0x2131), (0x2150, 0x2199), (0x2200, 0x22FF), (0x25CF, 0x25CF), (0x2713, 0x2713),
        (0x2C60, 0x2DDF), (0x2E00, 0xDFFF), (0xFE20, 0xFEFF)]


def reduced(source):
    """The typeface with the characters and features of the app alone."""
    options = subset.Options()
    options.layout_features = FEATURES
    options.name_IDs = list(range(256))
    options.notdef_outline = True
    options.glyph_names = True  # until the glyphs are in order
    font = subset.load_font(str(source), options)
    subsetter = subset.Subsetter(options)
    subsetter.populate(unicodes=[c for c in font.getBestCmap() if any(first <= c <= last for first, last in KEPT)])
    subsetter.subset(font)
    return font


def in_order_of_characters(font):
    first = {}
    for character, glyph in sorted(font.getBestCmap().items()):
        first.setdefault(glyph, character)
    order = font.getGlyphOrder()
    rest = [glyph for glyph in order if glyph not in first and glyph != '.notdef']
    reorderGlyphs(font, ['.notdef', *sorted(first, key=first.get), *rest])


def make_quadratic(font):
    glyphs = font.getGlyphSet()
    outlines = {}
    for name in font.getGlyphOrder():
        pen = TTGlyphPen(glyphs)
        glyphs[name].draw(Cu2QuPen(pen, TOLERANCE, reverse_direction=True))
        outlines[name] = pen.glyph()
    font['loca'] = newTable('loca')
    font['glyf'] = glyf = newTable('glyf')
    glyf.glyphOrder = font.getGlyphOrder()
    glyf.glyphs = outlines
    for name, glyph in outlines.items():
        glyph.recalcBounds(glyf)
        font['hmtx'][name] = font['hmtx'][name][0], getattr(glyph, 'xMin', 0)
    del font['CFF ']
    font['maxp'] = maxp = newTable('maxp')
    maxp.tableVersion = 0x00010000
    maxp.numGlyphs = len(outlines)
    for field in ('maxTwilightPoints', 'maxStorage', 'maxFunctionDefs', 'maxInstructionDefs', 'maxStackElements',
                  'maxSizeOfInstructions', 'maxComponentElements'):
        setattr(maxp, field, 0)
    maxp.maxZones = 1
    font['post'].formatType = 3.0  # without names of glyphs
    font.sfntVersion = '\x00\x01\x00\x00'


def make(source, target):
    font = reduced(source)
    in_order_of_characters(font)
    make_quadratic(font)
    font.recalcTimestamp = False
    font.recalcBBoxes = True
    font.save(target)


def differences(made, shipped):
    """What differs between two typefaces, one line each."""
    a, b = TTFont(made), TTFont(shipped)
    if a.getBestCmap().keys() != b.getBestCmap().keys():
        yield f'characters: {len(a.getBestCmap())} made, {len(b.getBestCmap())} shipped'
        return
    if [a.getGlyphID(g) for g in a.getBestCmap().values()] != [b.getGlyphID(g) for g in b.getBestCmap().values()]:
        yield 'order of the glyphs'
    shapes = [c for c, g in a.getBestCmap().items() if a['glyf'][g] != b['glyf'][b.getBestCmap()[c]]]
    if shapes:
        yield f'shapes of {len(shapes)} characters, the first U+{shapes[0]:04X}'
    for table in sorted(set(a.keys()) | set(b.keys())):
        if table == 'GlyphOrder':
            continue
        if table not in a or table not in b:
            yield f'table {table} is only in one'
        elif a.getTableData(table) != b.getTableData(table):
            yield f'table {table}: {len(a.getTableData(table))} bytes made, {len(b.getTableData(table))} shipped'


def main():
    arguments = [a for a in sys.argv[1:] if a != '--check']
    if len(arguments) != 1:
        sys.exit(__doc__)
    check = '--check' in sys.argv
    with tempfile.TemporaryDirectory() as scratch:
        for weight in WEIGHTS:
            name = f'Inter-{weight}.ttf'
            target = (pathlib.Path(scratch) if check else HERE) / name
            make(pathlib.Path(arguments[0]) / f'Inter-{weight}.otf', target)
            if check:
                print(name, *(list(differences(target, HERE / name)) or ['the same']), sep='\n  ')


if __name__ == '__main__':
    main()
