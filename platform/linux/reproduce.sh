#!/bin/sh
# Builds the Debian package twice, as differently as it can, and compares: from two folders, as two users, at two times
# (the second four hundred days ahead), with two locales, time zones and umasks, without a cache of compiled files.
# Usage: sh platform/linux/reproduce.sh [WORK-FOLDER]     (as root, which gives itself up for two users; takes two whole builds)
# Prints both digests; the last line is "the same" or "not the same"; exit 0 only for the first.
set -eu
cd "$(dirname "$0")/../.."
[ "$(id -u)" -eq 0 ] || { echo "reproduce.sh: only root may build as two users" >&2; exit 1; }
sh platform/linux/setup.sh
work=${1:-build/reproduce}
rm -rf "$work"
mkdir -p "$work"
work=$(realpath "$work")

# USER-ID FOLDER: this tree's own files in a folder of that user. Both are made at the beginning: a first build takes long
# enough for somebody to change the tree.
copied() {
    mkdir -p "$2/home"
    git -c safe.directory="$PWD" ls-files -z | tar --null --files-from=- -cf - | tar -xf - -C "$2"
    chown -R "$1:$1" "$2"
}
# USER-ID FOLDER COMMAND...: the command run there as that user.
as() {
    user=$1
    folder=$2
    shift 2
    (cd "$folder" && setpriv --reuid="$user" --regid="$user" --clear-groups env -i PATH=/usr/bin:/bin HOME="$folder/home" CCACHE_DISABLE=1 "$@")
}
chmod 755 "$work"
copied 61001 "$work/one"
copied 61002 "$work/another/deeper/folder"
as 61001 "$work/one" LC_ALL=C.UTF-8 TZ=UTC sh -c 'umask 022; exec sh platform/linux/package.sh' >"$work/one.log" 2>&1 ||
    { tail "$work/one.log" >&2; echo "not the same"; exit 1; }
as 61002 "$work/another/deeper/folder" LC_ALL=C TZ=Pacific/Apia faketime -f +400d sh -c 'umask 077; exec sh platform/linux/package.sh' \
    >"$work/two.log" 2>&1 || { tail "$work/two.log" >&2; echo "not the same"; exit 1; }
one=$(tail -n 1 "$work/one.log")
two=$(tail -n 1 "$work/two.log")
sha256sum "$one" "$two"
if cmp "$one" "$two"; then
    echo "the same"
else
    mkdir "$work/a" "$work/b"
    dpkg-deb -R "$one" "$work/a"
    dpkg-deb -R "$two" "$work/b"
    diff -rq "$work/a" "$work/b" || true
    echo "not the same"
    exit 1
fi
