#!/usr/bin/python3
"""Compares a bill of materials (sbom.py) with what Debian has published about its components since.

Usage: advisories.py BILL.cdx.json [--tracker FILE.json]
Asks apt for the newest version of each package: run `apt-get update` first. A newer one is a fix that the build did not have.
--tracker    the data of Debian's security tracker, a JSON file that whoever asks has fetched: then faults are told by their
             number, those without a fix too.
Prints a line for each package or fault; the last line counts them. Exit 1 if a fix is published that the build did not have,
2 if the bill or the tracker cannot be read. A fault without a fix is told and does not count: there is nothing to take."""
import argparse
import json
import re
import subprocess
import sys


def older(version, than):
    return subprocess.run(['dpkg', '--compare-versions', version, 'lt', than], check=False).returncode == 0


def components(bill):
    """(package, version, source package, source version, release) of what comes from Debian."""
    for each in bill['components']:
        if each.get('purl', '').startswith('pkg:deb/'):
            source = next(p['value'] for p in each['properties'] if p['name'] == 'debian:source')
            release = re.search(r'distro=debian-(\d+)', each['purl'])
            yield (each['name'], each['version'], *source.split(' '), release[1] if release else '')


def newest(packages):
    """{package: (version, where it is)} by apt's own lists."""
    told = subprocess.run(['apt-cache', 'madison', *packages], text=True, check=True, stdout=subprocess.PIPE).stdout
    found = {}
    for line in told.splitlines():
        name, version, where = (part.strip() for part in line.split('|'))
        if not where.endswith(' Sources') and (name not in found or older(found[name][0], version)):
            found[name] = (version, where)
    return found


NAMES = {'11': 'bullseye', '12': 'bookworm', '13': 'trixie', '14': 'forky'}


def faults(tracker, source, version, release):
    """(number, fixed version or None, urgency) of the faults that this version of a source package still has."""
    for number, each in sorted(tracker.get(source, {}).items()):
        state = each.get('releases', {}).get(NAMES.get(release, release))
        if not state or state['status'] == 'undetermined':
            continue
        fixed = state.get('fixed_version')
        if state['status'] == 'open':
            yield number, None, state.get('urgency', '')
        elif fixed not in (None, '0') and older(version, fixed):
            yield number, fixed, state.get('urgency', '')


def read(file):
    try:
        with open(file, encoding='utf-8') as text:
            return json.load(text)
    except (OSError, ValueError) as error:
        print(f'advisories.py: {file}: {error}', file=sys.stderr)
        sys.exit(2)


def main():
    parser = argparse.ArgumentParser(usage='advisories.py BILL.cdx.json [--tracker FILE.json]')
    parser.add_argument('bill')
    parser.add_argument('--tracker')
    told = parser.parse_args()
    bill = read(told.bill)
    try:
        parts = list(components(bill))
    except (KeyError, TypeError, StopIteration, ValueError):
        parts = []
    if not parts:
        print(f'advisories.py: {told.bill}: not a bill of materials with packages of Debian', file=sys.stderr)
        sys.exit(2)
    available = newest([p[0] for p in parts])
    missing = unfixed = unknown = 0
    for name, version, *_ in parts:
        if name not in available:
            unknown += 1
            print(f'{name} {version}: apt knows no such package')
        elif older(version, available[name][0]):
            missing += 1
            print(f'{name} {version}: {available[name][0]} is published ({available[name][1]})')
    if told.tracker:
        tracker = read(told.tracker)
        for source, version, release in sorted({p[2:] for p in parts}):
            for number, fixed, urgency in faults(tracker, source, version, release):
                print(f'{source} {version}: {number}, ' + (f'fixed in {fixed}' if fixed else f'no fix yet ({urgency})'))
                missing, unfixed = (missing + 1, unfixed) if fixed else (missing, unfixed + 1)
    print(f'{len(parts)} packages: {missing} fixes not taken, {unknown} unknown to apt, '
          + (f'{unfixed} faults without a fix' if told.tracker else 'faults without a fix not asked for'))
    sys.exit(1 if missing or unknown else 0)


if __name__ == '__main__':
    main()
