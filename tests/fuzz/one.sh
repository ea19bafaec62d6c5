#!/bin/sh
# Runs one fuzzing program that was built by run.sh, from the seed FUZZ_SEED if there is one.
# Usage: tests/fuzz/one.sh BUILD-FOLDER SECONDS TARGET
set -eu
cd "$(dirname "$0")/../.."
build=$1 seconds=$2 target=$3
mkdir -p "$build/corpus/$target"
cp -n "tests/fuzz/corpus/$target"/* "$build/corpus/$target/" 2>/dev/null || true
log=$build/fuzz_$target.log
mute=1
[ "$target" = backup ] && mute=3 # the OpenPGP library talks on standard error
if "$build/tests/fuzz/fuzz_$target" -max_total_time="$seconds" ${FUZZ_SEED:+-seed="$FUZZ_SEED"} -timeout=20 -rss_limit_mb=1500 -dict=tests/fuzz/words.dict \
    -print_final_stats=1 -close_fd_mask=$mute -artifact_prefix="$build/crash-$target-" "$build/corpus/$target" >"$log" 2>&1; then
    echo "$target: $(sed -n 's/^stat::number_of_executed_units: *//p' "$log") inputs, no crash, no leak"
else
    tail -n 30 "$log"
    echo "$target: FAILED, see $log and $build/crash-$target-*"
    exit 1
fi
