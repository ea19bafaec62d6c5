#!/usr/bin/python3
"""The bill of materials of the built programs, in CycloneDX 1.5, from what the build really used.

Usage: sbom.py BUILD-FOLDER OUT.json PROGRAM-TARGET[=FILE]...
`PROGRAM-TARGET` is a name that ninja knows; its file is looked for in the build folder unless given.

linked       a shared library that a program names (readelf), by the Debian package that has it
compiled in  a static library or header outside this tree that an object was made from (ninja's own record)
loaded       a QML module that the pages import; no program names it (platform/linux/package/Package.cmake does)
shipped      files of others that this tree carries (platform/linux/package/copyright), by digest

The same source and packages give the same bytes: sorted, dated by SOURCE_DATE_EPOCH."""
import datetime
import fnmatch
import hashlib
import json
import os
import re
import struct
import subprocess
import sys
import uuid
from pathlib import Path

SOURCE = Path(__file__).resolve().parents[2]
SPACE = uuid.uuid5(uuid.NAMESPACE_DNS, 'firstdew.org')


def run(*command):
    return subprocess.run([str(c) for c in command], text=True, check=True, stdout=subprocess.PIPE).stdout


def packages_of(files):
    """{file: package}. Debian may know a file by its place before /usr was merged or by where a link leads."""
    names = {}
    for file in files:
        for name in {os.path.normpath(file), os.path.realpath(file)}:
            names[name] = file
            if name.startswith('/usr/lib'):
                names[name.removeprefix('/usr')] = file
    told = subprocess.run(['dpkg-query', '-S', *sorted(names)], text=True, capture_output=True, check=False).stdout
    owners = {}
    for line in told.splitlines():
        owner, _, name = line.partition(': ')
        if name in names and not line.startswith('diversion'):
            owners[names[name]] = owner.split(',')[0].split(':')[0]
    lost = sorted(set(files) - set(owners))
    if lost:
        sys.exit(f'sbom.py: no package has {lost[0]} ({len(lost)} such files): install it from Debian')
    return owners


def libraries_of(program):
    """The files of the shared libraries that the program itself names."""
    named = re.findall(r'\(NEEDED\).*\[(.+)\]', run('readelf', '--wide', '--dynamic', program))
    found = dict(re.findall(r'^\s*(\S+) => (/\S+)', run('ldd', program), re.M))
    return {found[n] for n in named if n in found}


def compiled_in(build, target):
    """The headers and static libraries outside source and build that the target was made from."""
    inputs = set(run('ninja', '-C', build, '--quiet', '-t', 'inputs', target).splitlines())
    files = {i for i in inputs if i.startswith('/') and i.endswith('.a')}
    wanted = False
    for line in run('ninja', '-C', build, '--quiet', '-t', 'deps').splitlines():
        if not line.startswith(' '):
            wanted = line.split(':')[0] in inputs
        elif wanted and line.strip().startswith('/'):
            files.add(line.strip())
    own = (str(SOURCE) + '/', str(build) + '/')
    return {f for f in files if not os.path.realpath(f).startswith(own) and not f.startswith(own)}


def loaded():
    listed = re.search(r'set\(at_run_time (.*?)\)', (SOURCE / 'platform/linux/package/Package.cmake').read_text(), re.S)
    return set(listed[1].split())


def font_version(file):
    """What the font's own name table says (name 5 of OpenType)."""
    data = file.read_bytes()
    for i in range(struct.unpack_from('>H', data, 4)[0]):
        tag, _, offset, _ = struct.unpack_from('>4sIII', data, 12 + 16 * i)
        if tag != b'name':
            continue
        _, count, strings = struct.unpack_from('>HHH', data, offset)
        for n in range(count):
            platform, _, _, name, length, at = struct.unpack_from('>6H', data, offset + 6 + 12 * n)
            if name == 5 and platform == 3:
                text = data[offset + strings + at:][:length].decode('utf-16-be')
                return re.search(r'\d+(\.\d+)+', text)[0]
    return None


def tracked():
    """Files of the tree, without those of a build."""
    return sorted(p for p in (SOURCE / 'assets').rglob('*') if p.is_file())


def shipped():
    """A component for each file of others, by the paragraphs of the copyright file."""
    for paragraph in (SOURCE / 'platform/linux/package/copyright').read_text().split('\n\n'):
        files = re.search(r'^Files: (.+)', paragraph, re.M)
        patterns = files[1].split() if files else []
        if not patterns or patterns[0] in ('*', 'assets/appstream/*'):
            continue
        licence = re.search(r'^License: (\S+)', paragraph, re.M)[1]
        for file in tracked():
            name = str(file.relative_to(SOURCE))
            if not any(fnmatch.fnmatch(name, pattern) for pattern in patterns):
                continue
            digest = hashlib.sha256(file.read_bytes()).hexdigest()
            version = (font_version(file) if file.suffix == '.ttf' else None) or digest[:12]
            yield {'type': 'file', 'bom-ref': name, 'name': name, 'version': version, 'scope': 'required',
                   'hashes': [{'alg': 'SHA-256', 'content': digest}], 'licenses': [{'license': {'id': licence}}],
                   'properties': [{'name': 'firstdew:use', 'value': 'shipped'}]}


def component(package, uses):
    form = '${Version}\t${Architecture}\t${source:Package}\t${source:Version}\n'
    version, architecture, source, source_version = run('dpkg-query', '-W', f'-f={form}', package).splitlines()[0].split('\t')
    release = dict(line.split('=', 1) for line in Path('/etc/os-release').read_text().splitlines() if '=' in line)
    distribution = f'{release["ID"]}-{release.get("VERSION_ID", "").strip(chr(34))}'
    address = f'pkg:deb/debian/{package}@{version.replace(":", "%3A").replace("+", "%2B")}?arch={architecture}&distro={distribution}'
    return {'type': 'library', 'bom-ref': package, 'name': package, 'version': version, 'scope': 'required', 'purl': address,
            'properties': [*({'name': 'firstdew:use', 'value': u} for u in sorted(uses)),
                           {'name': 'debian:source', 'value': f'{source} {source_version}'}]}


def bill(build, programs):
    uses = {p: {'loaded'} for p in loaded()}
    for target, file in programs.items():
        for use, files in (('linked', libraries_of(file)), ('compiled in', compiled_in(build, target))):
            for package in packages_of(files).values():
                uses.setdefault(package, set()).add(use)
    components = [component(p, uses[p]) for p in sorted(uses)] + list(shipped())
    version = re.search(r'project\(firstdew VERSION (\S+)', (SOURCE / 'CMakeLists.txt').read_text())[1]
    moment = datetime.datetime.fromtimestamp(int(os.environ.get('SOURCE_DATE_EPOCH', '0')), datetime.timezone.utc)
    own = {'type': 'application', 'bom-ref': 'firstdew', 'name': 'firstdew', 'version': version,
           'licenses': [{'license': {'id': 'Apache-2.0'}}]}
    serial = uuid.uuid5(SPACE, json.dumps([own, components], sort_keys=True))
    return {'bomFormat': 'CycloneDX', 'specVersion': '1.5', 'serialNumber': f'urn:uuid:{serial}', 'version': 1,
            'metadata': {'timestamp': moment.strftime('%Y-%m-%dT%H:%M:%SZ'), 'component': own}, 'components': components,
            'dependencies': [{'ref': 'firstdew', 'dependsOn': sorted(c['bom-ref'] for c in components)}]}


def main(folder, out, *targets):
    build = Path(folder).resolve()
    programs = {}
    for each in targets:
        target, _, file = each.partition('=')
        made = [Path(file)] if file else [p for p in build.rglob(target) if p.is_file() and os.access(p, os.X_OK)]
        if len(made) != 1:
            sys.exit(f'sbom.py: {len(made)} files called {target} in {build}: name it as {target}=FILE')
        programs[target] = made[0]
    text = json.dumps(bill(build, programs), indent=1, sort_keys=True) + '\n'
    Path(out).write_text(text, encoding='utf-8')
    print(f'{out}: {text.count("bom-ref") - 1} components')


if __name__ == '__main__':
    main(*sys.argv[1:])
