#!/bin/sh
# Builds Release and measures what Firstdew costs, every figure as a ratio to a floor measured in the same run.
# Usage: sh platform/linux/bench.sh [--only NAME,...]     see tests/bench/bench.py; best on a machine that does nothing else
set -eu
cd "$(dirname "$0")/../.."
build=${BUILD:-build/bench}

sh platform/linux/setup.sh
mkdir -p "$build"
cmake -S . -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release >"$build/configure.log" 2>&1 || { cat "$build/configure.log" >&2; exit 1; }
cmake --build "$build" -j "$(nproc)" --target firstdew firstdew-cli bench floor face_bench
exec /usr/bin/python3 tests/bench/bench.py "$build" "$@"
