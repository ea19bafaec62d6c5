#!/bin/sh
# Lives many phone-years and writes what was tried into table.md beside this file.
# Usage: sh tests/simulator/table.sh [YEARS [FIRST-SEED]]     (100 from seed 1; BUILD=folder with the built simulator)
# 100000 years want a build of type Release and two cores.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
build=${BUILD:-$here/../../build/test}
made=$(mktemp)
trap 'rm -f "$made"' EXIT
"$build/tests/simulator/simulator" --years "${1:-100}" --seed "${2:-1}" --processes "$(nproc)" >"$made"
{
    echo "# What the simulator tried"
    echo
    echo "Written by \`sh tests/simulator/table.sh ${1:-100} ${2:-1}\`."
    echo
    cat "$made"
} >"$here/table.md"
