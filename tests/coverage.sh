#!/bin/sh
# Which lines and branches of core/ its own tests reach (tests/core and the command line's). Exit 0 only with 95 % of the
# lines and 85 % of the branches; branches that only an exception takes do not count.
# Usage: sh tests/coverage.sh [GCOVR-OPTION]...     for example --html-details build/coverage/report.html
set -eu
cd "$(dirname "$0")/.."
build=build/coverage
mkdir -p "$build"
cmake -S . -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Coverage -DFIRSTDEW_APP=OFF \
    -DCMAKE_CXX_FLAGS_COVERAGE="-O0 -g1 -Wno-maybe-uninitialized --coverage -fprofile-abs-path -fprofile-update=atomic" >"$build/configure.log"
cmake --build "$build" -j "$(nproc)" >"$build/build.log" || { tail -n 40 "$build/build.log"; exit 1; }
find "$build" -name '*.gcda' -delete
ctest --test-dir "$build" -j "$(nproc)" -E 'lint|hazards|package|fuzz|against-r' --output-on-failure >"$build/ctest.log" ||
    { tail -n 60 "$build/ctest.log"; exit 1; }
gcovr --root . --object-directory "$build" --filter 'core/' --exclude-throw-branches --exclude-unreachable-branches \
    --print-summary --fail-under-line 95 --fail-under-branch 85 -j "$(nproc)" "$@" "$build"
