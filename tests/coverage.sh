#!/bin/sh
# What the tests of core reach.
# Usage: sh tests/coverage.sh [GCOVR-OPTION]...     for example --html-details build/coverage/report.html
#        Lines and branches of core/ by its own tests (tests/core and the command line's). Exit 0 only with 95 % of the
#        lines and 85 % of the branches; branches that only an exception takes do not count. Needs gcovr.
# Usage: sh tests/coverage.sh decisions
#        Decisions of core/diary, core/protocol, core/bath and core/situation by their own four test programs (MC/DC):
#        every condition was true and false, and each condition alone has turned its decision. Exit 0 only if
#        tests/coverage/reasons.txt names all that is left, and nothing else. Needs clang 19 or newer with its llvm.
set -eu
cd "$(dirname "$0")/.."

configured() {
    mkdir -p "$build"
    cmake -S . -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Coverage -DFIRSTDEW_APP=OFF "$@" >"$build/configure.log"
}

built() {
    cmake --build "$build" -j "${JOBS:-$(nproc)}" "$@" >"$build/build.log" || { tail -n 40 "$build/build.log"; exit 1; }
}

lines() {
    build=build/coverage
    configured -DCMAKE_CXX_FLAGS_COVERAGE="-O0 -g1 -Wno-maybe-uninitialized --coverage -fprofile-abs-path -fprofile-update=atomic"
    built
    find "$build" -name '*.gcda' -delete
    ctest --test-dir "$build" -j "$(nproc)" -E 'lint|hazards|package|fuzz|against-r' --output-on-failure >"$build/ctest.log" ||
        { tail -n 60 "$build/ctest.log"; exit 1; }
    gcovr --root . --object-directory "$build" --filter 'core/' --exclude-throw-branches --exclude-unreachable-branches \
        --print-summary --fail-under-line 95 --fail-under-branch 85 -j "$(nproc)" "$@" "$build"
}

decisions() {
    build=build/decisions
    for version in -19 -20 -21 none; do
        if command -v "clang++$version" && command -v "llvm-cov$version" && command -v "llvm-profdata$version"; then break; fi
    done >/dev/null
    [ "$version" != none ] || { echo "coverage.sh: no clang 19: apt-get install clang-19 libclang-rt-19-dev llvm-19" >&2; exit 1; }
    configured -DCMAKE_CXX_COMPILER="clang++$version" \
        -DCMAKE_CXX_FLAGS_COVERAGE="-O0 -fprofile-instr-generate -fcoverage-mapping -fcoverage-mcdc"
    # Built anew, so that clang says again which decisions it cannot count: those are to be written in parts.
    for folder in diary protocol bath situation; do
        rm -rf "$build/core/CMakeFiles/firstdew_$folder.dir/$folder"
    done
    # The build asks each program for its tests, and that is no run.
    LLVM_PROFILE_FILE=/dev/null built --target test_diary test_protocol test_bath test_situation
    if grep -E 'core/(diary|protocol|bath|situation)/[A-Za-z]+\.(cpp|h):.*unsupported MC/DC' "$build/build.log" | grep -v tests/; then
        exit 1
    fi
    rm -f "$build"/*.profraw
    objects=
    for folder in diary protocol bath situation; do
        LLVM_PROFILE_FILE="$build/$folder.profraw" "$build/tests/core/test_$folder" >"$build/test_$folder.log" 2>&1 ||
            { tail -n 60 "$build/test_$folder.log"; exit 1; }
        objects="$objects -object $build/tests/core/test_$folder"
    done
    "llvm-profdata$version" merge -sparse "$build"/*.profraw -o "$build/decisions.profdata"
    # shellcheck disable=SC2086  # one word each
    "llvm-cov$version" export -instr-profile "$build/decisions.profdata" $objects \
        -sources core/diary core/protocol core/bath core/situation >"$build/decisions.json" 2>"$build/export.log"
    "clang++$version" --version | head -n 1
    found=0
    python3 tests/coverage/decisions.py "$build/decisions.json" tests/coverage/reasons.txt >"$build/last.txt" || found=1
    cat "$build/last.txt"
    return $found
}

if [ "${1:-}" = decisions ]; then
    decisions
else
    lines "$@"
fi
