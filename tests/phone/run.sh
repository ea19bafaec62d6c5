#!/bin/sh
# Builds the app and runs it in a real phone's shell, at 360 x 720 and on its side. Needs root and mmdebstrap.
# Usage: sh tests/phone/run.sh [SUITE [PICTURES]]      pictures go into the folder PICTURES, inside the tree
# SUITE is bookworm (Debian 12) or trixie (Debian 13): the app is built and runs in a root of that release, from build/SUITE.
# Without it this machine's own build is taken, build/test. The shell is that of Debian 13 each time.
set -eu
cd "$(dirname "$0")/../.."
suite=${1:-}
pictures=${2:-}
sh tests/phone/root.sh "$(realpath -m build/root-phone)"
# shellcheck disable=SC2016  # expanded by the inner shell
test='
    build=$1 pictures=$2
    mkdir -p "$build"
    [ -e "$build/build.ninja" ] || cmake -S . -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_FLAGS_DEBUG=-g1 >"$build/configure.log" 2>&1 ||
        { cat "$build/configure.log" >&2; exit 1; }
    cmake --build "$build" -j "$(nproc)" --target firstdew firstdew-cli
    exec /usr/bin/python3 -W ignore tests/phone/phosh_test.py --app "$build/platform/app/firstdew" --cli "$build/platform/cli/firstdew-cli" \
        --root "$(realpath build/root-phone)" ${pictures:+--pictures "$pictures"}'
if [ -n "$suite" ]; then
    LISTS="run tour test" exec sh platform/linux/in-root.sh "$suite" sh -euc "$test" sh "build/$suite" "$pictures"
fi
exec sh -euc "$test" sh build/test "$pictures"
