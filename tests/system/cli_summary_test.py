#!/usr/bin/python3
"""The invented person's record and the prescriber's page from the command line, read back by independent programs.

Usage: cli_summary_test.py PATH-OF-FIRSTDEW-CLI
"""
import datetime
import json
import re
import subprocess
import unittest

from cli import CliTest

LANGUAGES = ('en', 'de', 'es', 'fr', 'pt_BR', 'ar')


def tool(*args):
    # A space between a number and its unit does not break; here it is one like any other.
    return subprocess.run([str(a) for a in args], check=True, capture_output=True, text=True).stdout.replace('\u00a0', ' ')


class Demo(CliTest):
    def test_the_invented_record_is_whole_and_the_same_each_time(self):
        facts = self.ok('demo', '--out', self.store, '--today', '2026-03-02')['facts']
        health = self.ok('verify', '--store', self.store)
        self.assertEqual((health['ok'], health['facts']), (True, facts))
        self.assertGreater(facts, 1000)
        again = str(self.folder / 'again.db')
        self.ok('demo', '--out', again, '--today', '2026-03-02')
        a, b = (self.folder / 'a.json', self.folder / 'b.json')
        self.ok('export', '--store', self.store, '--format', 'json', '--out', a)
        self.ok('export', '--store', again, '--format', 'json', '--out', b)
        self.assertEqual(a.read_bytes(), b.read_bytes())

    def test_it_ends_the_day_before_the_day_asked_for(self):
        self.ok('demo', '--out', self.store, '--today', '2030-01-15')
        csv = self.folder / 'csv'
        self.ok('export', '--store', self.store, '--format', 'json', '--out', csv)
        days = re.findall(r'"happened":\s*"(\d{4}-\d\d-\d\d)', csv.read_text(encoding='utf-8'))
        self.assertEqual(max(days), '2030-01-14')

    def test_what_is_there_is_never_written_over(self):
        self.ok('demo', '--out', self.store, '--today', '2026-03-02')
        self.refused(1, 'demo', '--out', self.store, saying='is a store or belongs to one; nothing was written')
        self.refused(2, 'demo', '--out', self.folder / 'x.db', '--today', '2026-02-30')
        self.refused(2, 'demo')


class Summary(CliTest):
    def setUp(self):
        super().setUp()
        self.ok('demo', '--out', self.store, '--today', '2026-03-02')
        self.pdf = self.folder / 'page.pdf'
        self.call = ('summary', '--store', self.store, '--from', '2025-12-01', '--to', '2026-03-01', '--out', self.pdf)

    def test_the_page_is_sound_and_can_be_read_out(self):
        self.assertEqual(self.ok(*self.call), {'out': str(self.pdf), 'pages': 2})
        self.assertIn('No syntax or stream encoding errors', tool('qpdf', '--check', self.pdf))
        text = tool('pdftotext', '-layout', self.pdf, '-')
        for wanted in ('Iontophoresis summary', 'Mira Santt', 'adult, 32 years', '1 December 2025 to 1 March 2026', 'It works', 'Hands', 'Feet', 'HDSS',
                       '16.5 mA · Direct current ·'):
            self.assertIn(wanted, text)
        self.assertLess(text.index('Hands'), text.index('Feet'))
        fonts = tool('pdffonts', self.pdf).splitlines()[2:]
        self.assertTrue(fonts)
        for line in fonts:
            self.assertRegex(line, r' yes +(yes|no) +(yes|no) +\d', 'not embedded')
        self.assertRegex(tool('pdfinfo', self.pdf), r'Title: +Iontophoresis summary')

    def test_whoever_copies_its_words_gets_all_of_them(self):
        # A typeface that puts another shape for a bracket beside a figure leaves it without a character.
        self.ok(*self.call)
        text = ' '.join(tool('pdftotext', self.pdf, '-').split())
        self.assertRegex(text, r'median \d+ days \(80%: \d+ to \d+\)')
        self.assertIn('2026;15:640', text)

    def test_other_treatments_stand_on_the_page(self):
        fresh = self.folder / 'fresh.db'
        self.ok('checkin', '--store', fresh, '--date', '2026-02-01', '--site', 'feet', '--level', 'wet')
        self.ok('other', '--store', fresh, '--what', 'tablets', '--name', 'Invented', '--from', '2026-01-05', '--until', '2026-02-07')
        self.ok('summary', '--store', fresh, '--from', '2026-02-01', '--to', '2026-02-28', '--out', self.pdf)
        self.assertIn('Tablets (Invented): 5 January 2026 to 7 February 2026', ' '.join(tool('pdftotext', self.pdf, '-').split()))

    def test_a_taught_session_stands_on_the_second_page(self):
        fresh = self.folder / 'fresh.db'
        self.ok('taught', '--store', fresh, '--site', 'feet', '--date', '2026-01-05', '--who', 'Nurse Invented', '--waveform', 'pulsed', '--level', '9',
                '--ticks', 'when-to-stop')
        self.ok('session', '--store', fresh, '--date', '2026-02-05', '--site', 'feet', '--waveform', 'pulsed')
        self.ok('summary', '--store', fresh, '--from', '2026-02-01', '--to', '2026-02-28', '--out', self.pdf)
        text = ' '.join(tool('pdftotext', '-f', '2', self.pdf, '-').split())
        self.assertRegex(text, 'Taught: .*5 January 2026, with .*Nurse Invented.*Pulsed current: 9 mA agreed')
        self.assertIn('Seen: Knows when to stop and whom to call.', text)

    def test_a_comparison_of_session_lengths_stands_on_the_second_page(self):
        fresh = self.folder / 'fresh.db'
        self.ok('checkin', '--store', fresh, '--date', '2026-02-01', '--site', 'feet', '--level', 'dry')
        file = self.folder / 'record.json'
        self.ok('export', '--store', fresh, '--format', 'json', '--out', file)
        record = json.loads(file.read_text(encoding='utf-8'))
        for number, on in ((1, True), (2, False)):
            record['facts'].append({'id': str(number) * 32, 'person': record['facts'][0]['person'], 'happened': f'2026-02-0{2 * number}T12:00',
                                    'recorded_ms': 1770000000000 + number, 'kind': 'comparison', 'is': {'site': 'feet', 'on': on, 'shorter': 0.5, 'seed': 7}})
            file.write_text(json.dumps(record), encoding='utf-8')
            self.ok('import', file, '--store', fresh)
            self.ok('summary', '--store', fresh, '--from', '2026-02-01', '--to', '2026-02-28', '--out', self.pdf, *(['--force'] if not on else []))
            text = ' '.join(tool('pdftotext', '-f', '2', self.pdf, '-').split())
            self.assertIn('Shorter session compared with the usual one since 2 February 2026' + (': pair 1 of 8; no answer yet' if on else '. You left it.'), text)
        self.assertIn('Whether the shorter session holds as long could not be told.', text)

    def test_every_circumstance_is_counted_under_its_own_name(self):
        words = re.split(', | or ', re.search(r'circumstances: (.*)', self.run_cli('checkin', '--help').stdout)[1])
        self.assertIn('exertion', words)
        fresh = self.folder / 'fresh.db'
        for day, word in enumerate(words, 1):
            self.ok('checkin', '--store', fresh, '--date', f'2026-02-{day:02}', '--site', 'feet', '--level', 'wet', '--with', word)
        self.ok('summary', '--store', fresh, '--from', '2026-02-01', '--to', '2026-02-28', '--out', self.pdf)
        text = ' '.join(tool('pdftotext', self.pdf, '-').split())
        self.assertIn(', '.join(f"{word.replace('-', ' ').capitalize()} 1" for word in words), text)

    def test_the_sessions_of_two_years_are_on_the_second_page(self):
        answer = self.ok('summary', '--store', self.store, '--from', '2024-03-02', '--to', '2026-03-01', '--out', self.pdf)
        self.assertEqual(answer['pages'], 2)
        self.assertRegex(tool('pdfinfo', self.pdf), r'Pages: +2')
        self.assertNotIn('mA·min', tool('pdftotext', '-layout', '-l', '1', self.pdf, '-'))
        second = tool('pdftotext', '-layout', '-f', '2', self.pdf, '-')
        self.assertRegex(second, r'20 Feb 2026 +Both feet +Direct current +18\.5 mA +17\.5 mA +501 mA·min +Strong')

    def test_every_language_is_named_in_the_document_which_is_fit_for_archives(self):
        for language in LANGUAGES:
            self.ok(*self.call, '--force', '--language', language)
            tree = json.loads(tool('qpdf', '--json', '--json-key=qpdf', self.pdf))['qpdf'][1]
            catalog = tree['obj:' + tree['trailer']['value']['/Root']]['value']
            self.assertTrue(catalog['/Lang'].removeprefix('u:').startswith(language.split('_')[0]), catalog['/Lang'])
            # PDF/A-1 (ISO 19005-1): an output intent, metadata that say so, no transparency, no encryption.
            self.assertIn('/OutputIntents', catalog)
            raw = self.pdf.read_bytes()
            self.assertRegex(raw, rb'pdfaid:part>1<|pdfaid:part="1"')
            self.assertNotIn('/Encrypt', tree['trailer']['value'])
            opacities = [v for o in tree.values() for k, v in self.dictionary(o).items() if k in ('/CA', '/ca')]
            self.assertTrue(all(v == 1 for v in opacities), opacities)

    @staticmethod
    def dictionary(thing):
        inside = thing.get('value', thing.get('stream', {}).get('dict', {}))
        return inside if isinstance(inside, dict) else {}

    def test_what_was_never_asked_is_not_said_to_be_clear(self):
        one = str(self.folder / 'one.db')
        self.ok('checkin', '--store', one, '--date', '2026-03-01', '--site', 'hands', '--level', 'dry')
        self.ok('summary', '--store', one, '--from', '2026-02-01', '--to', '2026-03-01', '--out', self.pdf)
        text = tool('pdftotext', '-layout', self.pdf, '-')
        self.assertIn('The health questions have not been answered yet.', text)
        self.assertNotIn('nothing answered with yes', text)

    def first_page(self, *more):
        self.ok(*self.call, '--force', *more)
        return ' '.join(tool('pdftotext', '-layout', '-l', '1', self.pdf, '-').split())

    def test_a_burn_and_a_reading_above_the_limit_come_before_everything_else(self):
        self.assertNotIn('Stop and look', self.first_page())
        fact = {'person': 'p1', 'recorded_ms': 1772400000000}
        burn = {**fact, 'id': 'e' * 32, 'happened': '2026-02-27T09:00', 'kind': 'side-effect', 'is': {'site': 'feet', 'skin': ['burn'], 'note': ''}}
        extra = self.folder / 'extra.json'
        self.ok('export', '--store', self.store, '--format', 'json', '--out', extra)
        document = json.loads(extra.read_text(encoding='utf-8'))
        burn['person'] = document['facts'][0]['person']
        extra.write_text(json.dumps({**document, 'facts': [burn]}), encoding='utf-8')
        self.ok('import', extra, '--store', self.store)
        self.ok('session', '--store', self.store, '--date', '2026-02-28', '--site', 'hands', '--waveform', 'direct', '--peak', '23', '--comfortable', '15')
        text = self.first_page()
        for wanted in ('Stop and look', 'Look at the skin (Feet): a burn was noted on 27 February 2026. No session there until you have.',
                       'The meter was above the limit in 1 session, on 28 February 2026.', '28 February: Both hands · 23 mA with a limit of 20 mA'):
            self.assertIn(wanted, text)
        self.assertLess(text.index('Stop and look'), text.index('Keeping dry'))

    def test_the_page_says_what_is_never_small_in_german(self):
        text = self.first_page('--language', 'de')
        self.assertIn('Haut 20. Februar: Füße · Trockene Haut', text)
        self.assertNotIn('trockenheit', text)

    def test_paper(self):
        self.ok(*self.call)
        self.assertRegex(tool('pdfinfo', self.pdf), r'Page size: +59[45]\.?\d* x 84[12]\.?\d* pts')
        self.ok(*self.call, '--force', '--paper', 'letter')
        self.assertRegex(tool('pdfinfo', self.pdf), r'Page size: +612 x 792 pts')

    def test_an_empty_period_is_a_page_too(self):
        self.ok('summary', '--store', self.store, '--from', '2020-01-01', '--to', '2020-01-31', '--out', self.pdf)
        self.assertIn('Iontophoresis summary', tool('pdftotext', '-layout', self.pdf, '-'))

    def test_wrong_input_is_refused_and_nothing_written(self):
        self.refused(2, 'summary', '--store', self.store, '--from', '2026-03-02', '--to', '2026-03-01', '--out', self.pdf, saying='turn them round')
        self.refused(2, *self.call, '--paper', 'napkin', saying='a4, letter')
        self.refused(2, 'summary', '--store', self.store, '--from', 'yesterday', '--to', '2026-03-01', '--out', self.pdf, saying='--from')
        self.refused(1, *self.call, '--person', 'nobody', saying='nobody')
        self.refused(1, 'summary', '--store', self.folder / 'none.db', '--from', '2025-12-01', '--to', '2026-03-01', '--out', self.pdf)
        self.refused(1, *self.call[:-1], self.folder / 'no/such/folder/page.pdf')


class Layout(CliTest):
    """Nothing is printed over anything else, or outside the margins, however much there is to say."""
    MARGINS = (45.3, 39.6, 45.3, 34)  # points: left, top, right, bottom
    SHORT = (4, 5, 4, 5, 4, 5, 4, 5)  # days; with them the notice of shorter dry spells is told

    def setUp(self):
        super().setUp()
        self.pdf = self.folder / 'page.pdf'
        whole = self.folder / 'whole.json'
        self.ok('demo', '--out', self.folder / 'demo.db', '--today', '2026-03-02')
        self.ok('export', '--store', self.folder / 'demo.db', '--format', 'json', '--out', whole)
        self.document = json.loads(whole.read_text(encoding='utf-8'))
        self.added = 0
        self.shorten()

    def add(self, kind, happened, **payload):
        facts = self.document['facts']
        at = datetime.datetime.fromisoformat(happened).replace(tzinfo=datetime.timezone.utc)
        self.added += 1
        facts.append({'id': f'{self.added:032x}', 'person': facts[0]['person'], 'kind': kind, 'happened': happened,
                      'recorded_ms': int(at.timestamp() * 1000), 'is': payload})

    def session(self, happened, site, **other):
        self.add('session', happened, **{'bath': '', 'comfort': 'comfortable', 'comfortable_ma': 14.0, 'completed': True, 'machine': 'Kitchen table set',
                                         'note': '', 'peak_ma': 15.0, 'site': site, 'skin': ['fine'], 'waveform': 'direct', **other})

    def shorten(self):
        """The latest dry spells of the hands are half as long as those before."""
        end = datetime.date(2026, 3, 1)
        day = end - datetime.timedelta(days=sum(self.SHORT))
        self.document['facts'] = [f for f in self.document['facts'] if not (
            f['kind'] in ('session', 'check-in') and f['is']['site'] == 'hands' and f['happened'] >= day.isoformat())]
        for length in self.SHORT:
            self.session(f'{day}T18:30', 'hands')
            for after in range(1, length + 1):
                date = day + datetime.timedelta(days=after)
                self.add('check-in', f'{date}T12:30', site='hands', level='clammy' if after == length else 'dry', **{'with': []})
            day += datetime.timedelta(days=length)
        self.session(f'{end}T18:30', 'hands')

    def record(self, name):
        store = self.folder / f'{name}.db'
        (self.folder / f'{name}.json').write_text(json.dumps(self.document), encoding='utf-8')
        self.ok('import', self.folder / f'{name}.json', '--store', store)
        hands = self.ok('outlook', '--store', store, '--today', '2026-03-02', '--site', 'hands')['sites'][0]
        self.assertIsNotNone(hands['shortening']['since'])
        return store

    def pages(self, store, language, paper):
        """Of each page its size and its words, with the heart of each word's box: letters stand inside it, and boxes as
        high as their typeface overlap from line to line."""
        self.ok('summary', '--store', store, '--from', '2025-12-01', '--to', '2026-03-02', '--out', self.pdf, '--force', '--language', language,
                '--paper', paper)
        out = []
        for size, page in re.findall(r'<page ([^>]*)>(.*?)</page>', tool('pdftotext', '-bbox', self.pdf, '-'), re.S):
            words = []
            for box, word in re.findall(r'<word ([^>]*)>(.*?)</word>', page):
                left, top, right, bottom = (float(v) for v in re.findall(r'"([\d.]+)"', box))
                inset = 0.3 * (bottom - top)
                words.append((top + inset, bottom - inset, left + 0.3, right - 0.3, word))
            out.append(([float(v) for v in re.findall(r'"([\d.]+)"', size)], sorted(words)))
        return out

    @staticmethod
    def collisions(words):
        out = []
        for i, (_, bottom, left, right, word) in enumerate(words):
            for top, _, other_left, other_right, other in words[i + 1:]:
                if top >= bottom:
                    break
                if other_left < right and left < other_right:
                    out.append((word, other))
        return out

    def outside(self, size, words):
        left, top, right, bottom = self.MARGINS
        return [w for t, b, x1, x2, w in words if x1 < left or t < top or x2 > size[0] - right or b > size[1] - bottom]

    def check(self, store, count, bars=('9+', '0+', '27–28')):
        for language in LANGUAGES:
            for paper in ('a4', 'letter'):
                with self.subTest(language=language, paper=paper):
                    pages = self.pages(store, language, paper)
                    self.assertEqual(len(pages), count)
                    for size, words in pages:
                        self.assertGreater(len(words), 100)
                        self.assertEqual(self.collisions(words), [])
                        self.assertEqual(self.outside(size, words), [])
                    # Ranges and open ends are written so in every script, be it read from the right.
                    words = {word for _, page in pages for *_, word in page}
                    self.assertLessEqual(set(bars), words)

    def third_site(self):
        self.add('site-use', '2026-01-30T18:00', site='armpits', in_use=True)
        for day in range(1, 9):
            self.add('check-in', f'2026-02-{day:02}T20:00', site='armpits', level='wet', **{'with': []})
        self.session('2026-02-03T08:30', 'armpits', waveform='pulsed', comfortable_ma=8.5, peak_ma=9.0)

    def sites_on(self, page):
        return tool('pdftotext', '-layout', '-f', page, '-l', page, self.pdf, '-').count('Last check-in')

    def test_two_sites_and_the_notice_of_shorter_dry_spells(self):
        store = self.record('notice')
        self.check(store, 2)
        self.pages(store, 'en', 'a4')
        lines = [' '.join(line.split()) for line in tool('pdftotext', '-layout', '-l', '1', self.pdf, '-').splitlines()]
        told, = (i for i, line in enumerate(lines) if 'since about 24 January' in line)
        self.assertTrue(lines[told - 1].startswith('Hands: It works'), lines[told - 1])
        self.assertTrue(lines[told + 1].startswith('Feet: It works'), lines[told + 1])

    def test_dates_and_ranges_keep_to_one_line(self):
        store = self.record('notice')
        whole = {'en': ('16 March 2024', '13 January', r'\(80%: \d+ to \d+\)'), 'de': ('16. März 2024', '13. Januar', r'\(80 %: \d+ bis \d+\)'),
                 'fr': ('16 mars 2024', '13 janvier', r'\(80 % : de \d+ à \d+\)'),
                 'pt_BR': ('16 de março de 2024', '13 de janeiro', r'\(80%: \d+ a \d+\)')}
        for language, parts in whole.items():
            with self.subTest(language=language):
                self.pages(store, language, 'a4')
                text = re.sub('[\u202f\u2007]', ' ', tool('pdftotext', '-raw', '-l', '1', self.pdf, '-'))
                first, other, usual = parts
                self.assertIn(other, text)
                self.assertEqual(len(re.findall(usual, text)), 2)  # a site each
                # Each of the two sites names the first day twice, as planned and with the score.
                self.assertEqual(text.count(first), 4)

    def test_a_third_site_goes_to_the_second_page_where_the_first_is_full(self):
        self.third_site()
        store = self.record('three')
        self.check(store, 2)
        for paper, sites in (('a4', [3, 0]), ('letter', [2, 1])):
            self.pages(store, 'en', paper)
            self.assertEqual([self.sites_on(page) for page in (1, 2)], sites)

    def test_what_a_long_list_of_questions_displaces_has_a_page_of_its_own(self):
        self.third_site()
        for day in range(1, 9):
            self.add('side-effect', f'2026-02-{day:02}T09:00', site='feet', skin=['redness', 'dryness', 'itch', 'pain'],
                     note='on the wrists, at the water line, ' + 'and so on' * 12)
            self.add('question', f'2026-02-{day:02}T10:00', text=f'Question {day}: ' + 'may I, and if so, when and how often? ' * 4)
        for day, site in enumerate(('hands', 'feet'), 1):
            self.session(f'2026-02-{day:02}T08:30', site, waveform='pulsed', skin=['redness', 'dryness', 'itch'], comfort='unpleasant', comfortable_ma=8.5,
                         peak_ma=9.0)
        store = self.record('much')
        self.check(store, 3, ('13+', '9+', '0+'))
        self.pages(store, 'en', 'letter')
        self.assertIn('Question 8', tool('pdftotext', self.pdf, '-'))
        self.assertEqual(sum(self.sites_on(page) for page in (1, 2, 3)), 3)


if __name__ == '__main__':
    unittest.main()
