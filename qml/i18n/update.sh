#!/bin/sh
# Brings the translation files in step with the texts of the program; new ones are then filled in with Qt Linguist.
# Usage: sh qml/i18n/update.sh [LANGUAGE]...     a language named here is begun if it has no file yet
set -eu
cd "$(dirname "$0")/../.."
lupdate=/usr/lib/qt6/bin/lupdate
for language in "$@"; do
    : >>"qml/i18n/firstdew_$language.ts"
done
for file in qml/i18n/firstdew_*.ts; do
    [ -s "$file" ] || rm "$file"
    # English is the language of the source: only its plural forms are written down.
    only=
    [ "$file" != qml/i18n/firstdew_en.ts ] || only=-pluralonly
    # shellcheck disable=SC2086  # no option or one
    "$lupdate" -silent -locations none -no-obsolete $only qml platform -ts "$file"
done
