#!/bin/sh
# Fuzzes every way in from outside, with the address and undefined-behaviour sanitizers.
# Usage: tests/fuzz/run.sh [SECONDS-EACH (600)] [TARGET...]
# The corpus grows in build-fuzz/corpus, beginning with the seeds kept in tests/fuzz/corpus.
set -eu
cd "$(dirname "$0")/../.."
seconds=${1:-600}
[ $# -gt 0 ] && shift
build=build-fuzz
cmake -S . -B $build -G Ninja -DCMAKE_BUILD_TYPE=RelWithDebInfo -DCMAKE_CXX_COMPILER=clang++-14 -DFIRSTDEW_APP=OFF \
      -DFIRSTDEW_TESTS=OFF -DFIRSTDEW_FUZZ=ON >/dev/null
[ $# -gt 0 ] || set -- caresheet record table backup journal
for target in "$@"; do
    ninja -C $build -j2 "fuzz_$target" >/dev/null
    mkdir -p "$build/corpus/$target"
    cp -n "tests/fuzz/corpus/$target"/* "$build/corpus/$target/" 2>/dev/null || true
    log=$build/fuzz_$target.log
    mute=1
    [ "$target" = backup ] && mute=3 # the OpenPGP library talks on standard error
    if "$build/tests/fuzz/fuzz_$target" -max_total_time="$seconds" -timeout=20 -rss_limit_mb=1500 -dict=tests/fuzz/words.dict -print_final_stats=1 \
        -close_fd_mask=$mute -artifact_prefix="$build/crash-$target-" "$build/corpus/$target" >"$log" 2>&1; then
        echo "$target: $(sed -n 's/^stat::number_of_executed_units: *//p' "$log") inputs, no crash, no leak"
    else
        tail -n 30 "$log"
        echo "$target: FAILED, see $log and $build/crash-$target-*"
        exit 1
    fi
done
