#!/bin/sh
# Fuzzes every way in from outside, with the address and undefined-behaviour sanitizers, two targets at a time.
# Usage: tests/fuzz/run.sh [SECONDS-EACH (600)] [TARGET...]     SECONDS-EACH 0: build alone
# The corpus grows in build/fuzz/corpus, beginning with the inputs kept in tests/fuzz/corpus; keep.sh keeps what is new.
set -eu
cd "$(dirname "$0")/../.."
seconds=${1:-600}
[ $# -gt 0 ] && shift
[ $# -gt 0 ] || set -- caresheet record table backup journal engine
build=${FUZZ_BUILD:-build/fuzz}
mkdir -p "$build"

# The oldest clang from 14 on that can link a fuzzing program (its run-time library is a package of its own).
find_clang() {
    trial=$(mktemp -d)
    echo 'extern "C" int LLVMFuzzerTestOneInput(const unsigned char*, unsigned long) { return 0; }' >"$trial/trial.cpp"
    found=
    for clang in ${FUZZ_CLANG:-clang++-14 clang++-15 clang++-16 clang++-17 clang++-18 clang++-19 clang++-20 clang++}; do
        [ "$("$clang" -dumpversion 2>/dev/null | cut -d. -f1)" -ge 14 ] 2>/dev/null || continue
        if "$clang" -fsanitize=fuzzer,address,undefined "$trial/trial.cpp" -o "$trial/trial" 2>/dev/null; then
            found=$clang
            break
        fi
    done
    rm -r "$trial"
    [ -n "$found" ] || { echo "run.sh: no clang++ 14 or newer with libFuzzer: sh platform/linux/setup.sh test" >&2; return 1; }
    echo "$found"
}
clang=$(find_clang)
cmake -S . -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=RelWithDebInfo -DCMAKE_CXX_COMPILER="$clang" -DFIRSTDEW_APP=OFF \
      -DFIRSTDEW_TESTS=OFF -DFIRSTDEW_FUZZ=ON >"$build/configure.log"
# shellcheck disable=SC2046  # one word a target
cmake --build "$build" -j "$(nproc)" --target $(printf 'fuzz_%s ' "$@") >"$build/build.log" || { tail -n 40 "$build/build.log"; exit 1; }
[ "$seconds" -gt 0 ] || exit 0
# shellcheck disable=SC2016  # expanded by the inner shell
printf '%s\n' "$@" | xargs -P 2 -I TARGET sh tests/fuzz/one.sh "$build" "$seconds" TARGET
