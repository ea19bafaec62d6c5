#!/bin/sh
# Reads core with clang-tidy and cppcheck, and runs its tests under Valgrind. The last line says what was found; exit 0 only
# if that was nothing.
# Usage: sh tests/check.sh [tidy] [cppcheck] [valgrind]      without a word: all three
# Needs: apt-get install clang-tidy-14 cppcheck valgrind
set -eu
cd "$(dirname "$0")/.."
[ $# -gt 0 ] || set -- tidy cppcheck valgrind
build=build/check
mkdir -p "$build"
# No Debug: under Valgrind its standard library takes hours. -g alone, so that what is found has a line.
cmake -S . -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Check -DCMAKE_CXX_FLAGS_CHECK="-O1 -g" -DFIRSTDEW_APP=OFF >"$build/configure.log"
found=

tidy() {
    # What only g++ knows of the command line is no finding.
    find core -name '*.cpp' -print0 | xargs -0 -P "$(nproc)" -n 4 \
        clang-tidy-14 -quiet -p "$build" --extra-arg=-Wno-unknown-warning-option
}

cppcheck_core() {
    cppcheck --enable=warning,performance,portability --std=c++20 --language=c++ --inline-suppr --error-exitcode=1 --quiet -j "$(nproc)" \
        -I core --suppress=missingIncludeSystem core
}

# The tests that kill processes, break disks and draw thousands of records take hours there; what they run, the others run too.
valgrind_tests() {
    cmake --build "$build" -j "$(nproc)" --target test_facts test_protocol test_bath test_situation test_journal test_summary test_exchange test_codec >"$build/build.log" ||
        { tail -n 40 "$build/build.log"; return 1; }
    for name in facts protocol bath situation journal summary; do
        valgrind --quiet --leak-check=full --errors-for-leak-kinds=definite --error-exitcode=1 \
            "$build/tests/core/test_$name" "~[fault]~[property]~[long]" >"$build/valgrind_$name.log" 2>&1 ||
            { echo "valgrind: test_$name"; tail -n 40 "$build/valgrind_$name.log"; return 1; }
    done
}

for what in "$@"; do
    case $what in
    tidy) tidy || found="$found clang-tidy" ;;
    cppcheck) cppcheck_core || found="$found cppcheck" ;;
    valgrind) valgrind_tests || found="$found valgrind" ;;
    *) echo "check.sh: '$what' is none of tidy, cppcheck, valgrind" >&2; exit 2 ;;
    esac
done
[ -z "$found" ] || { echo "found something:$found"; exit 1; }
echo "nothing found by: $*"
