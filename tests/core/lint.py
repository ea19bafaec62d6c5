#!/usr/bin/env python3
"""Rules of the house that a compiler does not check.

Usage: lint.py [--layout] ROOT         exit 0 when the tree keeps the rules, 1 with one line per breach
       lint.py [--layout] --self-test  make small bad trees and see each rule catch its breach
--layout: what clang-format 14 says of the C++ files, instead of the other rules; an error where that program is missing.
"""
import functools
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

LAYERS = ["facts", "codec", "diary", "protocol", "bath", "outlook", "situation", "journal", "summary", "exchange", "rehearsal"]
TOP = {"CMakeLists.txt", "README.md", "DEVELOPERS.md", "LICENSE", "core", "qml", "platform", "assets", "tests",
       "demo-data", "fastlane"}
# Which layers a folder may look at, beside itself: those before it.
MAY_USE = {name: set(LAYERS[:i]) for i, name in enumerate(LAYERS)}
MAY_USE["outlook"] = {"facts", "diary", "protocol"}
MAY_USE["diary"] = {"facts"}
MAY_USE["journal"] = {"facts", "codec"}
MAY_USE["exchange"] -= {"journal"}

QT = re.compile(r'#\s*include\s*[<"](Q[A-Z]\w*|Qt\w+/|q(?!rencode)[a-z]+\.h)')
INCLUDE = re.compile(r'#\s*include\s*"([a-z]+)/([^"]+)"')
# Only these look into a record; everybody else asks the diary.
RECORD_READERS = ('core/facts/', 'core/codec/', 'core/journal/', 'core/diary/', 'tests/')
RECORD = re.compile(r'#\s*include\s*"facts/Record\.h"|\brecordOf\s*\(|(\.|->)(all|latest|mutableAll)<')
CLOCK = re.compile(r'system_clock|steady_clock|high_resolution_clock|\btime\s*\(\s*(NULL|nullptr|0)\s*\)|gettimeofday|clock_gettime|std::random_device')
LONGEST_FUNCTION = 70
LONGEST_LINE = 120
# Written as Apple writes them.
STUBS = 'tests/ios/stubs/'
# What a function's head may have between its parameters and its body.
AFTER_PARAMETERS = re.compile(
    r'\)\s*((const|noexcept|override|final|mutable|&{1,2})\s*)*(->\s*[\w:<>,&*\s]+)?(:\s*[^;]*)?$')
LITERAL = re.compile(
    r'//[^\n]*|/\*.*?\*/|R"([^()\\ ]{0,16})\(.*?\)\1"|"(?:\\.|[^"\\\n])*"|(?<!\w)\'(?:\\.|[^\'\\\n])+\'', re.S)
DIRECTIVE = re.compile(r'^[ \t]*#(?:\\\n|[^\n])*', re.M)
CMAKE_TARGET = re.compile(r'\bfirstdew(?:[_-]\w*)?|\bQt\d*::\w+|\bQt6\w*')
QML_SQL = re.compile(r'\b(SELECT|INSERT INTO|UPDATE \w+ SET|DELETE FROM|openDatabaseSync)\b')


def code_of(text):
    """The text without comments and without the content of string literals (kept: include paths)."""
    text = re.sub(r'/\*.*?\*/', lambda m: '\n' * m.group(0).count('\n'), text, flags=re.S)
    return re.sub(r'//[^\n]*', '', text)


def files(root, folder, *suffixes):
    return sorted(p for p in (root / folder).rglob('*') if p.suffix in suffixes)


def cpp_files(root):
    """Every C++ and Objective-C++ file of the project, with its name from the root."""
    for folder in ('core', 'qml', 'platform', 'tests'):
        for path in files(root, folder, '.h', '.cpp', '.mm'):
            name = path.relative_to(root).as_posix()
            if not name.startswith(STUBS):
                yield path, name


NAMESPACE = re.compile(r'^namespace (?:firstdew::)?(\w+)', re.M)
ENUM = re.compile(r'\benum (?:class )?(\w+)(?:\s*:\s*\w+)?\s*\{([^}]*)\}')
TOKENS = re.compile(r'^FIRSTDEW_TOKENS\(([\w:]+),((?:\s*"[^"]*",?)+)\)', re.M)
PAIR = re.compile(r'^FIRSTDEW_PAIR(?:_AS)?\((\w+), (\w+)(?:, (\w+))?\);', re.M)


def enumerators(root, folder):
    """{'facts::Site': ['Hands', …]}: every enumeration of these headers under the namespace that it stands in."""
    found = {}
    for path in files(root, folder, '.h'):
        code = LITERAL.sub(blank, code_of(path.read_text(encoding='utf-8')))
        for enum in ENUM.finditer(code):
            spaces = NAMESPACE.findall(code, 0, enum.start())
            names = [re.sub(r'\s*=.*', '', n).strip() for n in enum.group(2).split(',')]
            # In Enums.h each enumeration is called Value, in a namespace of its own name.
            key = spaces[-1] if enum.group(1) == 'Value' else f'{spaces[-1] if spaces else ""}::{enum.group(1)}'
            found[key] = [n for n in names if n]
    return found


def enumeration_breaches(root):
    """Tokens that are not one to an enumerator, and enumerations of the pages that are not those of core."""
    core = enumerators(root, 'core')
    for path in files(root, 'core', '.h'):
        text = path.read_text(encoding='utf-8')
        for tokens in TOKENS.finditer(text):
            name = tokens.group(1) if '::' in tokens.group(1) else 'facts::' + tokens.group(1)
            have, want = len(re.findall(r'"[^"]*"', tokens.group(2))), len(core.get(name, ()))
            if have != want:
                yield f'{path.relative_to(root)}: {name} has {want} enumerators and {have} tokens'
    edge = root / 'qml/viewmodels/Edge.h'
    shown = enumerators(root, 'qml/viewmodels')
    for space, name, alias in PAIR.findall(edge.read_text(encoding='utf-8') if edge.exists() else ''):
        if shown.get(alias or name) != core.get(f'{space}::{name}'):
            yield f'qml/viewmodels/Enums.h: {alias or name} is not {space}::{name} of core'


def blank(match):
    return re.sub(r'[^\n]', ' ', match.group(0))


def functions_of(text):
    """(head, first line, last line) of each function: an outermost block behind a parameter list."""
    code = DIRECTIVE.sub(blank, LITERAL.sub(blank, text))
    out, depth, function, start, line = [], 0, None, 0, 1
    for i, c in enumerate(code):
        if c == '\n':
            line += 1
        elif c == '{':
            head = code[start:i].strip()
            if function is None and not re.match(r'(namespace|enum)\b', head) and AFTER_PARAMETERS.search(head):
                first = line - code[start:i].lstrip().count('\n')
                function = depth, ' '.join(head.split()), first
            depth += 1
            start = i + 1
        elif c == '}':
            depth -= 1
            if function is not None and depth == function[0]:
                out.append((function[1], function[2], line))
                function = None
            start = i + 1
        elif c == ';':
            start = i + 1
    return out


def long_ones(root):
    for path, name in cpp_files(root):
        text = path.read_text(encoding='utf-8')
        if not name.endswith('.mm'):
            for number, line in enumerate(text.splitlines(), 1):
                if len(line) > LONGEST_LINE:
                    yield f'{name}:{number}: {len(line)} columns, at most {LONGEST_LINE}'
        for head, first, last in functions_of(text):
            if last - first + 1 > LONGEST_FUNCTION:
                yield f'{name}:{first}: a function of {last - first + 1} lines, at most {LONGEST_FUNCTION}: {head[-60:]}'


def upwards(root):
    """What the folders below name of those above them."""
    for path in files(root, 'platform/ports', '.h', '.cpp'):
        for number, line in enumerate(code_of(path.read_text(encoding='utf-8')).splitlines(), 1):
            inc = re.search(r'#\s*include\s*"([^"]+)"', line)
            where = f'{path.relative_to(root)}:{number}'
            if QT.search(line):
                yield f'{where}: Qt included under platform/ports'
            elif inc and inc.group(1).split('/')[0] not in {'ports', *LAYERS}:
                yield f'{where}: ports must not include {inc.group(1)}'
    own = {'firstdew_', 'firstdew_core', *(f'firstdew_{layer}' for layer in LAYERS)}
    for path in sorted(p for p in (root / 'core').rglob('*') if p.name == 'CMakeLists.txt' or p.suffix == '.cmake'):
        for number, line in enumerate(path.read_text(encoding='utf-8').splitlines(), 1):
            for target in CMAKE_TARGET.findall(re.sub(r'#.*', '', line)):
                if target not in own:
                    yield f'{path.relative_to(root)}:{number}: core must not name the target {target}'


@functools.cache
def clang_format():
    """The program, of the one version whose layout the tree has; None where there is none."""
    for name in ('clang-format-14', 'clang-format'):
        program = shutil.which(name)
        if program and ' 14.' in subprocess.run([program, '--version'], capture_output=True, text=True, check=True).stdout:
            return program
    return None


def layout_breaches(root):
    program = clang_format()
    if program is None:
        return ['no clang-format 14: sh platform/linux/setup.sh test']
    names = [name for _, name in cpp_files(root) if not name.endswith('.mm')]
    out = []
    for start in range(0, len(names), 50):
        done = subprocess.run([program, '--style=file', '--dry-run', '--Werror', *names[start:start + 50]], cwd=root,
                              capture_output=True, text=True, check=False)
        wrong = re.findall(r'^(\S+?:\d+):\d+: error: .*clang-format', done.stderr, re.M)
        out += [f'{where}: not as clang-format lays it out' for where in wrong]
        if done.returncode and not wrong:
            out.append(f'clang-format failed: {done.stderr.strip()}')
    return out


def breaches(root):
    out = [*long_ones(root), *upwards(root), *enumeration_breaches(root)]
    tracked_top = {p.name for p in root.iterdir() if not p.name.startswith('.') and not p.name.startswith('build')}
    for extra in sorted(tracked_top - TOP):
        out.append(f'{extra}: not part of the top level')
    edges = {}
    for path in files(root, 'core', '.h', '.cpp'):
        layer = path.relative_to(root / 'core').parts[0]
        if layer not in LAYERS:
            out.append(f'{path.relative_to(root)}: no such layer as {layer}')
            continue
        text = code_of(path.read_text(encoding='utf-8'))
        for number, line in enumerate(text.splitlines(), 1):
            where = f'{path.relative_to(root)}:{number}'
            if QT.search(line):
                out.append(f'{where}: Qt included under core/')
            if CLOCK.search(line):
                out.append(f'{where}: core reads no clock and no entropy')
            inc = INCLUDE.search(line)
            if inc and inc.group(1) in LAYERS:
                if inc.group(1) != layer and inc.group(1) not in MAY_USE[layer]:
                    out.append(f'{where}: {layer} must not include {inc.group(1)}')
                edges.setdefault(str(path.relative_to(root / 'core')), set()).add(f'{inc.group(1)}/{inc.group(2)}')
    out += cycles(edges)
    for folder in ('core', 'qml', 'platform'):
        for path in files(root, folder, '.h', '.cpp', '.mm'):
            name = str(path.relative_to(root))
            if name.startswith(RECORD_READERS):
                continue
            for number, line in enumerate(code_of(path.read_text(encoding='utf-8')).splitlines(), 1):
                if RECORD.search(line):
                    out.append(f'{name}:{number}: reads a Record; ask the diary (core/diary/Diary.h)')
    for path in files(root, 'qml', '.qml'):
        for number, line in enumerate(code_of(path.read_text(encoding='utf-8')).splitlines(), 1):
            if QML_SQL.search(line):
                out.append(f'{path.relative_to(root)}:{number}: SQL in QML')
    return out


def cycles(edges):
    """Files that include each other in a circle (a .cpp never closes one)."""
    out, done = [], set()

    def walk(node, trail):
        if node in trail:
            out.append('include cycle: ' + ' > '.join(trail[trail.index(node):] + [node]))
            return
        if node in done:
            return
        for nxt in sorted(edges.get(node, ())):
            walk(nxt, trail + [node])
        done.add(node)

    for node in sorted(edges):
        walk(node, [])
    return out


BAD = {
    'Qt included': ('core/facts/A.h', '#include <QString>\n'),
    'must not include': ('core/protocol/A.h', '#include "situation/Assess.h"\n'),
    'include cycle': ('core/facts/A.h', '#include "facts/B.h"\n'),
    'no clock': ('core/bath/A.cpp', 'auto t = std::chrono::steady_clock::now();\n'),
    'no such layer': ('core/extras/A.h', '\n'),
    'not part of the top level': ('scripts', ''),
    'reads a Record': ('core/protocol/A.cpp', 'auto n = record.all<Session>().size();\n'),
    'reads a Record; ask': ('qml/viewmodels/A.h', '#include "facts/Record.h"\n'),
    'columns, at most': ('core/facts/A.h', '// ' + 'é' * 118 + '\n'),
    'a function of 71 lines': ('qml/viewmodels/A.cpp', 'int A::of(int i) const noexcept\n{' + '\n    ++i; // }' * 68 + '\n}\n'),
    'a function of 72 lines': ('tests/core/A.cpp', 'TEST_CASE("{")\n{\n    auto f = [] { return \'}\'; };' + '\n' * 69 + '}\n'),
    'a function of 73 lines': ('platform/cli/A.cpp', 'struct A {\n    A() : b{1}, c(2)\n    {' + '\n' * 71 + '    }\n};\n'),
    'Qt included under platform/ports': ('platform/ports/A.h', '#include <QObject>\n'),
    'ports must not include qml': ('platform/ports/A.h', '#include "qml/A.h"\n'),
    'ports must not include linux': ('platform/ports/B.h', '#include "linux/A.h"\n'),
    'core must not name the target firstdew_linux': ('core/CMakeLists.txt', 'firstdew_core(facts firstdew_linux)\n'),
    'core must not name the target firstdew-cli': ('core/facts/CMakeLists.txt', 'add_dependencies(x firstdew-cli)\n'),
    'core must not name the target Qt6::Core': ('core/CMakeLists.txt', 'target_link_libraries(firstdew_facts Qt6::Core)\n'),
    'A has 2 enumerators and 1 tokens': ('core/facts/C.h', 'namespace firstdew::facts {\nenum class A { One, Two };\nFIRSTDEW_TOKENS(A, "one");\n}\n'),
    'S has 1 enumerators and 2 tokens': ('core/facts/C.h', 'namespace firstdew::protocol {\nenum class S { One };\n}\nFIRSTDEW_TOKENS(protocol::S, "one",\n               "two");\n'),
    'Kind is not facts::Kind of core': ('qml/viewmodels/Edge.h', 'namespace Kind {\nenum Value : int { One, Three };\n}\nFIRSTDEW_PAIR(facts, Kind);\n'),
    'SQL in QML': ('qml/pages/A.qml', 'Item { property string q: "SELECT 1" }\n'),
}


def self_test():
    failed = 0
    for expected, (name, text) in BAD.items():
        with tempfile.TemporaryDirectory() as tmp:
            root = pathlib.Path(tmp)
            for folder in ('core/facts', 'qml/pages'):
                (root / folder).mkdir(parents=True)
            (root / 'core/facts/D.h').write_text('namespace firstdew::facts {\nenum class Kind { One, Two };\n}\n')
            (root / 'core/facts/B.h').write_text('#include "facts/A.h"\n' if expected == 'include cycle' else '\n')
            (root / name).parent.mkdir(parents=True, exist_ok=True)
            (root / name).write_text(text)
            found = breaches(root)
            if not any(expected in b for b in found):
                print(f'not caught: {expected}: {found}')
                failed += 1
            # What is just within a limit is no breach.
            (root / name).write_text('int f()\n{' + '\n' * 68 + '}\n// ' + 'é' * 117 + '\n')
            failed += said(b for b in breaches(root) if 'at most' in b)
    return failed


def layout_self_test():
    with tempfile.TemporaryDirectory() as tmp:
        root = pathlib.Path(tmp)
        (root / 'core/facts').mkdir(parents=True)
        (root / '.clang-format').write_text('BasedOnStyle: LLVM\nIndentWidth: 4\n')
        (root / 'core/facts/A.h').write_text('int a;\n')
        failed = said(layout_breaches(root))
        (root / 'core/facts/B.h').write_text('int  b ;\n')
        if layout_breaches(root) != ['core/facts/B.h:1: not as clang-format lays it out'] * 2:
            failed += said([f'not caught: layout: {layout_breaches(root)}'])
    return failed


def said(problems):
    """Prints them; their number."""
    problems = list(problems)
    print('\n'.join(problems), end='\n' if problems else '')
    return len(problems)


if __name__ == '__main__':
    layout = '--layout' in sys.argv
    arguments = [a for a in sys.argv[1:] if a != '--layout']
    if arguments == ['--self-test']:
        sys.exit(1 if (layout_self_test() if layout else self_test()) else 0)
    problems = (layout_breaches if layout else breaches)(pathlib.Path(arguments[0]).resolve())
    print('\n'.join(problems) if problems else 'the tree keeps the rules')
    sys.exit(1 if problems else 0)
