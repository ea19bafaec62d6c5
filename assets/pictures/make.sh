#!/bin/sh
# Makes the README's pictures anew, of the invented person's record.
# Usage: sh assets/pictures/make.sh [BUILD-FOLDER]     (build/test; needs firstdew, firstdew-cli and qml_pages built there)
set -eu
cd "$(dirname "$0")/../.."
build=${1:-build/test}
made=$(mktemp -d)
trap 'rm -rf "$made"' EXIT
QT_QPA_PLATFORM=offscreen
FIRSTDEW_TEST=1
FIRSTDEW_PICTURES=$made
export QT_QPA_PLATFORM FIRSTDEW_TEST FIRSTDEW_PICTURES
"$build/platform/cli/firstdew-cli" demo --out "$made/record.db" --today 2026-03-02 >/dev/null
"$build/platform/app/firstdew" --store "$made/record.db" --test-now 2026-03-02T19:00 --self-test --pictures "$made" --size 390x844 >/dev/null
"$build/tests/qml/qml_pages" "[.pictures]" >/dev/null
cp "$made/today-light.png" assets/pictures/today.png
cp "$made/run.png" assets/pictures/bath.png
cp "$made/diary-light.png" assets/pictures/diary.png
cp "$made/whypage-light.png" assets/pictures/why.png
