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
cmake -S . -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=RelWithDebInfo -DCMAKE_CXX_COMPILER=clang++-14 -DFIRSTDEW_APP=OFF \
      -DFIRSTDEW_TESTS=OFF -DFIRSTDEW_FUZZ=ON >"$build/configure.log"
# shellcheck disable=SC2046  # one word a target
cmake --build "$build" -j "$(nproc)" --target $(printf 'fuzz_%s ' "$@") >"$build/build.log" || { tail -n 40 "$build/build.log"; exit 1; }
[ "$seconds" -gt 0 ] || exit 0
# shellcheck disable=SC2016  # expanded by the inner shell
printf '%s\n' "$@" | xargs -P 2 -I TARGET sh tests/fuzz/one.sh "$build" "$seconds" TARGET
