# Sourced: `tally LABEL COMMAND...` runs a step, keeps what it says in $logs/LABEL.log and counts it; shown are the last line
# and, where it failed, the end. Needs $logs; sets $passed and $failed.
passed=0
failed=0
tally() { # LABEL COMMAND...
    label=$1
    shift
    if "$@" >"$logs/$label.log" 2>&1; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
        tail -n 40 "$logs/$label.log"
    fi
    echo "$label: $(grep . "$logs/$label.log" | tail -n 1)"
}
