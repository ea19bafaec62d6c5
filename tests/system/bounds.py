"""How much memory a file may take, and files of the shapes that take the most. core/exchange/FORMATS.md states the bound."""
import json
import re
import pathlib

SOURCE = pathlib.Path(__file__).resolve().parents[2]
FORMATS = SOURCE / 'core' / 'exchange' / 'FORMATS.md'
STATED = re.compile(r'at most (\d+) MB, (\d+) times the file and (\d+) bytes for each fact', re.S)
MB = 2**20


def most(size, facts):
    """Bytes that reading or writing a file of that size with so many facts may take, as the document says."""
    process, times, each = map(int, STATED.search(' '.join(FORMATS.read_text(encoding='utf-8').split())).groups())
    return process * MB + times * size + each * facts


def nameless_json(file, facts):
    """The shortest facts that there are, without ids: the most facts to a byte, each to be compared by its content."""
    with file.open('w', encoding='utf-8') as out:
        out.write('{"format":"firstdew-record","version":1,"facts":[\n')
        for n in range(facts):
            out.write(',\n' if n else '')
            out.write(f'{{"person":"q","kind":"question","happened":"2026-03-04T08:00","recorded_ms":{n},"is":{{"text":"{n}"}}}}')
        out.write('\n]}\n')
    return file


def named_json(file, facts, note=''):
    """Facts as an export writes them, with a text of their own."""
    with file.open('w', encoding='utf-8') as out:
        out.write('{"format":"firstdew-record","version":1,"facts":[\n')
        for n in range(facts):
            one = {'id': f'{n:032x}', 'person': 'ab' * 16, 'kind': 'question', 'happened': '2026-03-04T08:00', 'recorded_ms': 1772000000000 + n,
                   'is': {'text': f'{n} {note}'}}
            out.write((',\n' if n else '') + json.dumps(one, separators=(',', ':')))
        out.write('\n]}\n')
    return file


def narrow_table(file, facts):
    """The shortest rows that there are."""
    with file.open('w', encoding='utf-8') as out:
        out.write('kind,happened,text\n')
        for n in range(facts):
            out.write(f'question,2026-03-04T08:00,{n}\n')
    return file
