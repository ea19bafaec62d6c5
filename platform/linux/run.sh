#!/bin/sh
# Installs what is missing, builds Release, and opens the app on an invented person's record.
# Usage: sh platform/linux/run.sh [--tour [--out DIR]] [APP-OPTION]...
# With no display it runs the tour: the real app on a display, bus and sound of its own, used as a person would.
set -eu
cd "$(dirname "$0")/../.."
build=${BUILD:-build/release}

tour=no
if [ "${1:-}" = --tour ]; then
    tour=yes
    shift
elif [ -z "${DISPLAY:-}" ] && [ -z "${WAYLAND_DISPLAY:-}" ]; then
    tour=yes
fi
lists=run
[ $tour = no ] || lists="run tour"
# shellcheck disable=SC2086  # one word a list
sh platform/linux/setup.sh $lists
mkdir -p "$build"
cmake -S . -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DFIRSTDEW_TESTS=OFF >"$build/configure.log" 2>&1 ||
    { cat "$build/configure.log" >&2; exit 1; }
cmake --build "$build" -j "$(nproc)"
app=$(find "$build/platform" "$build/qml" -type f -name firstdew -perm -u+x 2>/dev/null | head -n 1)
[ -n "$app" ] || { echo "run.sh: the build made no app" >&2; exit 1; }

if [ $tour = yes ]; then
    exec /usr/bin/python3 tests/system/tour.py --app "$app" --cli "$build/platform/cli/firstdew-cli" "$@"
fi

# Made anew only when it is missing, so that what was tried out on it stays.
record=$build/demo.db
[ -e "$record" ] || "$build/platform/cli/firstdew-cli" demo --out "$record"
exec "$app" --store "$record" "$@"
