/* Stands in for Android's dynamic loader, so that a program runs on Android 6's own C library under an emulator. It
 * maps the libraries that the program names, binds them, makes the first thread as that library expects it, and starts
 * the program. It has no dlopen, no symbol versions and no thread-local storage in ELF's way (Android 8 has none
 * either). The places inside a thread are those of Android 6 for arm64, read from the library's own code. */
#include <elf.h>
#include <stddef.h>
#include <stdint.h>

enum { kMostLibraries = 16, kTid = 16, kCachedPid = 20, kSlots = 176, kThreadBytes = 1 << 16 };
enum {
    kOpenAt = 56,
    kClose = 57,
    kRead = 63,
    kWrite = 64,
    kExit = 94,
    kSetTid = 96,
    kGetPid = 172,
    kClone = 220,
    kExecute = 221,
    kMap = 222,
    kProtect = 226,
    kWait = 260
};
enum { kHere = -100, kReadable = 1, kWritable = 2, kExecutable = 4, kPrivate = 2, kFixed = 16, kAnonymous = 32 };
enum { kChildEnded = 17, kNotFound = 127, kInterrupted = -4 };

typedef struct {
    const char* name;
    uintptr_t base;
    const Elf64_Phdr* headers;
    size_t headerCount;
    const Elf64_Sym* symbols;
    const char* strings;
    const uint32_t* hash;
    const Elf64_Dyn* dynamic;
    int begun;
} Library;

typedef struct {
    int argc;
    char** argv;
    char** envp;
    Elf64_auxv_t* auxv;
    void** abortMessage;
} Arguments;

typedef struct {
    uintptr_t base;
    const char* name;
    const Elf64_Phdr* headers;
    uint16_t headerCount;
} Told;

static Library libraries[kMostLibraries];
static size_t libraryCount;
static Arguments arguments;
static void* abortMessage;
static _Alignas(16) char mainThread[kThreadBytes];
extern const Elf64_Dyn _DYNAMIC[] __attribute__((visibility("hidden")));

static long call(long number, long a, long b, long c, long d, long e, long f)
{
    register long x8 __asm__("x8") = number;
    register long x0 __asm__("x0") = a;
    register long x1 __asm__("x1") = b;
    register long x2 __asm__("x2") = c;
    register long x3 __asm__("x3") = d;
    register long x4 __asm__("x4") = e;
    register long x5 __asm__("x5") = f;
    __asm__ volatile("svc 0" : "+r"(x0) : "r"(x8), "r"(x1), "r"(x2), "r"(x3), "r"(x4), "r"(x5) : "memory", "cc");
    return x0;
}

void* memset(void* to, int byte, size_t count)
{
    for (volatile char* p = to; count > 0; --count)
        *p++ = (char)byte;
    return to;
}

static int same(const char* a, const char* b)
{
    while (*a != 0 && *a == *b) {
        ++a;
        ++b;
    }
    return *a == *b;
}

static void say(const char* text)
{
    size_t length = 0;
    while (text[length] != 0)
        ++length;
    call(kWrite, 2, (long)text, (long)length, 0, 0, 0);
}

static _Noreturn void fail(const char* what, const char* name)
{
    say("loader: ");
    say(what);
    say(": ");
    say(name);
    say("\n");
    for (;;)
        call(kExit, kNotFound, 0, 0, 0, 0, 0);
}

/* What this loader offers in place of Android's. */
static void* openNothing(const char* name, int flags)
{
    (void)name;
    (void)flags;
    return NULL;
}
static void* findNothing(void* library, const char* name)
{
    (void)library;
    (void)name;
    return NULL;
}
static int closeNothing(void* library)
{
    (void)library;
    return 0;
}
static const char* noLibraries(void) { return "no library can be opened here"; }
static int nameNothing(const void* address, void* info)
{
    (void)address;
    (void)info;
    return 0;
}
static int eachLibrary(int (*visit)(Told*, size_t, void*), void* data)
{
    int result = 0;
    for (size_t i = 0; i < libraryCount && result == 0; ++i) {
        Told told = {libraries[i].base, libraries[i].name, libraries[i].headers, (uint16_t)libraries[i].headerCount};
        result = visit(&told, sizeof told, data);
    }
    return result;
}
/* system(): Android's shell, /system/bin/sh, is not here. The shell of the machine that emulates runs the command. */
static int runCommand(const char* command)
{
    if (command == NULL)
        return 1;
    const long child = call(kClone, kChildEnded, 0, 0, 0, 0, 0);
    if (child == 0) {
        const char* words[] = {"sh", "-c", command, NULL};
        call(kExecute, (long)"/bin/sh", (long)words, (long)arguments.envp, 0, 0, 0);
        for (;;)
            call(kExit, kNotFound, 0, 0, 0, 0, 0);
    }
    int status = -1;
    while (child > 0 && call(kWait, child, (long)&status, 0, 0, 0, 0) == kInterrupted) {
    }
    return status;
}

static void* own(const char* name)
{
    if (same(name, "system"))
        return (void*)runCommand;
    if (same(name, "dlopen"))
        return (void*)openNothing;
    if (same(name, "dlsym"))
        return (void*)findNothing;
    if (same(name, "dlclose"))
        return (void*)closeNothing;
    if (same(name, "dlerror"))
        return (void*)noLibraries;
    if (same(name, "dladdr"))
        return (void*)nameNothing;
    if (same(name, "dl_iterate_phdr"))
        return (void*)eachLibrary;
    return NULL;
}

static uint64_t entry(const Elf64_Dyn* dynamic, int64_t tag)
{
    for (; dynamic->d_tag != DT_NULL; ++dynamic)
        if (dynamic->d_tag == tag)
            return dynamic->d_un.d_val;
    return 0;
}

static void readDynamic(Library* library)
{
    for (size_t i = 0; i < library->headerCount; ++i)
        if (library->headers[i].p_type == PT_DYNAMIC)
            library->dynamic = (const Elf64_Dyn*)(library->base + library->headers[i].p_vaddr);
    library->symbols = (const Elf64_Sym*)(library->base + entry(library->dynamic, DT_SYMTAB));
    library->strings = (const char*)(library->base + entry(library->dynamic, DT_STRTAB));
    library->hash = (const uint32_t*)(library->base + entry(library->dynamic, DT_GNU_HASH));
}

static int protection(uint32_t flags)
{
    return (flags & PF_R ? kReadable : 0) | (flags & PF_W ? kWritable : 0) | (flags & PF_X ? kExecutable : 0);
}

static void mapSegment(uintptr_t base, const Elf64_Phdr* part, long file, const char* path)
{
    const uintptr_t page = 4095;
    const uintptr_t from = (base + part->p_vaddr) & ~page;
    const uintptr_t filled = base + part->p_vaddr + part->p_filesz;
    const uintptr_t to = base + part->p_vaddr + part->p_memsz;
    const long offset = (long)(part->p_offset & ~page);
    if (part->p_filesz > 0 &&
        call(kMap, (long)from, (long)(filled - from), protection(part->p_flags), kPrivate | kFixed, file, offset) < 0)
        fail("cannot be mapped", path);
    if (to > filled && (part->p_flags & PF_W) != 0 && part->p_filesz > 0)
        memset((void*)filled, 0, (((filled + page) & ~page) < to ? ((filled + page) & ~page) : to) - filled);
    const uintptr_t rest = part->p_filesz > 0 ? (filled + page) & ~page : from;
    if (to > rest &&
        call(kMap, (long)rest, (long)(to - rest), protection(part->p_flags), kPrivate | kFixed | kAnonymous, -1, 0) < 0)
        fail("cannot be mapped", path);
}

static void map(Library* library, const char* path)
{
    static _Alignas(8) char head[kMostLibraries][4096];
    char* start = head[library - libraries];
    const long file = call(kOpenAt, kHere, (long)path, 0, 0, 0, 0);
    if (file < 0)
        fail("is not there", path);
    if (call(kRead, file, (long)start, 4096, 0, 0, 0) < (long)sizeof(Elf64_Ehdr))
        fail("cannot be read", path);
    const Elf64_Ehdr* header = (const Elf64_Ehdr*)start;
    library->headers = (const Elf64_Phdr*)(start + header->e_phoff);
    library->headerCount = header->e_phnum;
    uintptr_t end = 0;
    for (size_t i = 0; i < library->headerCount; ++i) {
        const Elf64_Phdr* part = &library->headers[i];
        if (part->p_type == PT_LOAD && part->p_vaddr + part->p_memsz > end)
            end = part->p_vaddr + part->p_memsz;
    }
    const long base = call(kMap, 0, (long)end, 0, kPrivate | kAnonymous, -1, 0);
    if (base < 0 && base > -4096)
        fail("finds no room", path);
    library->base = (uintptr_t)base;
    for (size_t i = 0; i < library->headerCount; ++i)
        if (library->headers[i].p_type == PT_LOAD)
            mapSegment(library->base, &library->headers[i], file, path);
    call(kClose, file, 0, 0, 0, 0, 0);
    readDynamic(library);
}

static Library* load(const char* name)
{
    static char paths[kMostLibraries][256];
    for (size_t i = 0; i < libraryCount; ++i)
        if (same(libraries[i].name, name))
            return &libraries[i];
    if (libraryCount == kMostLibraries)
        fail("is one library too many", name);
    Library* library = &libraries[libraryCount];
    char* path = paths[libraryCount++];
    const char* folder = "/system/lib64/";
    size_t at = 0;
    while (*folder != 0)
        path[at++] = *folder++;
    for (size_t i = 0; name[i] != 0 && at < sizeof paths[0] - 1; ++i)
        path[at++] = name[i];
    library->name = name;
    map(library, path);
    return library;
}

static const Elf64_Sym* findIn(const Library* library, const char* name, uint32_t code)
{
    const uint32_t buckets = library->hash[0];
    const uint32_t first = library->hash[1];
    const uint32_t* bucket = library->hash + 4 + 2 * library->hash[2];
    uint32_t i = bucket[code % buckets];
    if (i < first)
        return NULL;
    for (const uint32_t* chain = bucket + buckets + (i - first);; ++chain, ++i) {
        if ((*chain | 1) == (code | 1) && library->symbols[i].st_shndx != SHN_UNDEF &&
            same(library->strings + library->symbols[i].st_name, name))
            return &library->symbols[i];
        if ((*chain & 1) != 0)
            return NULL;
    }
}

static uintptr_t find(const char* name)
{
    uint32_t code = 5381;
    for (const char* c = name; *c != 0; ++c)
        code = code * 33 + (unsigned char)*c;
    void* here = own(name);
    if (here != NULL)
        return (uintptr_t)here;
    for (size_t i = 0; i < libraryCount; ++i) {
        const Elf64_Sym* symbol = findIn(&libraries[i], name, code);
        if (symbol != NULL)
            return libraries[i].base + symbol->st_value;
    }
    return 0;
}

static void bindAll(const Library* library, const Elf64_Rela* at, size_t bytes)
{
    for (const Elf64_Rela* end = at + bytes / sizeof *at; at < end; ++at) {
        const uint32_t kind = (uint32_t)ELF64_R_TYPE(at->r_info);
        uintptr_t* place = (uintptr_t*)(library->base + at->r_offset);
        if (kind == R_AARCH64_RELATIVE) {
            *place = library->base + (uintptr_t)at->r_addend;
            continue;
        }
        if (kind != R_AARCH64_GLOB_DAT && kind != R_AARCH64_JUMP_SLOT && kind != R_AARCH64_ABS64)
            fail("needs what this loader cannot do", library->name);
        const Elf64_Sym* symbol = &library->symbols[ELF64_R_SYM(at->r_info)];
        const char* name = library->strings + symbol->st_name;
        const uintptr_t found = find(name);
        if (found == 0 && ELF64_ST_BIND(symbol->st_info) != STB_WEAK)
            fail("has no such name", name);
        *place = found == 0 ? 0 : found + (uintptr_t)at->r_addend;
    }
}

static void construct(Library* library)
{
    if (library->begun)
        return;
    library->begun = 1;
    for (const Elf64_Dyn* d = library->dynamic; d->d_tag != DT_NULL; ++d)
        if (d->d_tag == DT_NEEDED)
            construct(load(library->strings + d->d_un.d_val));
    typedef void (*Start)(int, char**, char**);
    const Start* start = (const Start*)(library->base + entry(library->dynamic, DT_INIT_ARRAY));
    const size_t count = entry(library->dynamic, DT_INIT_ARRAYSZ) / sizeof *start;
    for (size_t i = 0; i < count; ++i)
        if (start[i] != NULL && (intptr_t)start[i] != -1)
            start[i](arguments.argc, arguments.argv, arguments.envp);
}

static void makeThread(uintptr_t guard)
{
    void** slots = (void**)(mainThread + kSlots);
    *(int*)(mainThread + kTid) = (int)call(kSetTid, (long)(mainThread + kTid), 0, 0, 0, 0, 0);
    *(int*)(mainThread + kCachedPid) = (int)call(kGetPid, 0, 0, 0, 0, 0, 0);
    slots[0] = slots;
    slots[1] = mainThread;
    slots[3] = &arguments;
    slots[5] = (void*)guard;
    __asm__ volatile("msr tpidr_el0, %0" : : "r"(slots));
}

static uintptr_t auxiliary(uint64_t kind)
{
    for (const Elf64_auxv_t* a = arguments.auxv; a->a_type != AT_NULL; ++a)
        if (a->a_type == kind)
            return a->a_un.a_val;
    return 0;
}

static void bindItself(uintptr_t base)
{
    const Elf64_Rela* at = (const Elf64_Rela*)(base + entry(_DYNAMIC, DT_RELA));
    for (size_t count = entry(_DYNAMIC, DT_RELASZ) / sizeof *at; count > 0; --count, ++at)
        *(uintptr_t*)(base + at->r_offset) = base + (uintptr_t)at->r_addend;
}

__attribute__((visibility("hidden"))) uintptr_t begin(uintptr_t* stack)
{
    arguments.argc = (int)stack[0];
    arguments.argv = (char**)(stack + 1);
    arguments.envp = arguments.argv + arguments.argc + 1;
    char** end = arguments.envp;
    while (*end != NULL)
        ++end;
    arguments.auxv = (Elf64_auxv_t*)(end + 1);
    arguments.abortMessage = &abortMessage;
    bindItself(auxiliary(AT_BASE));

    Library* program = &libraries[libraryCount++];
    program->name = "program";
    program->headers = (const Elf64_Phdr*)auxiliary(AT_PHDR);
    program->headerCount = auxiliary(AT_PHNUM);
    for (size_t i = 0; i < program->headerCount; ++i)
        if (program->headers[i].p_type == PT_PHDR)
            program->base = (uintptr_t)program->headers - program->headers[i].p_vaddr;
    readDynamic(program);
    for (size_t i = 0; i < libraryCount; ++i)
        for (const Elf64_Dyn* d = libraries[i].dynamic; d->d_tag != DT_NULL; ++d)
            if (d->d_tag == DT_NEEDED)
                load(libraries[i].strings + d->d_un.d_val);
    load("libsince26.so");
    makeThread(*(const uintptr_t*)auxiliary(AT_RANDOM));
    for (size_t i = 0; i < libraryCount; ++i) {
        const Elf64_Dyn* d = libraries[i].dynamic;
        bindAll(&libraries[i], (const Elf64_Rela*)(libraries[i].base + entry(d, DT_RELA)), entry(d, DT_RELASZ));
        bindAll(&libraries[i], (const Elf64_Rela*)(libraries[i].base + entry(d, DT_JMPREL)), entry(d, DT_PLTRELSZ));
    }
    for (size_t i = libraryCount; i > 0; --i)
        if (same(libraries[i - 1].name, "libc.so"))
            construct(&libraries[i - 1]);
    construct(program);
    return auxiliary(AT_ENTRY);
}

__asm__(".globl _start\n.hidden _start\n_start:\n mov x29, 0\n mov x30, 0\n mov x0, sp\n bl begin\n mov x16, x0\n br "
        "x16\n");
