#!/bin/sh
# Counts what a day and a session cost: instructions, bytes and wake-ups, against their budgets (tests/bench/counts.py).
# Usage: sh platform/linux/counts.sh          on this machine, by callgrind (apt-get install valgrind)
#        sh platform/linux/counts.sh arm64    under the emulator (apt-get install --no-install-recommends qemu-user), as root:
#                                             it unpacks Debian's arm64 libraries as cross-arm64.sh does
set -eu
cd "$(dirname "$0")/../.."
if [ "${1:-}" = arm64 ]; then
    build=${BUILD:-build/arm64}
    BUILD="$build" ONLY_BUILD=counted sh platform/linux/cross-arm64.sh
    exec /usr/bin/python3 tests/bench/counts.py "$build/tests/bench/counted" --arm64 "$(realpath "$build/sysroot")"
fi
# The tests' own build, which compiles core as a release does (core/CMakeLists.txt).
build=${BUILD:-build/test}
mkdir -p "$build"
[ -e "$build/build.ninja" ] || cmake -S . -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_FLAGS_DEBUG=-g1 >"$build/configure.log" 2>&1 ||
    { cat "$build/configure.log" >&2; exit 1; }
cmake --build "$build" -j "$(nproc)" --target counted
exec /usr/bin/python3 tests/bench/counts.py "$build/tests/bench/counted" --instructions
