#!/usr/bin/python3
"""Writes the tables of core/outlook/COSTS.md anew, by rehearsal.

Usage: costs.py PATH-OF-FIRSTDEW-CLI [PEOPLE]

Build the program with -DCMAKE_BUILD_TYPE=Release first. Each table stands between two comments that name it.
"""
import functools
import json
import pathlib
import re
import subprocess
import sys
import tempfile

CLI = sys.argv[1]
PEOPLE = sys.argv[2] if len(sys.argv) > 2 else '400'
SEED = '2026'
DOCUMENT = pathlib.Path(__file__).resolve().parents[2] / 'core/outlook/COSTS.md'
COSTS = ('0.5', '1', '2', '5')
POLICIES = ('early', 'first-clammy', 'weekly-or-clammy', 'mean-or-clammy', 'weekly', 'late', 'knowing', 'seeing', 'oracle')
THUMB = POLICIES[1:6]
THIRDS = ('short', 'middle', 'long')
COMBINED = {'false_wet': 0.002, 'hot_runs': 0.05, 'weekend_gaps': 0.2, 'season': {'amplitude': 0.3}, 'ar1': 0.5}
WORLDS = {
    'default': {},
    'everybody checks in before the session': {'session_before_checkin': 0},
    'everybody checks in after the session': {'session_before_checkin': 1},
    'combined': COMBINED,
    'false reports on 6 % of calm and 30 % of stirred days': {'false_clammy': {'calm': 0.06, 'stirred': 0.30}},
    'hot runs, 10 % of days': {'hot_runs': 0.1},
    'gamma times': {'times': 'gamma'},
    'log-logistic times': {'times': 'loglogistic'},
    'AR(1) of 0.7': {'ar1': 0.7},
    'season of 0.5': {'season': {'amplitude': 0.5}},
}


@functools.cache
def rehearsed(name, cost='2'):
    with tempfile.NamedTemporaryFile('w', suffix='.json') as file:
        json.dump(WORLDS[name], file)
        file.flush()
        call = [CLI, '--json', 'rehearsal', '--people', PEOPLE, '--days', '730', '--seed', SEED, '--threads', '2',
                '--world', file.name, '--return-cost', cost]
        return json.loads(subprocess.run(call, capture_output=True, text=True, check=True).stdout)


def row(*cells):
    return '| ' + ' | '.join(cells) + ' |'


def figures(f, best):
    return (f"{f['sessions_per_year']:.1f}", f"{f['clammy_days_per_year']:.1f}", f"{f['sweating_days_per_year']:.1f}",
            f"{f['cost_per_year']:.1f}", f"{100 * (f['cost_per_year'] / best['cost_per_year'] - 1):+.1f} %")


def apart(f):
    return f"{f['above_early']:+.1f} ± {f['above_early_error']:.1f}"


def decisions():
    out = [row('world', 'return costs', 'policy', 'sessions', 'clammy days', 'sweating days', 'cost', 'over the oracle',
               'over early'),
           '| --- | ---: | --- | ---: | ---: | ---: | ---: | ---: | ---: |']
    for name in ('default', 'combined'):
        for cost in COSTS:
            policies = rehearsed(name, cost)['policies']
            out += [row(name, cost, p, *figures(policies[p], policies['oracle']), apart(policies[p]))
                    for p in POLICIES]
    return out


def cells():
    """Each world, cost and third of people, and all of them."""
    for name in ('default', 'combined'):
        for cost in COSTS:
            answer = rehearsed(name, cost)
            yield name, cost, 'all', answer['policies']
            for third in THIRDS:
                yield name, cost, third, answer['terciles'][third]


def thirds():
    columns = [p for p in POLICIES if p != 'oracle']
    out = [row('world', 'return costs', 'third', 'cost of the oracle', *columns),
           '| --- | ---: | --- |' + ' ---: |' * (1 + len(columns))]
    for name, cost, third, by in cells():
        out.append(row(name, cost, third, f"{by['oracle']['cost_per_year']:.1f}",
                       *(figures(by[p], by['oracle'])[-1] for p in columns)))
    return out


def cheaper():
    out = [row('world', 'return costs', 'third', 'policy', 'costs less by', 'standard error'),
           '| --- | ---: | --- | --- | ---: | ---: |']
    for name, cost, third, by in cells():
        out += [row(name, cost, third, p, f"{-by[p]['above_early']:.1f}", f"{by[p]['above_early_error']:.1f}")
                for p in THUMB if by[p]['above_early'] < 0]
    return out


def worlds():
    out = [row('world', 'coverage of 50 / 80 / 95 %', 'first and last tenth', 'Brier', 'calls as named',
               'calls on dry skin', 'restarts without sweating', 'over the oracle', 'over seeing', 'over knowing'),
           '| --- | --- | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |']
    for name in WORLDS:
        answer = rehearsed(name)
        c, d, p = answer['calibration'], answer['conduct'], answer['policies']
        covered = ' / '.join(f'{100 * c["coverage"][k]:.1f}' for k in ('0.5', '0.8', '0.95'))
        ends = ' and '.join(f'{100 * c["pit"][i] / c["spells"]:.1f} %' for i in (0, -1))
        out.append(row(name, covered, ends, f'{c["brier"]:.3f}', f'{100 * d["as_named"]:.0f} %',
                       f'{100 * d["on_dry"]:.0f} %', f'{100 * d["restarts_not_sweating"]:.0f} %',
                       *(figures(p['early'], p[best])[-1] for best in ('oracle', 'seeing', 'knowing'))))
    return out


def damp_days(f):
    return f['clammy_days_per_year'] + f['sweating_days_per_year']


def dominated():
    """Where another rule needs fewer sessions and leaves fewer damp days as well."""
    return [(name, cost, third, p) for name, cost, third, by in cells() for p in THUMB
            if by[p]['sessions_per_year'] < by['early']['sessions_per_year']
            and damp_days(by[p]) < damp_days(by['early'])]


for name, make in (('decisions', decisions), ('thirds', thirds), ('cheaper', cheaper), ('worlds', worlds)):
    table = '\n'.join(make())
    text, found = re.subn(f'(<!-- {name} -->\n).*?(<!-- end -->)', lambda m: f'{m[1]}{table}\n{m[2]}',
                          DOCUMENT.read_text(encoding='utf-8'), flags=re.S)
    assert found == 1, name
    DOCUMENT.write_text(text, encoding='utf-8')
assert not dominated(), dominated()
