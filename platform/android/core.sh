#!/bin/sh
# Compiles core and the port's C++ for Android on arm64 without Google's tools, and runs their tests on the C library of
# Android 6 under an emulator. ANDROID.md beside this file says what that shows and what it does not.
# Usage: sh platform/android/core.sh [--cache FOLDER] [TEST-PROGRAM]...      without a program: all of them
# Fetches some 200 MB once into FOLDER (~/.cache/firstdew-android). JOBS=N does N things at a time (as many as there
# are processors). Last line: `N passed, N failed`.
set -eu
cd "$(dirname "$0")/../.."
took='' since=$(date +%s)
cache=${XDG_CACHE_HOME:-$HOME/.cache}/firstdew-android
if [ "${1:-}" = --cache ]; then
    cache=$2
    shift 2
fi
programs=${*:-test_outlook test_journal test_bath test_situation test_exchange test_codec test_protocol test_diary test_android test_facts test_summary}
mkdir -p "$cache" build/bionic
cache=$(realpath "$cache")
made=$(realpath build/bionic)
parts=$PWD/platform/android/bionic
sh platform/linux/setup.sh
sh platform/linux/setup.sh android
sh "$parts/fetch.sh" "$cache"

logs=$made
. platform/linux/tally.sh
step() { # LABEL: in a process of its own, so that every failure in it counts
    tally "$1" sh "$parts/steps.sh" "$1"
}
lap() { # WHAT: keeps how long it took
    now=$(date +%s)
    took="$took $1 $(((now - since + 30) / 60))"
    since=$now
}
stop() { # MESSAGE
    echo "$1" >&2
    echo "$passed passed, $failed failed"
    exit 1
}
lap fetching

# The compiler's wrappers: what CMake and others call.
TOOLS=$made/tools PREFIX=$cache/prefix SOURCES=$cache/sources WORK=$cache/build JOBS=${JOBS:-$(nproc)} JNI_H=$cache/jni
lib=$cache/sysroot/lib
export cache made parts lib programs TOOLS PREFIX SOURCES WORK JOBS JNI_H
mkdir -p "$TOOLS" "$WORK" "$JNI_H"
cp -u "$SOURCES/android/libnativehelper/include_jni/jni.h" "$JNI_H/"
flags="-target aarch64-linux-android.26 -fno-sanitize=all -Wno-unused-command-line-argument -L$lib"
for tool in "cc $flags" "c++ $flags" ar ranlib ld.lld; do
    name=${tool%% *}
    printf '#!/bin/sh\nexport ZIG_GLOBAL_CACHE_DIR="%s" ZIG_LOCAL_CACHE_DIR="%s" ZIG_LIBC="%s"\nexec "%s" %s "$@"\n' \
        "$cache/zig-cache" "$cache/zig-cache" "$made/libc.txt" "$cache/zig/ziglang/zig" "$tool" >"$TOOLS/$name"
done
printf '#!/bin/sh\nexec env ANDROID_DATA=/data ANDROID_ROOT=/system TMPDIR=/tmp qemu-aarch64-static -L "%s" "$@"\n' "$made/android" >"$TOOLS/run"
chmod +x "$TOOLS"/*
printf 'include_dir=%s\nsys_include_dir=%s\ncrt_dir=%s\nmsvc_lib_dir=\nkernel32_lib_dir=\ngcc_dir=%s\ndarwin_sdk_dir=\n' \
    "$cache/sysroot/include" "$cache/sysroot/include" "$lib" "$lib" >"$made/libc.txt"

step sysroot
step layouts
step loader
[ "$failed" -eq 0 ] || stop "no sysroot, so nothing to compile with"
tally libraries sh "$parts/libraries.sh"
lap libraries
[ "$failed" -eq 0 ] || stop "not every library could be built"

step build
[ "$failed" -eq 0 ] || stop "not everything compiled"
step imports
lap compiling
# JOBS at a time, those that take longest first.
# shellcheck disable=SC2086  # one word a program
printf '%s\n' $programs | xargs -P "$JOBS" -n 1 sh "$parts/steps.sh" run
for program in $programs; do
    tally "$program" sh "$parts/steps.sh" ended "$program"
done
lap tests
echo "minutes:$took"
echo "left out: core/rehearsal's tests (minutes of arithmetic that test_outlook checks), all that needs Qt"
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
