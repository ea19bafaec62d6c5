#!/bin/sh
# Installs what is missing, builds, runs the tests. Last line: `N passed, N failed`; exit 0 only if none failed.
# Usage: sh platform/linux/test.sh [CTEST-OPTION]...     (-C Whole: the slow ones too; BUILD=folder to build elsewhere than build/test)
set -eu
cd "$(dirname "$0")/../.."
build=${BUILD:-build/test}
jobs=$(nproc)

fail() {
    echo "test.sh: $1" >&2
    echo "0 passed, 1 failed"
    exit 1
}

sh platform/linux/setup.sh || fail "the set-up failed"
mkdir -p "$build"
build=$(realpath "$build")
app=ON
[ -e platform/CMakeLists.txt ] && [ -e qml/CMakeLists.txt ] || app=OFF
# -g1: names and lines for a stack trace, without the variables; all of -g takes a third longer to compile.
cmake -S . -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_FLAGS_DEBUG=-g1 -DFIRSTDEW_APP=$app >"$build/configure.log" 2>&1 ||
    { cat "$build/configure.log" >&2; fail "configuring failed"; }
cmake --build "$build" -j "$jobs" || fail "the build failed"

results=$build/results.xml
rm -f "$results"
status=0
ctest --test-dir "$build" -j "$jobs" --output-on-failure --no-tests=error --output-junit "$results" "$@" || status=$?
[ -s "$results" ] || fail "ctest left no results"
# A test that did not run counts as failed: it has shown nothing.
count() { sed -n "s/^[[:space:]]*$1=\"\([0-9]*\)\".*/\1/p" "$results" | head -n 1; }
tests=$(count tests)
failed=$(($(count failures) + $(count disabled) + $(count skipped)))
passed=$((tests - failed))
[ "$status" -eq 0 ] || [ "$failed" -gt 0 ] || failed=1
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
