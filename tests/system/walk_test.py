#!/usr/bin/python3
"""Every flow of the app, walked over the accessibility tree: check-in, the call for a top-up, a bath in each of the
three ways of working, Diary, Plan, first start.

Usage: walk_test.py --app FILE --cli FILE [--all] [--pictures FOLDER] [--only WALK]
Each walk in six languages, on a large and a small screen, light and dark; without --all, a part that has each of them.
With --pictures, what was seen at each step stays in FOLDER."""
import pathlib
import subprocess
import sys
import time

import ui
import walks
from walk import TODAY

LARGE, SMALL = (390, 844), (320, 568)
LOOKS = [(language, *size, theme) for language in ('en', 'de', 'es', 'fr', 'pt_BR', 'ar') for size in (LARGE, SMALL) for theme in ('light', 'dark')]
ENGLISH, ARABIC = ('en', *LARGE, 'light'), ('ar', *SMALL, 'dark')
GERMAN, SPANISH = ('de', *SMALL, 'light'), ('es', *SMALL, 'dark')
FRENCH, PORTUGUESE = ('fr', *SMALL, 'light'), ('pt_BR', *SMALL, 'dark')
# Long walks once, and no look without a session in it; short ones in several languages, each language in two of them.
PART = {walks.Today: [ENGLISH, ARABIC, FRENCH, PORTUGUESE], walks.Dew: [ENGLISH, ARABIC, GERMAN], walks.Bath: [('en', *SMALL, 'dark')],
        walks.Helper: [ENGLISH], walks.Under: [('en', *SMALL, 'light')], walks.Diary: [ENGLISH, ARABIC, SPANISH], walks.Plan: [('en', *SMALL, 'light'), ('ar', *LARGE, 'dark')],
        walks.Practice: [ENGLISH, ARABIC], walks.First: [ENGLISH, ARABIC, FRENCH, PORTUGUESE, GERMAN, SPANISH]}


def main():
    programs = {'app': ui.argument('app'), 'cli': ui.argument('cli')}
    pictures, only = ui.argument('pictures'), ui.argument('only')
    everything = '--all' in sys.argv
    if not all(programs.values()) or set(sys.argv[1:]) - {'--all'}:
        sys.exit(__doc__)
    chosen = {w: LOOKS if everything else looks for w, looks in PART.items() if only in (None, w.__name__.lower())}
    with ui.Desktop(sound=True) as desktop:
        demo = desktop.folder / 'demo.db'
        subprocess.run([programs['cli'], 'demo', '--out', demo, '--today', TODAY], check=True, stdout=subprocess.DEVNULL)
        for look in LOOKS:
            for walk in [w for w, looks in chosen.items() if look in looks]:
                name = '-'.join(map(str, look))
                folder = pathlib.Path(pictures) / name if pictures else None
                if folder:
                    folder.mkdir(parents=True, exist_ok=True)
                began = time.monotonic()
                walk(desktop, programs, demo, look, folder).run()
                print(f'ok  {walk.__name__.lower():8} {name}  {time.monotonic() - began:.0f} s', flush=True)


main()
