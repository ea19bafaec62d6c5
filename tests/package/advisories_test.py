#!/usr/bin/python3
"""A fix that Debian has published and a build did not have is told, by apt's own reading of a small archive.

Usage: advisories_test.py SOURCE-FOLDER
The tracker's excerpt has the form of Debian's own data (from memory); its faults are invented."""
import json
import os
import pathlib
import subprocess
import sys
import tempfile
import unittest

SOURCE = pathlib.Path(sys.argv.pop(1)).resolve()


def part(name, version, source, source_version):
    return {'type': 'library', 'name': name, 'version': version, 'purl': f'pkg:deb/debian/{name}@{version}?arch=amd64&distro=debian-12',
            'properties': [{'name': 'firstdew:use', 'value': 'linked'}, {'name': 'debian:source', 'value': f'{source} {source_version}'}]}


class Advisories(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = pathlib.Path(folder.name)
        archive = self.folder / 'archive'
        archive.mkdir()
        (archive / 'Packages').write_text(''.join(
            f'Package: {name}\nVersion: {version}\nArchitecture: amd64\nFilename: ./{name}.deb\nSize: 1\nSHA256: {"0" * 64}\n\n'
            for name, version in (('libdrop1', '1.2-3'), ('libdrop1', '1.2-3+deb12u1'), ('libleaf2', '2.0-1'))))
        state = self.folder / 'state'
        for each in ('lists/partial', 'cache/archives/partial', 'etc'):
            (state / each).mkdir(parents=True)
        (state / 'status').write_text('')
        (state / 'sources').write_text(f'deb [trusted=yes] file:{archive} ./\n')
        self.settings = state / 'apt.conf'
        self.settings.write_text(f'''Dir::Etc "{state}/etc"; Dir::Etc::sourcelist "{state}/sources"; Dir::Etc::sourceparts "-";
Dir::State "{state}"; Dir::State::status "{state}/status"; Dir::Cache "{state}/cache"; APT::Architecture "amd64";
APT::Architectures "amd64"; APT::Sandbox::User "";\n''')
        self.run_apt('apt-get', '-qq', 'update')

    def run_apt(self, *command):
        return subprocess.run([str(c) for c in command], text=True, capture_output=True, check=False,
                              env={**os.environ, 'APT_CONFIG': str(self.settings), 'LC_ALL': 'C.UTF-8'})

    def told(self, parts, tracker=None):
        bill = self.folder / 'bill.json'
        bill.write_text(json.dumps({'components': [{'type': 'file', 'name': 'a.ttf', 'properties': []}, *parts]}))
        more = []
        if tracker is not None:
            more = ['--tracker', self.folder / 'tracker.json']
            more[1].write_text(json.dumps(tracker))
        return self.run_apt(sys.executable, SOURCE / 'platform/linux/advisories.py', bill, *more)

    def test_what_is_up_to_date_passes(self):
        run = self.told([part('libdrop1', '1.2-3+deb12u1', 'drop', '1.2-3+deb12u1'), part('libleaf2', '2.0-1', 'leaf', '2.0-1')])
        self.assertEqual((run.returncode, run.stderr), (0, ''), run.stdout)
        self.assertEqual(run.stdout, '2 packages: 0 fixes not taken, 0 unknown to apt, faults without a fix not asked for\n')

    def test_a_published_fix_that_the_build_did_not_have_is_told(self):
        run = self.told([part('libdrop1', '1.2-3', 'drop', '1.2-3'), part('libleaf2', '2.0-1', 'leaf', '2.0-1')])
        self.assertEqual(run.returncode, 1, run.stderr)
        self.assertIn('libdrop1 1.2-3: 1.2-3+deb12u1 is published', run.stdout)
        self.assertNotIn('libleaf2', run.stdout)

    def test_a_package_that_apt_does_not_know_is_no_clean_answer(self):
        run = self.told([part('libgone3', '1', 'gone', '1')])
        self.assertEqual(run.returncode, 1)
        self.assertIn('libgone3 1: apt knows no such package', run.stdout)

    def test_the_tracker_names_faults_with_and_without_a_fix(self):
        def in_bookworm(**state):
            return {'releases': {'bookworm': {'urgency': 'low', **state}, 'trixie': {'status': 'open', 'urgency': 'high'}}}
        tracker = {'drop': {'CVE-1-1': in_bookworm(status='resolved', fixed_version='1.2-3+deb12u2'),
                            'CVE-1-2': in_bookworm(status='resolved', fixed_version='1.2-2'),
                            'CVE-1-3': in_bookworm(status='open'),
                            'CVE-1-4': in_bookworm(status='resolved', fixed_version='0')},
                   'another': {'CVE-1-5': in_bookworm(status='open')}}
        run = self.told([part('libdrop1', '1.2-3+deb12u1', 'drop', '1.2-3+deb12u1')], tracker)
        self.assertEqual(run.returncode, 1)
        self.assertEqual(run.stdout.splitlines(), [
            'drop 1.2-3+deb12u1: CVE-1-1, fixed in 1.2-3+deb12u2', 'drop 1.2-3+deb12u1: CVE-1-3, no fix yet (low)',
            '1 packages: 1 fixes not taken, 0 unknown to apt, 1 faults without a fix'])
        del tracker['drop']['CVE-1-1']
        self.assertEqual(self.told([part('libdrop1', '1.2-3+deb12u1', 'drop', '1.2-3+deb12u1')], tracker).returncode, 0)

    def test_what_is_no_bill_is_refused(self):
        for text in ('', '[]', '{"components": []}', '{"components": [{"purl": "pkg:deb/debian/a@1"}]}'):
            (self.folder / 'bill.json').write_text(text)
            run = self.run_apt(sys.executable, SOURCE / 'platform/linux/advisories.py', self.folder / 'bill.json')
            self.assertEqual(run.returncode, 2, text)
            self.assertIn('bill.json', run.stderr)


if __name__ == '__main__':
    unittest.main(verbosity=2)
