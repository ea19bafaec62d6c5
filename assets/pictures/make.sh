#!/bin/sh
# Makes the README's pictures and those of the app stores anew, of the invented person's record.
# Usage: sh assets/pictures/make.sh [BUILD-FOLDER]     (build/test; needs firstdew, firstdew-cli and qml_pages built there, and rsvg-convert)
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

# The stores' pictures: of a window of 1000 by 700 for a desktop, those of the README for a phone, and the icon.
FIRSTDEW_SIZE=1000x700
export FIRSTDEW_SIZE
"$build/platform/app/firstdew" --store "$made/record.db" --test-now 2026-03-02T19:00 --self-test --pictures "$made" --size "$FIRSTDEW_SIZE" >/dev/null
"$build/tests/qml/qml_pages" "[.pictures]" >/dev/null
umask 022
mkdir -p assets/pictures/store
cp "$made/today-light.png" assets/pictures/store/today.png
cp "$made/run.png" assets/pictures/store/session.png
cp "$made/line.png" assets/pictures/store/prepare.png
cp "$made/diary-light.png" assets/pictures/store/diary.png
cp "$made/plan-light.png" assets/pictures/store/plan.png
phone=fastlane/metadata/android/en-US/images
mkdir -p "$phone/phoneScreenshots"
cp assets/pictures/today.png "$phone/phoneScreenshots/1-today.png"
cp assets/pictures/bath.png "$phone/phoneScreenshots/2-session.png"
cp assets/pictures/diary.png "$phone/phoneScreenshots/3-diary.png"
cp assets/pictures/why.png "$phone/phoneScreenshots/4-why.png"
rsvg-convert -w 512 -h 512 -o "$phone/icon.png" assets/desktop/firstdew.svg
