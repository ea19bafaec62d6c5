"""Diaries of invented people whose hands are treated, and what `outlook` says of them. For the tests beside this file."""
import datetime
import json
import pathlib
import subprocess
import tempfile


class Diary:
    """Facts in the order in which they are added; the first makes the person."""

    def __init__(self, first):
        self.facts = []
        self.add(first, datetime.time(7), 'person', name='Invented', birth='1980-05-14', adult='')

    def add(self, day, at, kind, **body):
        when = datetime.datetime.combine(day, at)
        self.facts.append({'id': f'{len(self.facts):032x}', 'person': 'a' * 32, 'happened': when.strftime('%Y-%m-%dT%H:%M'),
                           'recorded_ms': int(when.replace(tzinfo=datetime.timezone.utc).timestamp() * 1000), 'kind': kind, 'is': body})

    def session(self, day, hour=20):
        self.add(day, datetime.time(hour), 'session', site='hands', waveform='direct', completed=True, skin=[], machine='', bath='', note='')

    def check_in(self, day, level, circumstances=(), hour=12):
        self.add(day, datetime.time(hour), 'check-in', site='hands', level=level, **{'with': list(circumstances)})

    def outlook(self, cli, today):
        """What is said of the hands on that day, through a store of its own."""
        with tempfile.TemporaryDirectory() as folder:
            record, store = pathlib.Path(folder) / 'record.json', pathlib.Path(folder) / 'store.db'
            record.write_text(json.dumps({'format': 'firstdew-record', 'version': 1, 'facts': self.facts}), encoding='utf-8')
            subprocess.run([cli, 'import', record, '--store', store], capture_output=True, check=True)
            done = subprocess.run([cli, '--json', 'outlook', '--store', store, '--today', str(today)], capture_output=True, text=True, check=True)
        hands, = json.loads(done.stdout)['sites']
        return hands
