#!/usr/bin/python3
"""Validates FHIR bundles against R4 with fhir.resources (PyPI), which is independent of us. Needs that package: see .ci/fhir.

Its R4B models are used: R4B (4.3.0) leaves Patient, Observation and Procedure as R4 (4.0.1) has them.

Usage: fhir_r4_validate.py BUNDLE.json...
"""
import copy
import json
import sys

from fhir.resources.R4B.bundle import Bundle


def refuses(bundle):
    try:
        Bundle.parse_obj(bundle)
    except ValueError:
        return True
    return False


def breakages(bundle):
    """Bundles that are wrong on purpose: a validator that takes one of them proves nothing."""
    for kind, field in (('Observation', 'status'), ('Observation', 'code'), ('Procedure', 'status'), ('Procedure', 'subject')):
        bad = copy.deepcopy(bundle)
        for entry in bad['entry']:
            if entry['resource']['resourceType'] == kind:
                del entry['resource'][field]
        yield f'{kind} without {field}', bad
    bad = copy.deepcopy(bundle)
    bad['entry'][-1]['resource']['colour'] = 'red'
    yield 'an unknown element', bad


def main():
    failed = 0
    for name in sys.argv[1:]:
        with open(name, encoding='utf-8') as file:
            bundle = json.load(file)
        kinds = [e['resource']['resourceType'] for e in bundle['entry']]
        Bundle.parse_obj(bundle)
        print(f'{name}: valid, {len(kinds)} resources: {", ".join(f"{kinds.count(k)} {k}" for k in sorted(set(kinds)))}')
        for what, bad in breakages(bundle):
            if not refuses(bad):
                print(f'{name}: the validator does not mind {what}')
                failed += 1
    return failed


if __name__ == '__main__':
    sys.exit(1 if main() else 0)
