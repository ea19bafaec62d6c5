#!/usr/bin/python3
"""What Firstdew costs, every figure as a ratio to a floor measured in the same run.

Usage: bench.py BUILD-FOLDER [--only NAME,...]     names: start, session, store, assess, fit, page, rehearsal, size, face
Writes BUILD-FOLDER/figures.json; exit 0 whatever the figures are, since times belong to machines."""
import datetime
import hashlib
import json
import os
import pathlib
import resource
import statistics
import subprocess
import sys
import tempfile
import time

HERE = pathlib.Path(__file__).resolve().parent
sys.path.insert(0, str(HERE.parent / 'system'))
import ui  # noqa: E402

TODAY = '2026-03-02'
STARTS = 25
AT_REST_S = 1.0  # after the first frame; then memory is read
SESSION_S = 60
PAGES = 25  # one takes but a few milliseconds
DAYS = 730  # of the invented person's record, five times over: ten years
TICKS = os.sysconf('SC_CLK_TCK')
BUS = '''<!DOCTYPE busconfig PUBLIC "-//freedesktop//DTD D-Bus Bus Configuration 1.0//EN" "http://www.freedesktop.org/standards/dbus/1.0/busconfig.dtd">
<busconfig><type>session</type><listen>unix:path={folder}/bus</listen><auth>EXTERNAL</auth>
<policy context="default"><allow send_destination="*" eavesdrop="true"/><allow eavesdrop="true"/><allow own="*"/></policy></busconfig>'''
BOUNDS = {  # name: (what against what, most or least, bound)
    'start': ('first frame with the check-in on it / an empty window', 'most', 1.8),
    'memory': ('resident memory / an empty window', 'most', 1.6),
    'store': ('a check-in stored / a bare insert as durable', 'most', 1.3),
    'assess': ('assess() of ten years / of one', 'most', 11),
    'assess-ms': ('assess() of ten years of three sites, ms', 'most', 10),
    'fit': ('R\'s time for a fit / ours', 'least', 200),
    'page': ('the page for the prescriber / an empty page', 'most', 3),
    'rehearsal': ('rehearsal on two threads / on one', 'least', 1.8),
}


class Display:
    """A display of its own without a window manager."""

    def __init__(self):
        number = 200 + os.getpid() % 20000
        self.name = f':{number}'
        self.server = subprocess.Popen(['Xvfb', self.name, '-screen', '0', '390x844x24', '-nolisten', 'tcp', '-noreset'], stderr=subprocess.DEVNULL)
        ui.wait_for('the display', lambda: os.path.exists(f'/tmp/.X11-unix/X{number}'))

    def close(self):
        self.server.terminate()
        self.server.wait()


def resident_kb(pid):
    return next(int(line.split()[1]) for line in pathlib.Path(f'/proc/{pid}/status').read_text().splitlines() if line.startswith('VmRSS'))


def own_kb(pid):
    """What this process alone holds: libraries and fonts that all programs share are nobody's."""
    rollup = dict(line.split(':') for line in pathlib.Path(f'/proc/{pid}/smaps_rollup').read_text().splitlines()[1:])
    return sum(int(rollup[k].split()[0]) for k in ('Private_Clean', 'Private_Dirty'))


def processor_s(pid):
    fields = pathlib.Path(f'/proc/{pid}/stat').read_text().rpartition(')')[2].split()
    return (int(fields[11]) + int(fields[12])) / TICKS


def wake_ups(pid):
    return sum(int(line.split()[1]) for task in pathlib.Path(f'/proc/{pid}/task').iterdir()
               for line in (task / 'status').read_text().splitlines() if line.startswith('voluntary'))


def turn_by_turn(mine, floor):
    """The median ratio of a turn, since what else the machine does for a while slows both of a turn."""
    return statistics.median(m / f for m, f in zip(mine, floor))


def first_frame(command, env):
    """Starts the program; gives the process and the seconds from the start to the first frame, as the program prints it."""
    began = time.monotonic_ns()
    process = subprocess.Popen([str(c) for c in command], env=env, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True)
    line = process.stdout.readline().split()
    assert line[:2] == ['first', 'frame'], (command, line)
    return process, (int(line[2]) - began) / 1e9


def starts(tools, folder):
    """Seconds to the first frame, processor seconds and memory, of the app on the invented person's record and of the empty window, turn by turn. The app's first frame counts once the check-in is on it."""
    store = folder / 'demo.db'
    subprocess.run([tools['cli'], 'demo', '--out', store, '--today', TODAY], check=True, stdout=subprocess.DEVNULL)
    display = Display()
    # A bus that starts no services: a daemon that starts beside the app would be measured with it.
    (folder / 'bus.conf').write_text(BUS.format(folder=folder))
    bus = subprocess.Popen(['dbus-daemon', f'--config-file={folder}/bus.conf', '--nofork', '--print-address'], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True)
    env = {**os.environ, 'DISPLAY': display.name, 'DBUS_SESSION_BUS_ADDRESS': bus.stdout.readline().strip(), 'QT_QPA_PLATFORM': 'xcb', 'QT_QUICK_BACKEND': 'software', 'FIRSTDEW_TEST': '1',
           'HOME': str(folder), 'XDG_RUNTIME_DIR': str(folder), 'LC_ALL': 'C.UTF-8'}
    programs = {'floor': [tools['floor']],
                'app': [tools['app'], '--store', store, '--test-now', f'{TODAY}T19:00', '--size', '390x844', '--language', 'en', '--test-first-frame']}
    seen = {name: [] for name in programs}
    try:
        for _ in range(STARTS):
            for name, command in programs.items():
                process, seconds = first_frame(command, env)
                try:
                    time.sleep(AT_REST_S)  # memory and processor time of the whole start
                    seen[name].append((seconds, processor_s(process.pid), resident_kb(process.pid), own_kb(process.pid)))
                finally:
                    process.kill()
                    process.wait()
                    process.stdout.close()
    finally:
        bus.terminate()
        bus.wait()
        display.close()
    out = {name: [statistics.median(run[i] for run in runs) for i in range(4)] for name, runs in seen.items()}
    out['start'] = turn_by_turn([run[0] for run in seen['app']], [run[0] for run in seen['floor']])
    return out


def begin_session(app):
    app.press('Both feet')
    app.press('I have a hand free', 'radio button')
    app.press('Continue')
    app.press('Nothing has changed')
    app.see('Tick each line')
    app.skin_is_fine()
    for name in app.below('Tick each line'):
        app.press(name)
    app.press('Begin')
    app.press('It is comfortable')
    app.see('Phase 1 of 2')


def watched(pid):
    """Processor seconds a minute and wake-ups a second of a program that nobody touches."""
    time.sleep(3)  # what came before is over
    began, used, woken = time.monotonic(), processor_s(pid), wake_ups(pid)
    time.sleep(SESSION_S)
    seconds = time.monotonic() - began
    return (processor_s(pid) - used) * 60 / seconds, (wake_ups(pid) - woken) / seconds


def session(tools, folder):
    with ui.Desktop(size=(390, 844), sound=True) as desktop:
        store = folder / 'session.db'
        subprocess.run([tools['cli'], 'demo', '--out', store, '--today', TODAY], check=True, stdout=subprocess.DEVNULL)
        app = ui.App(desktop, tools['app'], store, '--test-now', f'{TODAY}T19:00', '--size', '390x844', '--page', 'bath', '--language', 'en')
        begin_session(app)
        running = watched(app.process.pid)
        app.kill()
        floor = desktop.spawn(tools['floor'])
        time.sleep(2)
        return {'app': running, 'floor': watched(floor.pid)}


def core(tools, folder):
    out = subprocess.run([tools['bench'], folder], check=True, capture_output=True, text=True).stdout
    return {name: float(value) for name, value in (line.split() for line in out.splitlines())}


def fits_in_r(tools):
    data = subprocess.run([tools['bench'], '--spells'], check=True, capture_output=True, text=True).stdout
    out = subprocess.run(['Rscript', HERE / 'FitTime.R'], input=data, check=True, capture_output=True, text=True).stdout
    return {name: float(value) for name, value in (line.split() for line in out.splitlines())}


def shifted(value, days):
    """Every date in it, moved."""
    if isinstance(value, dict):
        return {k: v if k == 'birth' else shifted(v, days) for k, v in value.items()}
    if isinstance(value, list):
        return [shifted(v, days) for v in value]
    if isinstance(value, str) and len(value) >= 10 and value[4:5] == '-' and value[7:8] == '-':
        try:
            day = datetime.date.fromisoformat(value[:10])
        except ValueError:
            return value
        return (day + datetime.timedelta(days)).isoformat() + value[10:]
    return value


def ten_years(document):
    facts = []
    for copy in range(5):
        for fact in document['facts']:
            moved = shifted(fact, -DAYS * copy)
            moved['id'] = hashlib.md5(f'{copy}{fact["id"]}'.encode()).hexdigest()
            if fact.get('corrects'):
                moved['corrects'] = hashlib.md5(f'{copy}{fact["corrects"]}'.encode()).hexdigest()
            moved['recorded_ms'] = fact['recorded_ms'] - DAYS * copy * 86_400_000
            facts.append(moved)
    return {**document, 'facts': facts}


def processor_cost(*command):
    """Processor seconds of one run."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    subprocess.run([str(c) for c in command], check=True, stdout=subprocess.DEVNULL, env={**os.environ, 'QT_QPA_PLATFORM': 'offscreen'})
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


def pages(tools, folder):
    """Processor seconds of an empty page, of the page for a year, and of the page for ten; and the ratios of the latter two to the first."""
    cli, demo, long = tools['cli'], folder / 'page.db', folder / 'ten-years.db'
    processor_cost(cli, 'demo', '--out', demo, '--today', TODAY)
    processor_cost(cli, 'export', '--store', demo, '--format', 'json', '--out', folder / 'demo.json')
    document = json.loads((folder / 'demo.json').read_text(encoding='utf-8'))
    (folder / 'ten.json').write_text(json.dumps(ten_years(document)), encoding='utf-8')
    processor_cost(cli, 'import', folder / 'ten.json', '--store', long)

    def page(store, start):
        return [cli, 'summary', '--store', store, '--from', start, '--to', '2026-03-01', '--out', folder / 'page.pdf']
    commands = {'empty': [tools['floor'], 'page', folder / 'empty.pdf'], 'year': page(demo, '2025-03-02'), 'ten-years': page(long, '2016-03-05')}
    runs = {name: [] for name in commands}
    for _ in range(PAGES):
        for name, command in commands.items():
            runs[name].append(processor_cost(*command))
    ratios = {name: turn_by_turn(runs[name], runs['empty']) for name in ('year', 'ten-years')}
    return {name: statistics.median(values) for name, values in runs.items()}, ratios


def sizes(tools, folder):
    out = {}
    for name in ('app', 'cli', 'floor'):
        stripped = folder / f'{name}.stripped'
        subprocess.run(['strip', '-o', stripped, tools[name]], check=True)
        out[f'{name}-mb'] = stripped.stat().st_size / 1e6
    packages = sorted((HERE.parents[1] / 'build' / 'package').glob('firstdew_*.deb'))
    if packages:
        out['package-mb'] = packages[-1].stat().st_size / 1e6
    return out


def measure(tools, folder, only):
    figures = {'cores': os.cpu_count(), 'load before': os.getloadavg()[0]}

    def wanted(*names):
        return not only or set(names) & set(only)
    if wanted('start', 'memory'):
        figures['starts'] = starts(tools, folder)
        floor, app = figures['starts']['floor'], figures['starts']['app']
        figures['start'], figures['start, processor time'] = figures['starts']['start'], app[1] / floor[1]
        figures['memory'], figures['memory, own'] = app[2] / floor[2], app[3] / floor[3]
    if wanted('session'):
        figures['session'] = session(tools, folder)
    if wanted('store', 'assess', 'fit', 'rehearsal'):
        figures['core'] = c = core(tools, folder)
        figures['store'] = c['check-in-ms'] / c['bare-insert-ms']
        figures['assess'] = c['assess-10-years-ms'] / c['assess-1-year-ms']
        figures['assess-ms'] = c['assess-10-years-ms']
        figures['rehearsal'] = c['rehearsal-2-threads-days-per-s'] / c['rehearsal-1-thread-days-per-s']
        figures['r'] = r = fits_in_r(tools)
        figures['fit'] = min(r[f'r-{family}-ms'] / c[f'fit-{family}-ms'] for family in ('weibull', 'lognormal'))
    if wanted('page'):
        figures['pages'], ratios = pages(tools, folder)
        figures['page'], figures['page, ten years'] = ratios['year'], ratios['ten-years']
    if wanted('face'):
        out = subprocess.run([tools['face'], folder], check=True, capture_output=True, text=True).stdout
        figures['face'] = {name: float(value) for name, value in (line.split() for line in out.splitlines())}
    if wanted('size'):
        figures['size'] = sizes(tools, folder)
    return figures


def told(figures):
    for name, (what, side, bound) in BOUNDS.items():
        if name not in figures:
            continue
        value = figures[name]
        kept = value <= bound if side == 'most' else value >= bound
        yield f'{what:55} {value:8.2f}   at {side} {bound:<5} {"" if kept else "MISSED"}'
    if 'starts' in figures:
        floor, app = figures['starts']['floor'], figures['starts']['app']
        yield f'  first frame {app[0] * 1000:.0f} ms against {floor[0] * 1000:.0f} ms; processor time {app[1]:.2f} s against {floor[1]:.2f} s'
        yield f'  resident {app[2] / 1024:.0f} MB against {floor[2] / 1024:.0f} MB; of its own {app[3] / 1024:.0f} MB against {floor[3] / 1024:.0f} MB'
    if 'session' in figures:
        (app_s, app_w), (floor_s, floor_w) = figures['session']['app'], figures['session']['floor']
        yield f'a running session: {app_s:.2f} processor seconds a minute and {app_w:.1f} wake-ups a second; an empty window {floor_s:.2f} and {floor_w:.1f}'
    if 'core' in figures:
        yield '  ' + ', '.join(f'{name} {value:.4g}' for name, value in {**figures['core'], **figures['r']}.items())
    if 'pages' in figures:
        yield f'  the page for ten years / an empty page {figures["page, ten years"]:.2f}; ' + ', '.join(f'{k} {v * 1000:.0f} ms' for k, v in figures['pages'].items())
    if 'face' in figures:
        f = figures['face']
        yield (f'ten years: a tap to the check-in on disk / a bare insert {f["tap-stored-ms"] / f["bare-insert-ms"]:.1f}; {f["tap-stored-ms"]:.1f} ms,'
               f' 95 % within {f["tap-stored-95-ms"]:.1f}; to the answer on the screen {f["tap-shown-ms"]:.0f} ms')
        for span in ('year', 'quarter'):
            yield (f'ten years dragged, a {span} in view: a frame / one of an empty window {f[f"frame-{span}-ms"] / f["frame-empty-ms"]:.1f};'
                   f' {f[f"frame-{span}-ms"]:.1f} ms, 95 % within {f[f"frame-{span}-95-ms"]:.1f}')
    if 'size' in figures:
        yield 'sizes, stripped: ' + ', '.join(f'{name[:-3]} {value:.1f} MB' for name, value in figures['size'].items())
    yield f'on {figures["cores"]} cores, load {figures["load before"]:.1f} before'


def main():
    only = (ui.argument('only') or '').split(',') if '--only' in sys.argv else []
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    build = pathlib.Path(sys.argv[1]).resolve()
    tools = {'app': build / 'platform/app/firstdew', 'cli': build / 'platform/cli/firstdew-cli', 'bench': build / 'tests/bench/bench',
             'floor': build / 'tests/bench/floor', 'face': build / 'tests/bench/face_bench'}
    # On the disk of the build, not in memory: a store is on a disk.
    with tempfile.TemporaryDirectory(dir=build) as scratch:
        figures = measure(tools, pathlib.Path(scratch), only)
    (build / 'figures.json').write_text(json.dumps(figures, indent=1), encoding='utf-8')
    print('\n'.join(told(figures)))


if __name__ == '__main__':
    main()
