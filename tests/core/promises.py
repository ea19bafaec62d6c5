#!/usr/bin/python3
"""Every sentence shown to people that states or forbids stands in core/protocol/PROMISES.md, held by a rule and a test of
HAZARDS.md or with a reason why it is none of the app's.

Usage: promises.py SOURCE-FOLDER | --self-test"""
import re
import sys
import xml.etree.ElementTree as ElementTree
from pathlib import Path

PROMISING = re.compile(
    r"\b(no|never|always|must|only|at most|at least|nothing|nobody|until|unless|not before|do not|don't|cannot|can't|may not)\b", re.I)
SENTENCE_END = re.compile(r'(?<=[.!?])\s+')
LEAST_REASON = 30  # characters


def promising(texts):
    """The sentences of these texts that state or forbid."""
    return {sentence for text in texts for sentence in SENTENCE_END.split(text.strip()) if PROMISING.search(sentence)}


def shown(source):
    file = source / 'qml/i18n/firstdew_de.ts'  # any language: they hold the same source texts
    return [m.findtext('source') for m in ElementTree.parse(file).getroot().iter('message')
            if m.find('translation').get('type') not in ('vanished', 'obsolete')]


def tests_of_hazards(record):
    """{'H1': {test, …}}"""
    hazards = {}
    for part in re.split(r'^## ', record, flags=re.M)[1:]:
        tests = re.search(r'^- Test: (.*)$', part, flags=re.M)
        hazards[part.split()[0]] = set(re.findall(r'"([^"]+)"', tests.group(1) if tests else ''))
    return hazards


def problems(register, sentences, hazards):
    listed = []
    for group in re.split(r'^### ', register, flags=re.M)[1:]:
        name = group.splitlines()[0]
        listed += re.findall(r'^- (.+)$', group, flags=re.M)
        held = re.search(r'^Held by: (H\d+), (.+)$', group, flags=re.M)
        reason = re.search(r'^Reason: (.+)$', group, flags=re.M)
        if bool(held) == bool(reason):
            yield f'{name}: needs either "Held by:" or "Reason:"'
        if reason and len(reason.group(1)) < LEAST_REASON:
            yield f'{name}: the reason is too short to be one'
        if held:
            for test in re.findall(r'"([^"]+)"', held.group(2)) or ['']:
                if test not in hazards.get(held.group(1), ()):
                    yield f'{name}: {held.group(1)} has no test "{test}"'
    yield from (f'listed twice: {s}' for s in sorted({s for s in listed if listed.count(s) > 1}))
    yield from (f'not shown any more: {s}' for s in sorted(set(listed) - sentences))
    yield from (f'promised without a rule: {s}' for s in sorted(sentences - set(listed)))


def self_test():
    sentences = promising(['Never above it. It is warm.', 'Hands out'])
    assert sentences == {'Never above it.'}, sentences
    hazards = {'H1': {'t'}}
    good = '### a\nHeld by: H1, "t"\n- Never above it.\n'
    assert not list(problems(good, sentences, hazards))
    assert not list(problems('### a\nReason: ' + 'r' * LEAST_REASON + '\n- Never above it.\n', sentences, hazards))
    for bad in (good.replace('"t"', '"u"'), good.replace('H1', 'H2'), good.replace('- Never', '- Always'), good + good.replace('### a', '### b'),
                good.replace('Held by: H1, "t"\n', ''), good.replace('Held by: H1, "t"', 'Reason: short'), '### a\nHeld by: H1, none\n- Never above it.\n'):
        assert list(problems(bad, sentences, hazards)), bad
    print('a promise without a rule is seen')


def main(argument):
    if argument == '--self-test':
        self_test()
        return 0
    source = Path(argument)
    register = (source / 'core/protocol/PROMISES.md').read_text(encoding='utf-8')
    hazards = tests_of_hazards((source / 'core/protocol/HAZARDS.md').read_text(encoding='utf-8'))
    sentences = promising(shown(source))
    wrong = list(problems(register, sentences, hazards))
    print('\n'.join(wrong) or f'{len(sentences)} sentences that state or forbid, each held or with its reason')
    return 1 if wrong else 0


sys.exit(main(sys.argv[1]))
