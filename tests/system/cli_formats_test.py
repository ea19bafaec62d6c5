#!/usr/bin/python3
"""The exports for other programs, read by programs that are not ours.

Usage: cli_formats_test.py PATH-OF-FIRSTDEW-CLI
"""
import datetime
import json
import re
import unittest

import icalendar

from cli import CliTest

PERSON = '00112233445566778899aabbccddeeff'
CODE = re.compile(r'[^\s]+(\s[^\s]+)*')
DATE_TIME = re.compile(r'\d{4}-\d\d-\d\d(T\d\d:\d\d:\d\dZ)?')


def fact(number, kind, happened, **fields):
    return {'id': f'f_{number:03}', 'person': PERSON, 'kind': kind, 'happened': happened, 'recorded_ms': number, 'is': fields}


def session(**fields):
    return {'waveform': 'pulsed', 'completed': True, 'skin': [], 'machine': '', 'bath': '', 'note': '', **fields}


RECORD = [
    fact(1, 'person', '2026-03-01T08:00', name='Invented Person', birth='1990-05-06', adult=''),
    fact(2, 'site-use', '2026-03-01T08:00', site='hands', in_use=True),
    fact(3, 'course', '2026-03-01T08:00', site='hands', plan='seven', days=[], start='2026-03-02', free=[]),
    fact(4, 'check-in', '2026-03-02T07:30', site='hands', level='wet', **{'with': ['heat']}),
    fact(5, 'bath-event', '2026-03-02T18:00', bath='b1', sequence=0, event='begin', wall_ms=1772474400000, monotonic_ms=5),
    fact(6, 'bath-event', '2026-03-02T18:25', bath='b1', sequence=1, event='stop', wall_ms=1772475900000, monotonic_ms=6),
    fact(7, 'session', '2026-03-02T18:30', site='hands', **session(peak_ma=12.5, comfortable_ma=12, charge_ma_min=230.25, bath='b1',
                                                                   comfort='strong', skin=['redness'], note='line, one;\nline two \\ "x"')),
    fact(8, 'session', '2026-03-04T18:30', site='hand-foot', **session(completed=False)),
    fact(9, 'hdss', '2026-03-04T19:00', site='hands', score=3),
    fact(10, 'weighing', '2026-03-04T19:00', site='hands', before_mg=100, after_mg=350, minutes=5),
    fact(11, 'side-effect', '2026-03-05T07:00', site='hands', skin=['itch'], note=''),
    {**fact(12, 'check-in', '2026-03-02T07:30', site='hands', level='clammy', **{'with': []}), 'corrects': 'f_004'},
]


class FormatTest(CliTest):
    def setUp(self):
        super().setUp()
        source = self.folder / 'record.json'
        source.write_text(json.dumps({'format': 'firstdew-record', 'version': 1, 'facts': RECORD}), encoding='utf-8')
        self.ok('import', source, '--store', self.store)

    def export(self, form, *more, name='out'):
        out = self.folder / name
        counts = self.ok('export', '--store', self.store, '--format', form, '--out', out, '--force', *more)
        return out.read_bytes().decode('utf-8'), counts


class Calendar(FormatTest):
    """RFC 5545, read by python3-icalendar."""

    def events(self, *more):
        raw, counts = self.export('ics', *more)
        self.assertTrue(raw.endswith('END:VCALENDAR\r\n'))
        self.assertEqual(raw.count('\n'), raw.count('\r\n'))
        self.assertLessEqual(max(len(line.encode('utf-8')) for line in raw.split('\r\n')), 75)
        calendar = icalendar.Calendar.from_ical(raw)
        self.assertEqual((calendar['VERSION'], calendar['METHOD']), ('2.0', 'PUBLISH'))
        events = {str(e['UID']): e for e in calendar.walk('VEVENT')}
        self.assertEqual(len(events), counts['events'])
        return events

    def test_the_course_stands_in_the_calendar_in_floating_time(self):
        events = self.events('--today', '2026-03-04')
        done = events[PERSON + '-hands-course-2026-03-02-1@firstdew']
        self.assertEqual(done['DTSTART'].dt, datetime.datetime(2026, 3, 2, 18, 0))
        self.assertIsNone(done['DTSTART'].dt.tzinfo)
        self.assertEqual(done['DTSTAMP'].dt.tzinfo.utcoffset(None), datetime.timedelta(0))
        self.assertEqual(done['STATUS'], 'CONFIRMED')
        self.assertEqual(list(done.walk('VALARM')), [])
        planned = [e for e in events.values() if list(e.walk('VALARM'))]
        self.assertGreaterEqual(len(planned), 4)
        for event in planned:
            self.assertGreaterEqual(event['DTSTART'].dt, datetime.datetime(2026, 3, 4))
            alarm, = event.walk('VALARM')
            self.assertEqual((alarm['ACTION'], alarm['TRIGGER'].dt), ('DISPLAY', datetime.timedelta(minutes=-30)))
            self.assertEqual(event['DURATION'].dt, datetime.timedelta(minutes=30))
            self.assertEqual(event['STATUS'], 'CONFIRMED')

    def test_what_moves_keeps_its_name_and_counts_up(self):
        before = self.events('--today', '2026-03-04')
        self.ok('checkin', '--store', self.store, '--date', '2026-03-05', '--site', 'hands', '--level', 'dry')
        after = self.events('--today', '2026-03-05')
        shared = before.keys() & after.keys()
        self.assertIn(PERSON + '-hands-course-2026-03-02-7@firstdew', shared)
        for uid in shared:
            self.assertGreater(after[uid]['SEQUENCE'], before[uid]['SEQUENCE'])

    def test_the_same_record_on_the_same_day_is_the_same_file(self):
        first, _ = self.export('ics', '--today', '2026-03-04')
        second, _ = self.export('ics', '--today', '2026-03-04', name='again')
        self.assertEqual(first, second)

    def test_bad_day(self):
        self.refused(2, 'export', '--store', self.store, '--format', 'ics', '--out', self.folder / 'x', '--today', 'now', saying='--today')


class Fhir(FormatTest):
    """The structure that HL7 FHIR R4 (4.0.1) asks of these resources; a full validation runs in tests/reference."""

    def bundle(self, *more):
        raw, counts = self.export('fhir', *more)
        bundle = json.loads(raw)
        self.assertEqual((bundle['resourceType'], bundle['type']), ('Bundle', 'collection'))
        self.assertRegex(bundle['timestamp'], r'\A\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ\Z')
        resources = [e['resource'] for e in bundle['entry']]
        self.assertEqual(len(resources), counts['resources'])
        for entry in bundle['entry']:
            resource = entry['resource']
            self.assertRegex(resource['id'], r'\A[A-Za-z0-9\-.]{1,64}\Z')
            self.assertTrue(entry['fullUrl'].endswith(f"/{resource['resourceType']}/{resource['id']}"))
        self.assertEqual(len({e['fullUrl'] for e in bundle['entry']}), len(resources))
        return resources

    def by_id(self, resources, identity):
        return next(r for r in resources if r['id'] == identity)

    def test_the_patient_has_no_name_unless_asked(self):
        patient = self.by_id(self.bundle(), PERSON)
        self.assertEqual(patient, {'resourceType': 'Patient', 'id': PERSON})
        raw, _ = self.export('fhir')
        self.assertNotIn('Invented', raw)
        self.assertNotIn('1990', raw)
        named = self.by_id(self.bundle('--names'), PERSON)
        self.assertEqual((named['name'], named['birthDate']), ([{'text': 'Invented Person'}], '1990-05-06'))

    def test_every_resource_has_what_r4_requires(self):
        resources = self.bundle()
        self.assertEqual(sorted(r['resourceType'] for r in resources), ['Observation'] * 4 + ['Patient'] + ['Procedure'] * 2 + ['QuestionnaireResponse'])
        for resource in resources:
            if resource['resourceType'] == 'Patient':
                continue
            self.assertEqual(resource['subject'], {'reference': 'Patient/' + PERSON})
            if resource['resourceType'] == 'QuestionnaireResponse':
                self.assertEqual((resource['status'], [i['linkId'] for i in resource['item']]), ('completed', ['site', 'severity']))
                continue
            self.assertTrue(resource['code']['text'])
            if resource['resourceType'] == 'Observation':
                self.assertIn(resource['status'], ('registered', 'preliminary', 'final', 'amended', 'corrected'))
                self.assertRegex(resource['effectiveDateTime'], DATE_TIME)
                self.assertEqual(len([k for k in resource if k.startswith('value')]) + ('dataAbsentReason' in resource) +
                                 ('component' in resource and resource['code']['coding'][0]['code'] == 'skin'), 1)
            else:
                self.assertIn(resource['status'], ('completed', 'stopped'))
                for end in resource['performedPeriod'].values():
                    self.assertRegex(end, DATE_TIME)
                self.assertLessEqual(resource['performedPeriod']['start'], resource['performedPeriod']['end'])
        self.every_extension_and_code(resources)

    def every_extension_and_code(self, node):
        if isinstance(node, list):
            for item in node:
                self.every_extension_and_code(item)
        elif isinstance(node, dict):
            self.assertTrue(node, 'R4 allows no empty object')
            if 'extension' in node:
                for extension in node['extension']:
                    self.assertRegex(extension['url'], r'\Ahttps://')
                    self.assertEqual(len([k for k in extension if k.startswith('value')]), 1)
            if 'coding' in node:
                for coding in node['coding']:
                    self.assertTrue(CODE.fullmatch(coding['code']))
            for value in node.values():
                self.assertNotIn(value, ('', [], None))
                self.every_extension_and_code(value)

    def test_a_session_carries_its_times_and_current(self):
        resources = self.bundle()
        done = self.by_id(resources, 'x.f.5f007')
        self.assertEqual(done['performedPeriod'], {'start': '2026-03-02T18:00:00Z', 'end': '2026-03-02T18:25:00Z'})
        values = {e['url'].rsplit('/', 1)[1]: next(v for k, v in e.items() if k != 'url') for e in done['extension']}
        self.assertEqual(values['peak-current'], {'value': 12.5, 'unit': 'mA', 'system': 'http://unitsofmeasure.org', 'code': 'mA'})
        self.assertEqual(values['charge']['value'], 230.25)
        self.assertEqual((values['waveform'], values['comfort'], values['local-time']), ('pulsed', 'strong', '18:30:00'))
        self.assertEqual(done['note'], [{'text': 'line, one;\nline two \\ "x"'}])
        self.assertEqual(done['complication'][0]['text'], 'redness')
        stopped = self.by_id(resources, 'x.f.5f008')
        self.assertEqual((stopped['status'], stopped['performedPeriod']['start']), ('stopped', '2026-03-04'))

    def test_a_correction_stands_in_place_of_its_original(self):
        resources = self.bundle()
        self.assertNotIn('x.f.5f004', [r['id'] for r in resources])
        corrected = self.by_id(resources, 'x.f.5f012')
        self.assertEqual((corrected['status'], corrected['valueCodeableConcept']['text']), ('corrected', 'clammy'))
        self.assertEqual(self.by_id(resources, 'x.f.5f009')['valueInteger'], 3)
        self.assertEqual(self.by_id(resources, 'x.f.5f010')['valueQuantity']['value'], 50)

    def test_an_empty_store_is_an_empty_bundle(self):
        self.ok('forget', '--store', self.store, '--person', PERSON, '--yes')
        raw, _ = self.export('fhir')
        self.assertNotIn('entry', json.loads(raw))


if __name__ == '__main__':
    unittest.main()
