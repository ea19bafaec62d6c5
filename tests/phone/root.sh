#!/bin/sh
# Makes a root with a phone's shell in it: Debian 13 with phosh, phoc, squeekboard and feedbackd. Needs root and mmdebstrap.
# Usage: sh tests/phone/root.sh FOLDER          It is kept; remove the folder to begin anew.
set -eu
folder=${1:?usage: root.sh FOLDER}
[ ! -e "$folder/src" ] || exit 0
[ "$(id -u)" -eq 0 ] || { echo "root.sh: only root may make a root" >&2; exit 1; }
command -v mmdebstrap >/dev/null || { echo "root.sh: no mmdebstrap: sh platform/linux/setup.sh test" >&2; exit 1; }
packages=$(sed 's/[[:space:]]*#.*//; /^$/d' "$(dirname "$0")/packages.txt" | tr '\n' ',')
rm -rf "$folder.part"
mkdir -p "$(dirname "$folder")"
mmdebstrap --mode=root --variant=apt --include="${packages%,}" trixie "$folder.part" >"$folder.log" 2>&1 || { cat "$folder.log" >&2; exit 1; }
mkdir "$folder.part/src"
rm -rf "$folder"
mv "$folder.part" "$folder"
