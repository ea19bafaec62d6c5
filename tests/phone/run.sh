#!/bin/sh
# Runs the app in a real phone's shell, at 360 x 720 and on its side. Needs root, mmdebstrap and a build (sh platform/linux/test.sh).
# Usage: sh tests/phone/run.sh [BUILD [PICTURES]]      BUILD is build/test unless said otherwise; pictures go into that folder.
set -eu
cd "$(dirname "$0")/../.."
build=$(realpath "${1:-build/test}")
root=$(realpath -m build/root-phone)
sh tests/phone/root.sh "$root"
exec /usr/bin/python3 -W ignore tests/phone/phosh_test.py --app "$build/platform/app/firstdew" --cli "$build/platform/cli/firstdew-cli" --root "$root" \
    ${2:+--pictures "$2"}
