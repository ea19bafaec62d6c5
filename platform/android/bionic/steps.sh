#!/bin/sh
# The steps of core.sh, each called in a process of its own: sh steps.sh STEP [PROGRAM]. Variables come from there.
set -eu
: "${cache:?}" "${made:?}" "${parts:?}" "${lib:?}" "${programs:?}" "${TOOLS:?}" "${PREFIX:?}" "${WORK:?}" "${JOBS:?}" "${JNI_H:?}"

# Kept beside the libraries, which are built with it, until what it is made by changes.
sysroot() {
    from=$(cat "$parts/layouts.py" "$parts/sysroot.py" "$parts/crt.c" "$parts/since26.c" | sha256sum)
    if [ "$(cat "$cache/sysroot/made-by" 2>/dev/null)" = "$from" ] && [ -e "$made/layouts.c" ]; then
        echo "$(grep -c . "$lib/names.txt") names of bionic to link with, kept"
        exit 0
    fi
    rm -rf "$PREFIX" "$WORK"
    mkdir "$WORK"
    /usr/bin/python3 "$parts/layouts.py" "$cache/crates/libc-0.2.191" "$made"
    /usr/bin/python3 "$parts/sysroot.py" "$cache/zig/ziglang" "$cache/android6" "$made/figures.txt" "$cache/sysroot"
    for name in libc libm libdl; do
        "$TOOLS/cc" -c "$lib/$name.s" -o "$lib/$name.o"
        "$TOOLS/ld.lld" -shared -soname "$name.so" --version-script "$lib/libc.map" -o "$lib/$name.so" "$lib/$name.o"
    done
    : >"$made/nothing.c"
    "$TOOLS/cc" -O2 -fPIC -c "$parts/crt.c" -o "$lib/crtbegin_dynamic.o"
    "$TOOLS/cc" -O2 -fPIC -DFOR_LIBRARY -c "$parts/crt.c" -o "$lib/crtbegin_so.o"
    "$TOOLS/cc" -c "$made/nothing.c" -o "$lib/crtend_android.o"
    "$TOOLS/cc" -c "$made/nothing.c" -o "$lib/crtend_so.o"
    echo "$from" >"$cache/sysroot/made-by"
    echo "$(grep -c . "$lib/names.txt") names of bionic to link with"
}
layouts() { # the counted assertions are those whose numbers the headers define at all
    "$TOOLS/cc" -Werror -c "$made/layouts.c" -o "$made/layouts.o"
    echo "$("$TOOLS/cc" -E "$made/layouts.c" | grep -c '^_Static_assert(') sizes, places and numbers are as crate libc says"
}
loader() { # what the emulator shows a program as Android's /system
    mkdir -p "$made/android/system/bin" "$made/android/system/lib64" "$made/android/system/usr/share/zoneinfo"
    cp "$cache/android6/libc.so" "$cache/android6/libm.so" "$cache/android6/libdl.so" "$made/android/system/lib64/"
    cp "$cache/android6/tzdata" "$made/android/system/usr/share/zoneinfo/"
    "$TOOLS/cc" -O2 -ffreestanding -fno-stack-protector -fPIE -fvisibility=hidden -mno-outline-atomics -Wall -Wextra -Werror \
        -c "$parts/loader.c" -o "$made/loader.o"
    "$TOOLS/ld.lld" -pie -e _start --no-dynamic-linker -o "$made/android/system/bin/linker64" "$made/loader.o"
    "$TOOLS/cc" -O2 -fPIC -shared -Wl,-soname,libsince26.so "$parts/since26.c" -o "$made/android/system/lib64/libsince26.so"
    "$TOOLS/cc" -O1 -fPIE -pie "$parts/trial.c" -o "$made/trial"
    "$TOOLS/run" "$made/trial" one two
}
build() {
    export PKG_CONFIG_LIBDIR="$PREFIX/lib/pkgconfig"
    cmake -S "$parts" -B "$made/core" -G Ninja -DCMAKE_TOOLCHAIN_FILE="$parts/bionic.cmake" -DCMAKE_BUILD_TYPE=None \
        -DCMAKE_CXX_FLAGS="${OPTIMIZE:--O1} -fPIC" -DCMAKE_EXE_LINKER_FLAGS="-O1 -fPIC" -DCMAKE_SHARED_LINKER_FLAGS="-O1 -fPIC" \
        -DJNI_H="$JNI_H"
    # shellcheck disable=SC2086
    cmake --build "$made/core" -j "$JOBS" --target firstdew_native $programs -- -k 0
    # The folders' files are compiled together, so those that the groups name are counted.
    compiled=$(grep -hoE '"file": "[^"]+"' "$made/core/compile_commands.json" | sed 's/.*: "//; s/"$//' | while read -r file; do
        case $file in *unity_*) sed -n 's/^#include "\(.*\.cpp\)"/\1/p' "$file" ;; *) echo "$file" ;; esac
    done | grep -v /tests/ | grep -cE '/(core|platform/android)/[^/]+(/[^/]+)?\.cpp$' || true)
    echo "$compiled files of core and platform/android compiled"
}
# Names that a program or library asks for have to be bionic's, no later than Android 8's.
imports() {
    files=$made/core/libfirstdew_native.so
    for program in $programs; do
        files="$files $made/core/$program"
    done
    for file in $files; do
        readelf --dyn-syms -W "$file" | awk '$7 == "UND" && $5 == "GLOBAL" { sub("@.*", "", $8); print $8 }'
    done | sort -u >"$made/imports.txt"
    comm -23 "$made/imports.txt" "$lib/names.txt" >"$made/foreign.txt"
    # shellcheck disable=SC2086
    readelf -dW $files | sed -n 's/.*NEEDED.*\[\(.*\)\]/\1/p' | sort -u | grep -vxE 'lib(c|m|dl)\.so' >>"$made/foreign.txt" || true
    if [ -s "$made/foreign.txt" ]; then
        cat "$made/foreign.txt"
        exit 1
    fi
    # Phones of 2025 and later may have pages of 16 KB.
    if readelf -lW "$made/core/libfirstdew_native.so" | grep -E '^ *LOAD .* 0x(1|2)000$'; then
        echo "a segment fits pages of 4 or 8 KB only"
        exit 1
    fi
    echo "$(grep -c . "$made/imports.txt") names imported, all of them bionic's; segments fit pages of 16 KB"
}
# A test program whose end is not reached within an hour has failed.
run() { # PROGRAM
    rm -f "$made/$1.ended"
    began=$(date +%s)
    timeout 3600 "$TOOLS/run" "$made/core/$1" >"$made/$1.said" 2>&1 && code=0 || code=$?
    echo "$code $(($(date +%s) - began))" >"$made/$1.ended"
}
ended() { # PROGRAM
    read -r code seconds <"$made/$1.ended"
    cat "$made/$1.said"
    [ "$code" -ne 124 ] || echo "stopped after $seconds s, before its end"
    echo "$(grep . "$made/$1.said" | tail -n 1), in $seconds s, exit code $code"
    exit "$code"
}

"$@"
