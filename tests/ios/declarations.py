#!/usr/bin/env python3
"""Holds the declarations in stubs/ against those that the objc2 crates were made of: Apple's own headers.

Usage: declarations.py ROOT CRATES   exit 0 when every declaration is as the crates have it, 1 with one line per fault
       declarations.py --self-test   plants faults and sees each one found; needs no crates
CRATES: what `cargo vendor` made of crates/Cargo.lock. clang reads the stubs.

Compared are superclasses and protocols of a class; selectors, of the class or of an instance; number, type and nullability
of arguments and results; functions and their linkage; fields of structures; enumerations, values and other constants.
uncovered.txt lists what the crates do not have. A method of our own classes has to be declared by us or by Apple, so that
the system calls none in vain, and what a protocol requires of them has to be in the stubs.
"""
import json
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

HERE = 'tests/ios'
# How clang calls what Rust calls otherwise, on arm64.
PRIMITIVES = {
    'bool': 'BOOL', 'Bool': 'BOOL', 'isize': 'long', 'usize': 'unsigned long', 'i64': 'long long', 'u64': 'unsigned long long',
    'i32': 'int', 'u32': 'unsigned int', 'i16': 'short', 'u16': 'unsigned short', 'i8': 'signed char', 'u8': 'unsigned char',
    'f64': 'double', 'f32': 'float', 'c_void': 'void', 'c_char': 'char', 'c_int': 'int', 'c_uint': 'unsigned int',
    'c_long': 'long', 'c_ulong': 'unsigned long', 'c_float': 'float', 'c_double': 'double', 'CGFloat': 'double',
    'Sel': 'SEL'}
# A reference to one of these has no star: @ until something refers to it.
REFERRED = {'AnyObject': 'id@', 'AnyClass': 'Class@', 'Self': 'instancetype@'}
TYPE_PARAMETERS = {'ObjectType', 'KeyType'}
ERROR = 'NSError*?*?'


class NotUnderstood(Exception):
    pass


# Types, written the same way for both sides: NSString* is not null, NSString*? may be, NSString*~ is said by nobody.

class Tokens:
    def __init__(self, text, pattern):
        self.all, self.at = re.findall(pattern, text), 0

    def peek(self, ahead=0):
        return self.all[self.at + ahead] if self.at + ahead < len(self.all) else ''

    def next(self):
        self.at += 1
        return self.peek(-1)

    def take(self, token):
        if self.peek() != token:
            return False
        self.at += 1
        return True

    def need(self, token):
        if not self.take(token):
            raise NotUnderstood(f'{" ".join(self.all)}: no {token} at word {self.at}')

    def list(self, end, one):
        out = []
        while not self.take(end):
            out.append(one())
            self.take(',')
            if self.at >= len(self.all):
                raise NotUnderstood(f'{" ".join(self.all)}: no {end}')
        return out


def block(arguments, result):
    return f'^({", ".join(a for a in arguments if a != "void")})->{result}'


class Rust:
    """The crates."""

    def __init__(self):
        self.supers, self.conforms, self.methods, self.protocols = {'NSObject': []}, {}, {}, {'NSObjectProtocol': []}
        self.aliases, self.enums, self.structs = {}, {}, {}
        self.functions, self.statics, self.values = {}, {}, {}

    def read(self, text):
        text = re.sub(r'"(?:\\.|[^"\\])*"|//[^\n]*|/\*.*?\*/', lambda m: m[0] if m[0][0] == '"' else '', text, flags=re.S)
        for head, name in re.findall(r'extern_class!\((.*?)pub struct (\w+)', text, re.S):
            self.supers[name] = re.findall(r'\w+', re.search(r'super\(([^)]*)\)', head)[1])
        for protocol, name in re.findall(r'unsafe impl(?:<[^{}]*?>)?\s+(\w+)\s+for\s+(\w+)', text):
            self.conforms.setdefault(name, set()).add(protocol)
        for name, above, at in ((m[1], m[2], m.end()) for m in re.finditer(r'pub unsafe trait (\w+)([^{;]*)\{', text)):
            self.protocols[name] = re.findall(r'\b[A-Z]\w+', above)
            self.read_methods(name, enclosed(text, at, '{}'))
        for m in re.finditer(r'\bimpl(?:<[^{}]*?>)?\s+(\w+)(?:<[^{}]*?>)?\s*(?:where[^{]*)?\{\s*extern_methods!\(', text):
            self.read_methods(m[1], enclosed(text, m.end(), '()'))
        self.aliases.update(re.findall(r'pub type (\w+)\s*=\s*([^;]+);', text))
        self.enums.update(re.findall(r'pub struct (\w+)\(pub (\w+)\);', text))
        for name, fields in re.findall(r'pub struct (\w+) \{([^}]*)\}', text):
            self.structs[name] = re.findall(r'pub (\w+):\s*([^,\n]+),', fields)
        for m in re.finditer(r'pub (?:unsafe )?(?:extern "[\w-]+" )?fn (\w+)\(', text):
            self.functions.setdefault(m[1], signature(text, m.end()))
        for name, kind, value in re.findall(r'pub (?:static|const) (\w+):\s*([^;=]+?)\s*(?:=\s*([^;]+?))?;', text):
            self.statics.setdefault(name, kind)
            if value:
                self.values.setdefault(name, (kind, value))
        self.read_enumerators(text)

    def read_enumerators(self, text):
        enum = None
        for m in re.finditer(r'\bimpl (\w+)|doc\(alias = "(\w+)"\)\]\s*(?:#\[[^\]]*\]\s*)*(?:pub )?const \w+(?:: \w+)? = ([^;]+);', text):
            enum = m[1] or enum
            if m[2]:
                self.values[m[2]] = (enum, m[3])

    def read_methods(self, name, body):
        pattern = r'#\[unsafe\(method(?:_id)?\(([^()]*)\)\)\]'
        if name == 'NSObjectProtocol':  # written by hand, other than the rest
            pattern = r'#\[doc\(alias = "([\w:]+)"\)\]'
        for m in re.finditer(pattern, body):
            before = body[:m.start()].rpartition(';')[2]
            fn = re.compile(r'\s*(?:#\[[^\]]*\]\s*)*(?:pub )?(?:unsafe )?fn (?:r#)?\w+(?:<[^(]*>)?\(').match(body, m.end())
            if fn:
                arguments, result = signature(body, fn.end())
                own = bool(arguments) and re.match(r'&self|&mut self|self|this\s*:', arguments[0]) is not None
                arguments = [a.partition(':')[2] for a in arguments[own:] if 'MainThreadMarker' not in a]
                selector = m[1].replace(' ', '')
                self.methods.setdefault(name, {})['-+'[not own], selector.removesuffix('_')] = (
                    arguments, result, selector.endswith(':_'), '#[optional]' in before)

    def above(self, name):
        """It, its protocols and superclasses, the nearest first."""
        out = [name]
        for one in out:
            out += [n for n in [*self.supers.get(one, ())[:1], *sorted(self.conforms.get(one, ())),
                                *self.protocols.get(one, ())] if n not in out]
        return out

    def has(self, name):
        return name in self.supers or name in self.protocols

    def method(self, name, kind, selector):
        """(arguments, result) as types, of the nearest that has it; else None."""
        for one in self.above(name):
            found = self.methods.get(one, {}).get((kind, selector))
            if found:
                arguments = [self.type(a) for a in found[0]]
                result = self.type(found[1])
                if found[2]:
                    arguments.append(ERROR)
                return arguments, result
        return None

    def required(self, name):
        for (kind, selector), found in sorted(self.methods.get(name, {}).items()):
            if not found[3]:
                yield kind, selector

    def type(self, text):
        return self.one(Tokens(text, r"'\w+|::|->|\w+|[^\s\w]"))

    def one(self, t):
        if t.take('&'):
            if t.peek().startswith("'"):
                t.next()
            return self.pointer_to(self.one(t), '') if t.take('mut') else self.reference(self.one(t), '')
        if t.take('*'):
            t.next()
            return self.pointer_to(self.one(t), '?')
        if t.take('('):
            t.need(')')
            return 'void'
        if t.take('['):
            inner = self.one(t)
            t.need(';')
            length = t.next()
            t.need(']')
            return f'{inner}[{length}]'
        if t.take('dyn'):
            return self.dyn(t)
        name = t.next()
        while t.take('::'):
            name = t.next()
        arguments = t.list('>', lambda: self.one(t)) if t.take('<') else []
        return self.named(name, arguments)

    def dyn(self, t):
        name = t.next()
        if name == 'Fn':
            t.need('(')
            arguments = t.list(')', lambda: self.one(t))
            name = block(arguments, self.one(t) if t.take('->') else 'void')
        else:
            name = f'id<{"NSObject" if name == "NSObjectProtocol" else name}>@'
        while t.take('+'):
            t.next()
        return name

    def named(self, name, arguments):
        if name == 'Retained':
            return self.reference(arguments[0], '')
        if name in ('ProtocolObject', 'DynBlock', 'Block'):
            return arguments[0]
        if name == 'NonNull':
            return self.pointer_to(arguments[0], '')
        if name == 'Option':
            return arguments[0].rstrip('?~') + '?'
        if name == 'Result':
            return 'BOOL' if arguments[0] == 'void' else arguments[0] + '?'
        if name in TYPE_PARAMETERS:
            return f'{name}@'
        if name in REFERRED or name in PRIMITIVES:
            return REFERRED.get(name) or PRIMITIVES[name]
        if name in self.supers:
            inside = ', '.join(self.reference(a, '') for a in arguments)
            return f'{name}<{inside}>' if inside and set(arguments) != {'id@'} else name
        if name in self.enums or name in self.structs:
            return name
        if name in self.aliases:
            made = self.type(self.aliases[name])
            # The alias of a block is a bare pointer, whatever Apple says of it.
            return made.rstrip('?') + '~' if made.startswith('^') else made
        raise NotUnderstood(f'the crates\' type {name}')

    def is_object(self, made):
        return re.match(r'\w*', made)[0] in self.supers and '*' not in bare(made)

    def reference(self, made, null):
        if made.endswith('@'):
            return made[:-1] + null
        return f'{made}*{null}' if self.is_object(made) else made + null

    def pointer_to(self, made, null):
        if made.endswith('@') or made.startswith('^') and made[-1] not in '?~*':
            return made.rstrip('@') + null
        return f'{made}*{null}'

    def value(self, text, depth=0):
        """Of a constant; None if it is not known."""
        def known(m):
            name = m[0].rpartition('::')[2]
            for candidate in (name, *(n for n in self.values if n.endswith(name) and m[0].startswith(self.values[n][0]))):
                if candidate in self.values and depth < 5:
                    found = self.value(self.values[candidate][1], depth + 1)
                    if found is not None:
                        return str(found)
            return m[0]
        text = re.sub(r'\b(?!0x)[A-Za-z_]\w*(::\w+)*(?=\()', '', text).replace('.0', '').replace('.bits()', '')
        text = re.sub(r'\b[A-Za-z_]\w*(::\w+)*', known, text)
        return eval(text, {'__builtins__': {}}) if re.fullmatch(r'[\s()0-9xa-fA-F|<>+~-]+', text) else None  # pylint: disable=eval-used


def bare(made):
    """Without what stands in angle brackets."""
    while '<' in made:
        made = re.sub(r'<[^<>]*>', '', made)
    return made


def enclosed(text, start, pair):
    depth = 1
    for m in re.compile(f'[{re.escape(pair)}]').finditer(text, start):
        depth += 1 if m[0] == pair[0] else -1
        if depth == 0:
            return text[start:m.start()]
    return text[start:]


def signature(text, start):
    """Behind the opening parenthesis: the parameters, and the result."""
    inside = enclosed(text, start, '()')
    result = re.compile(r'\s*->\s*([^;{]+?)\s*(?:where\b[^;{]*)?[;{]').match(text, start + len(inside) + 1)
    parts, depth = [''], 0
    for m in re.finditer(r'->|.', inside, re.S):
        depth += (m[0] in '([<') - (m[0] in ')]>')
        if m[0] == ',' and depth == 0:
            parts.append('')
        else:
            parts[-1] += m[0]
    return [p.strip() for p in parts if p.strip()], result[1] if result else '()'


class Stubs:
    """What clang says of the headers."""

    NULL = {'_Nonnull': '', '_Nullable': '?', '_Null_unspecified': '?', '_Nullable_result': '?'}
    REFERENCES = {'id', 'Class', 'SEL', 'instancetype'}
    SILENT = {'const', 'volatile', 'struct', 'enum', '__strong', '__weak', '__autoreleasing', '__unsafe_unretained', '__kindof'}

    def __init__(self, folder, enums=()):
        """enums: the types that stand for themselves."""
        headers = sorted(folder.rglob('*.h'))
        clang = next((c for c in map(shutil.which, ('clang++-14', 'clang++-19', 'clang++')) if c), None)
        if clang is None:
            sys.exit('declarations.py: no clang++')
        done = subprocess.run(
            [clang, '-target', 'arm64-apple-ios15.0', '-x', 'objective-c++', '-std=c++20', '-fobjc-arc', '-fblocks',
             '-ffreestanding', '-stdlib=libc++', '-fsyntax-only', '-isystem', str(folder), '-Xclang', '-ast-dump=json', '-'],
            input=''.join(f'#import "{h}"\n' for h in headers), capture_output=True, text=True, check=False)
        if done.returncode:
            sys.exit(done.stderr)
        self.opaque = set(enums)
        self.interfaces, self.protocols, self.typedefs, self.enums = {}, {}, {}, {}
        self.records, self.structs, self.functions, self.variables, self.enumerators = {}, {}, {}, {}, {}
        for node in json.loads(done.stdout)['inner']:
            self.read(node)

    def read(self, node, linkage='C++'):
        kind, name = node['kind'], node.get('name', '')
        if kind == 'LinkageSpecDecl':
            for inner in node.get('inner', ()):
                self.read(inner, node['language'])
        elif node.get('isImplicit') or name.startswith('__'):
            return
        elif kind in ('ObjCInterfaceDecl', 'ObjCProtocolDecl'):
            self.read_class(kind, name, node)
        elif kind == 'TypedefDecl':
            self.typedefs[name] = node['type']['qualType']
            for of in (x['decl']['id'] for x in walk(node) if x['kind'] == 'RecordType'):
                if of in self.records:
                    self.structs.pop(self.records[of][0], None)
                    self.structs[name] = self.records[of][1]
            if name in self.opaque and not self.typedefs[name].startswith('enum '):
                self.enums[name] = self.typedefs[name]
        elif kind == 'EnumDecl':
            self.read_enum(node)
        elif kind == 'CXXRecordDecl' and 'inner' in node:
            fields = [(f['name'], f['type']['qualType']) for f in node['inner'] if f['kind'] == 'FieldDecl']
            if fields:
                self.records[node['id']] = name, fields
                self.structs[name] = fields
        elif kind == 'FunctionDecl' and node.get('storageClass') != 'static':
            result = node['type']['qualType'].partition('(')[0]
            self.functions[name] = [p['type']['qualType'] for p in inner_of(node, 'ParmVarDecl')], result, linkage
        elif kind == 'VarDecl':
            literals = [x['value'] for x in walk(node) if x['kind'] == 'IntegerLiteral']
            self.variables[name] = node['type']['qualType'], literals, linkage

    def read_class(self, kind, name, node):
        of = (self.interfaces if kind == 'ObjCInterfaceDecl' else self.protocols)
        if 'inner' not in node and name in of:
            return
        methods = {('-' if m['instance'] else '+', m['name']):
                   ([p['type']['qualType'] for p in inner_of(m, 'ParmVarDecl')], m['returnType']['qualType'])
                   for m in inner_of(node, 'ObjCMethodDecl')}
        of[name] = {'super': node.get('super', {}).get('name'), 'protocols': [p['name'] for p in node.get('protocols', ())],
                    'methods': methods, 'defined': bool(node.get('inner') or node.get('super') or kind == 'ObjCProtocolDecl')}

    def read_enum(self, node):
        value = -1
        if node.get('name') and 'fixedUnderlyingType' in node:
            self.enums[node['name']] = node['fixedUnderlyingType']['qualType']
        for constant in inner_of(node, 'EnumConstantDecl'):
            said = [x['value'] for x in walk(constant) if x['kind'] == 'ConstantExpr']
            value = int(said[0]) if said else value + 1
            of = node.get('name') or node.get('fixedUnderlyingType', {}).get('qualType')
            self.enumerators[constant['name']] = of, value

    def type(self, text):
        t = Tokens(text, r'\w+|\.\.\.|[^\s\w]')
        t.all = [x for x in t.all if x not in self.SILENT]
        return self.one(t)

    def null(self, t, default='?'):
        return self.NULL[t.next()] if t.peek() in self.NULL else default

    def one(self, t):
        words = [t.next()]
        while re.fullmatch(r'[A-Za-z]\w*', t.peek()):
            words.append(t.next())
        made = ' '.join(words)
        if t.take('<'):
            inside = ', '.join(n.rstrip('?') for n in t.list('>', lambda: self.one(t)))
            made = f'{made}<{inside}>'
        made = self.named(made, t)
        while t.peek() in ('*', '(', '['):
            made = self.suffix(made, t)
        return made

    def named(self, made, t):
        name = re.match(r'\w*', made)[0]
        if name in TYPE_PARAMETERS:
            return re.sub(r'\w+(?=<)', 'id', made) + self.null(t)
        if name in self.REFERENCES:
            return made + self.null(t)
        if name == 'BOOL' or name in self.opaque or name in self.structs:
            return made
        if name in self.typedefs and self.typedefs[name] not in (f'struct {name}', f'enum {name}'):
            meant = self.type(self.typedefs[name])
            return meant.rstrip('?') + self.null(t) if meant[-1] in '?*' or meant[0] == '^' else meant
        return made

    def suffix(self, made, t):
        if t.take('*'):
            return f'{made}*{self.null(t)}'
        if t.take('['):
            length = '' if t.peek() == ']' else t.next()
            t.need(']')
            return f'{made}[{length}]'
        t.need('(')
        t.need('^')
        null = self.null(t)
        t.need(')')
        t.need('(')
        return block(t.list(')', lambda: self.one(t)), made) + null

    def declares(self, name, kind, selector):
        names = [name]
        for one in names:
            for it in (of[one] for of in (self.interfaces, self.protocols) if one in of):
                if (kind, selector) in it['methods']:
                    return True
                names += [n for n in (it['super'], *it['protocols']) if n and n not in names]
        return False


def inner_of(node, kind):
    return [n for n in node.get('inner', ()) if n['kind'] == kind]


def walk(node):
    yield node
    for inner in node.get('inner', ()):
        yield from walk(inner)


def same(stub, crate):
    """NSString*~ of the crates fits both NSString* and NSString*?."""
    return re.fullmatch(re.escape(crate).replace(r'\~', r'\??'), stub) is not None


class Comparison:
    def __init__(self, rust, stubs, uncovered):
        self.rust, self.stubs, self.uncovered = rust, stubs, uncovered
        self.faults, self.listed = [], set()
        self.counts = dict.fromkeys(('classes and protocols', 'selectors', 'types', 'functions', 'structures', 'constants'), 0)

    def fault(self, name, what, missing=False):
        """Missing: the crates do not have it, so that it may be listed."""
        if missing and name in self.uncovered:
            self.listed.add(name)
        else:
            self.faults.append(f'{name}: {what}')

    def types(self, name, stub, crate):
        """stub: (arguments, result) as written; crate: the same as types."""
        try:
            have = [self.stubs.type(a) for a in stub[0]], self.stubs.type(stub[1])
            want = crate()
        except NotUnderstood as trouble:
            self.fault(name, f'not understood: {trouble}')
            return
        if len(have[0]) != len(want[0]):
            self.fault(name, f'{len(have[0])} arguments here, {len(want[0])} in the crates')
            return
        for number, (h, w) in enumerate(zip([*have[0], have[1]], [*want[0], want[1]]), 1):
            self.counts['types'] += 1
            if not same(h, w):
                what = f'argument {number}' if number <= len(have[0]) else 'the result'
                self.fault(name, f'{what} is {h} here, {w} in the crates')

    def run(self):
        for name, it in [*self.stubs.interfaces.items(), *self.stubs.protocols.items()]:
            protocol = self.stubs.protocols.get(name) is it
            self.one_class('NSObjectProtocol' if protocol and name == 'NSObject' else name, it, protocol)
        for name, (arguments, result, linkage) in self.stubs.functions.items():
            self.function(name, arguments, result, linkage)
        for name, (kind, literals, linkage) in self.stubs.variables.items():
            self.variable(name, kind, literals, linkage)
        for name, kind in self.stubs.enums.items():
            self.enum(name, kind)
        for name, (of, value) in self.stubs.enumerators.items():
            self.constant(name, of, value)
        for name, fields in self.stubs.structs.items():
            self.structure(name, fields)
        for name in sorted(set(self.uncovered) - self.listed):
            self.faults.append(f'{name}: listed in uncovered.txt, but the stubs do not have it or the crates do')
        return self.faults

    def one_class(self, name, it, protocol):
        self.counts['classes and protocols'] += 1
        if name not in (self.rust.protocols if protocol else self.rust.supers):
            self.fault(name, f'the crates have no {"protocol" if protocol else "class"} of this name', True)
            return
        if it['super'] and self.rust.supers[name][:1] != [it['super']]:
            self.fault(name, f'is a {it["super"]} here, a {self.rust.supers[name][0]} in the crates')
        for adopted in it['protocols']:
            if {'NSObject': 'NSObjectProtocol'}.get(adopted, adopted) not in self.rust.above(name):
                self.fault(name, f'adopts {adopted} here, not in the crates')
        for (kind, selector), stub in it['methods'].items():
            self.method(name, kind, selector, stub)

    def method(self, name, kind, selector, stub):
        called = f'{kind}[{name} {selector}]'
        self.counts['selectors'] += 1
        if any((kind, selector) in self.rust.methods.get(one, {}) for one in self.rust.above(name)):
            self.types(called, stub, lambda: self.rust.method(name, kind, selector))
            return
        other = '-+'[kind == '-']
        if any((other, selector) in self.rust.methods.get(one, {}) for one in self.rust.above(name)):
            self.fault(called, f'the crates have it as {other}, not {kind}')
            return
        elsewhere = sorted(n for n, found in self.rust.methods.items() if (kind, selector) in found)
        where = f'; elsewhere: {", ".join(elsewhere[:3])}' if elsewhere else ''
        self.fault(called, f'no such selector in the crates, in the class or above it{where}', True)

    def function(self, name, arguments, result, linkage):
        self.counts['functions'] += 1
        if linkage != 'C':
            self.fault(name, 'is not extern "C" here')
        if name not in self.rust.functions:
            self.fault(name, 'no such function in the crates', True)
            return
        found = self.rust.functions[name]
        self.types(name, (arguments, result),
                   lambda: ([self.rust.type(a.partition(':')[2]) for a in found[0]], self.rust.type(found[1])))

    def variable(self, name, kind, literals, linkage):
        if literals:
            value = int(literals[0]) << int(literals[1]) if len(literals) == 2 else int(literals[0])
            self.constant(name, kind.replace('const ', ''), value)
            return
        self.counts['constants'] += 1
        if linkage != 'C':
            self.fault(name, 'is not extern "C" here')
        if name not in self.rust.statics:
            self.fault(name, 'no such constant in the crates', True)
            return
        found = self.rust.statics[name]
        # Whether a constant of the system may be missing is a matter of its age.
        self.types(name, ([], kind), lambda: ([], self.rust.type(found).rstrip('?') + '~'))

    def enum(self, name, kind):
        if name not in self.rust.enums:
            self.fault(name, 'no such enumeration in the crates', True)
        else:
            self.types(name, ([], kind), lambda: ([], self.rust.type(self.rust.enums[name])))

    def constant(self, name, of, value):
        self.counts['constants'] += 1
        if name not in self.rust.values:
            self.fault(name, 'no such constant in the crates', True)
            return
        kind, text = self.rust.values[name]
        if kind != of:
            self.fault(name, f'belongs to {of} here, to {kind} in the crates')
        found = self.rust.value(text)
        if found != value:
            self.fault(name, f'is {value} here, {text if found is None else found} in the crates')

    def structure(self, name, fields):
        self.counts['structures'] += 1
        if name not in self.rust.structs:
            self.fault(name, 'no such structure in the crates', True)
            return
        found = self.rust.structs[name]
        if [f for f, _ in fields] != [f for f, _ in found]:
            self.fault(name, f'has {", ".join(f for f, _ in fields)} here, {", ".join(f for f, _ in found)} in the crates')
            return
        for (field, kind), (_, want) in zip(fields, found):
            self.types(f'{name}.{field}', ([], kind), lambda w=want: ([], self.rust.type(w).replace('*?', '*~')))


def selector_of(head):
    while '(' in head:
        head = re.sub(r'\([^()]*\)', ' ', head)
    return head.strip()[0], ''.join(re.findall(r'\w+\s*:', head)).replace(' ', '') or re.findall(r'\w+', head)[0]


def own_faults(name, text, rust, stubs):
    """Of the classes in an Objective-C++ file: methods that nobody declares, and protocols that want more than the stubs have."""
    text = re.sub(r'"(?:\\.|[^"\\\n])*"|//[^\n]*', lambda m: '""' if m[0][0] == '"' else '', text)
    heads = re.compile(r'^[-+]\s*\([^;{]*(?=[;{])', re.M)
    above, declared = {}, {}
    for m in re.finditer(r'@interface (\w+)\s*(?:\(\w*\)|:\s*(\w+))\s*(?:<([^>]*)>)?(.*?)@end', text, re.S):
        protocols = re.findall(r'\w+', m[3] or '')
        above.setdefault(m[1], []).extend([m[2]] * bool(m[2]) + protocols)
        declared.setdefault(m[1], set()).update(selector_of(h) for h in heads.findall(m[4]))
        for protocol in protocols:
            for kind, selector in rust.required(protocol):
                if not stubs.declares(protocol, kind, selector):
                    yield f'{name}: {m[1]} adopts {protocol}, which requires {kind}[{selector}], and the stubs do not have that'
    for m in re.finditer(r'@implementation (\w+)(.*?)@end', text, re.S):
        for kind, selector in map(selector_of, heads.findall(m[2])):
            if (kind, selector) not in declared.get(m[1], ()) and not any(stubs.declares(a, kind, selector) for a in above.get(m[1], ())):
                yield f'{name}: {kind}[{m[1]} {selector}] is declared neither by the class nor by one above it'


def uncovered_of(text):
    """NAME: reason, one a line."""
    out = {}
    for line in text.splitlines():
        if line and not line.startswith('#'):
            name, _, reason = line.rpartition(': ')
            if not reason or not name:
                sys.exit(f'uncovered.txt: no reason: {line}')
            out[name] = reason
    return out


def pinned_faults(lock, crates):
    """Crates that are not those of the lock file, by their checksums."""
    for name, checksum in re.findall(r'^name = "([\w-]+)"\nversion = .*\nsource = .*\nchecksum = "(\w+)"', lock, re.M):
        file = crates / name / '.cargo-checksum.json'
        if not file.exists() or json.loads(file.read_text(encoding='utf-8'))['package'] != checksum:
            yield f'{name}: not the version that crates/Cargo.lock pins'


def check(root, crates):
    here = root / HERE
    faults = list(pinned_faults((here / 'crates/Cargo.lock').read_text(encoding='utf-8'), crates))
    if faults:
        return faults, {}
    rust = Rust()
    for file in sorted(crates.glob('*/src/**/*.rs')):
        if not {'tests', 'macros', '__macros__'} & set(file.parts):
            rust.read(file.read_text(encoding='utf-8'))
    stubs = Stubs(here / 'stubs', rust.enums)
    comparison = Comparison(rust, stubs, uncovered_of((here / 'uncovered.txt').read_text(encoding='utf-8')))
    faults = comparison.run()
    for file in sorted((root / 'platform/ios').glob('*.mm')):
        faults += own_faults(file.name, file.read_text(encoding='utf-8'), rust, stubs)
    return faults, comparison.counts


SOUND_CRATE = """
unsafe impl NSObjectProtocol for NSObject {}
pub type NSInteger = isize;
pub type PlayerName = NSString;
extern_class!(
    #[unsafe(super(NSObject))]
    pub struct NSString;
);
extern_class!(
    #[unsafe(super(NSObject))]
    pub struct NSError;
);
extern_class!(
    #[unsafe(super(NSObject))]
    pub struct NSArray<ObjectType: ?Sized = AnyObject>;
);
extern_class!(
    #[unsafe(super(NSObject))]
    pub struct Player;
);
extern_class!(
    #[unsafe(super(Player, NSObject))]
    pub struct LoudPlayer;
);
impl Player {
    extern_methods!(
        /// Says "hush";
        #[unsafe(method(playerNamed:))]
        #[unsafe(method_family = none)]
        pub fn playerNamed(name: &PlayerName, mtm: MainThreadMarker) -> Option<Retained<Self>>;
        #[unsafe(method(play:from:error:_))]
        pub unsafe fn play_from_error(&self, kind: Kind, at: NSInteger) -> Result<(), Retained<NSError>>;
        #[unsafe(method(tell:))]
        pub unsafe fn tell(
            &self,
            then: Option<&block2::DynBlock<dyn Fn(Bool, *mut NSError) + 'static>>,
        );
        #[unsafe(method(names))]
        pub fn names(&self) -> Retained<NSArray<NSString>>;
        #[unsafe(method(isLoud))]
        pub fn isLoud(&self) -> bool;
        #[unsafe(method(setLoud:))]
        pub fn setLoud(&self, loud: bool);
    );
}
extern_class!(
    #[unsafe(super(NSObject))]
    pub struct Stranger;
);
impl Stranger {
    extern_methods!(
        #[unsafe(method(hum))]
        pub fn hum(&self);
    );
}
extern_protocol!(
    pub unsafe trait Listener: NSObjectProtocol {
        #[unsafe(method(player:ended:))]
        unsafe fn player_ended(&self, player: &Player, well: bool);
        #[optional]
        #[unsafe(method(playerPaused:))]
        unsafe fn playerPaused(&self, player: &Player);
    }
);
pub struct Kind(pub NSInteger);
impl Kind {
    #[doc(alias = "KindSoft")]
    pub const Soft: Self = Self(0);
    #[doc(alias = "KindHard")]
    pub const Hard: Self = Self(1 << 2);
}
pub struct Spot {
    pub x: c_double,
    pub y: c_double,
}
extern "C" {
    pub static PlayerEnded: &'static PlayerName;
    pub fn PlayerCount(at: Spot) -> u32;
}
"""
SOUND_STUB = """
#define NONNULL _Pragma("clang assume_nonnull begin")
typedef long NSInteger;
typedef bool BOOL;
NONNULL
@protocol NSObject
@end
__attribute__((objc_root_class))
@interface NSObject <NSObject>
@end
@interface NSString : NSObject
@end
@interface NSError : NSObject
@end
@interface NSArray<ObjectType> : NSObject
@end
typedef NSString* PlayerName;
typedef enum Kind : NSInteger Kind;
enum Kind : NSInteger { KindSoft, KindHard = 1 << 2 };
struct Spot { double x, y; };
typedef struct Spot Spot;
extern "C" PlayerName const PlayerEnded;
extern "C" unsigned int PlayerCount(Spot at);
@class Player;
@protocol Listener <NSObject>
- (void)player:(Player*)player ended:(BOOL)well;
@optional
- (void)playerPaused:(Player*)player;
@end
@interface Player : NSObject
+ (nullable instancetype)playerNamed:(NSString*)name;
- (BOOL)play:(Kind)kind from:(NSInteger)at error:(NSError* _Nullable* _Nullable)error;
- (void)tell:(void (^_Nullable)(BOOL, NSError* _Nullable))then;
@property(readonly) NSArray<NSString*>* names;
@property(getter=isLoud) BOOL loud;
@end
@interface LoudPlayer : Player
@end
#pragma clang assume_nonnull end
"""
SOUND_OWN = """
@interface Mine : NSObject <Listener>
- (void)own;
@end
@implementation Mine
- (void)own
{
}
- (void)player:(Player*)player ended:(BOOL)well
{
}
@end
"""
# What is planted, as what is there and what comes in its place, and what is said of it.
PLANTED = [
    ('- (BOOL)play:(Kind)kind from:', '- (BOOL)play:(Kind)kind at:', '-[Player play:at:error:]: no such selector'),
    ('+ (nullable instancetype)playerN', '- (nullable instancetype)playerN', '-[Player playerNamed:]: the crates have it as +, not -'),
    ('- (void)tell:', '+ (void)tell:', '+[Player tell:]: the crates have it as -, not +'),
    ('@interface LoudPlayer : Player', '@interface LoudPlayer : Player\n- (void)hum;', '-[LoudPlayer hum]: no such selector in the crates, in the class or above it; elsewhere: Stranger'),
    ('from:(NSInteger)at', 'from:(int)at', '-[Player play:from:error:]: argument 2 is int here, long in the crates'),
    ('play:(Kind)kind', 'play:(NSInteger)kind', '-[Player play:from:error:]: argument 1 is long here, Kind in the crates'),
    ('- (BOOL)play:', '- (void)play:', '-[Player play:from:error:]: the result is void here, BOOL in the crates'),
    ('(NSError* _Nullable* _Nullable)error', '(NSError*)error', '-[Player play:from:error:]: argument 3 is NSError* here'),
    ('+ (nullable instancetype)', '+ (instancetype)', '+[Player playerNamed:]: the result is instancetype here, instancetype? in'),
    ('playerNamed:(NSString*)', 'playerNamed:(nullable NSString*)', '+[Player playerNamed:]: argument 1 is NSString*? here, NSString* in'),
    ('(BOOL, NSError* _Nullable))', '(NSError* _Nullable))', '-[Player tell:]: argument 1 is ^(NSError*?)->void? here, ^(BOOL, NSError*?)->void? in'),
    ('tell:(void (^_Nullable)', 'tell:(void (^)', '-[Player tell:]: argument 1 is ^(BOOL, NSError*?)->void here'),
    ('NSArray<NSString*>* names', 'NSArray<NSError*>* names', '-[Player names]: the result is NSArray<NSError*>* here'),
    ('getter=isLoud) BOOL', 'getter=isLoud) int', '-[Player setLoud:]: argument 1 is int here, BOOL in the crates'),
    ('(getter=isLoud) BOOL', ' BOOL', '-[Player loud]: no such selector'),
    ('LoudPlayer : Player', 'LoudPlayer : NSObject', 'LoudPlayer: is a NSObject here, a Player in the crates'),
    ('LoudPlayer : Player', 'LoudPlayer : Player <Listener>', 'LoudPlayer: adopts Listener here, not in the crates'),
    ('LoudPlayer : Player', 'LoudestPlayer : Player', 'LoudestPlayer: the crates have no class of this name'),
    ('playerPaused:(Player*)', 'playerPaused:(NSString*)', '-[Listener playerPaused:]: argument 1 is NSString* here'),
    ('KindSoft,', 'KindSoft = 1,', 'KindSoft: is 1 here, 0 in the crates'),
    ('KindHard = 1 << 2', 'KindHard', 'KindHard: is 1 here, 4 in the crates'),
    ('KindHard', 'KindHarder', 'KindHarder: no such constant in the crates'),
    ('Kind : NSInteger', 'Kind : unsigned long', 'Kind: the result is unsigned long here, long in the crates'),
    ('double x, y', 'double y, x', 'Spot: has y, x here, x, y in the crates'),
    ('double x, y', 'float x; double y', 'Spot.x: the result is float here, double in the crates'),
    ('PlayerName const PlayerEnded', 'NSError* const PlayerEnded', 'PlayerEnded: the result is NSError* here, NSString*~ in'),
    ('PlayerName const PlayerEnded', 'PlayerName const PlayerBegan', 'PlayerBegan: no such constant'),
    ('"C" PlayerName', '"C++" PlayerName', 'PlayerEnded: is not extern "C" here'),
    ('"C" unsigned', '"C++" unsigned', 'PlayerCount: is not extern "C" here'),
    ('unsigned int PlayerCount(Spot at)', 'unsigned int PlayerCount(void)', 'PlayerCount: 0 arguments here, 1 in the crates'),
    ('unsigned int PlayerCount', 'unsigned int PlayersCount', 'PlayersCount: no such function'),
    ('- (void)player:(Player*)player ended:(BOOL)well;', '', 'Mine adopts Listener, which requires -[player:ended:]'),
    ('- (void)player:(Player*)player ended:(BOOL)well\n', '- (void)player:(Player*)player finished:(BOOL)well\n', '-[Mine player:finished:] is declared neither by'),
    ('- (void)own;\n', '', '-[Mine own] is declared neither by'),
    ('', '+[Player gone]: a reason\n', '+[Player gone]: listed in uncovered.txt, but'),
    ('', '-[Player names]: a reason\n', '-[Player names]: listed in uncovered.txt, but'),
]


def faults_in(folder, stub, own, listed):
    (folder / 'A.h').write_text(stub, encoding='utf-8')
    rust = Rust()
    rust.read(SOUND_CRATE)
    stubs = Stubs(folder, rust.enums)
    return Comparison(rust, stubs, uncovered_of(listed)).run() + list(own_faults('A.mm', own, rust, stubs))


def self_test():
    failed = 0
    with tempfile.TemporaryDirectory() as tmp:
        folder = pathlib.Path(tmp)
        sound = faults_in(folder, SOUND_STUB, SOUND_OWN, '')
        if sound:
            failed += 1
            print('found where there is none:', sound)
        for there, instead, expected in PLANTED:
            parts = [SOUND_STUB, SOUND_OWN, '']
            place = next((i for i, part in enumerate(parts) if there and there in part), 2)
            parts[place] = parts[place].replace(there, instead) if there else instead
            found = faults_in(folder, *parts)
            if not any(expected in fault for fault in found):
                failed += 1
                print(f'not found: {expected}: {found}')
        # What the crates do not have is no fault once it is listed.
        listed = faults_in(folder, SOUND_STUB.replace('KindHard', 'KindHarder'), SOUND_OWN, 'KindHarder: a reason\n')
        (folder / 'crate').mkdir()
        (folder / 'crate/.cargo-checksum.json').write_text('{"package": "12"}', encoding='utf-8')
        lock = 'name = "crate"\nversion = "1"\nsource = "there"\nchecksum = "%s"\n'
        pinned, other = (list(pinned_faults(lock % c, folder)) for c in ('12', '13'))
        if listed or pinned or len(other) != 1:
            failed += 1
            print('the list or the lock file:', listed, pinned, other)
    print(f'{len(PLANTED) + 2 - failed} passed, {failed} failed')
    return failed


if __name__ == '__main__':
    if sys.argv[1:] == ['--self-test']:
        sys.exit(1 if self_test() else 0)
    problems, counts = check(pathlib.Path(sys.argv[1]).resolve(), pathlib.Path(sys.argv[2]).resolve())
    print('\n'.join(problems) if problems else 'as in the crates: ' + ', '.join(f'{n} {what}' for what, n in counts.items()))
    sys.exit(1 if problems else 0)
