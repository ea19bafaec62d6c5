#!/bin/sh
# Installs the Debian packages that are missing, as root or through sudo. With all of them there it changes nothing.
# Usage: sh platform/linux/setup.sh [--list | --cost] [run|tour|test]...
# Each word names a list, packages-WORD.txt; without a word: all three. --list prints what is missing, --cost how much
# that is with all it needs; both install nothing.
set -eu
cd "$(dirname "$0")"

only=
case ${1:-} in
--list | --cost)
    only=$1
    shift
    ;;
esac
[ $# -gt 0 ] || set -- run tour test
for list in "$@"; do
    [ -e "packages-$list.txt" ] || { echo "setup.sh: no list packages-$list.txt" >&2; exit 2; }
done
# One line a package: its name, or NAME|OTHER where Debian's releases call it differently.
wanted=$(for list in "$@"; do sed 's/[[:space:]]*#.*//; /^$/d' "packages-$list.txt"; done | sort -u)

# The lines of which no name is installed. dpkg-query answers for the names that it knows and fails for the others.
missing() {
    # shellcheck disable=SC2046  # one word a name
    there=$(dpkg-query -W -f='${Package} ${db:Status-Status}\n' $(echo "$wanted" | tr '|' ' ') 2>/dev/null |
        sed -n 's/ installed$//p' | sort -u | tr '\n' ' ')
    for line in $wanted; do
        found=no
        for name in $(echo "$line" | tr '|' ' '); do
            case " $there " in *" $name "*) found=yes ;; esac
        done
        [ $found = yes ] || echo "$line"
    done
}

# For each line the first name that this release has.
chosen() {
    for line in "$@"; do
        name=
        for candidate in $(echo "$line" | tr '|' ' '); do
            if apt-cache show "$candidate" >/dev/null 2>&1; then
                name=$candidate
                break
            fi
        done
        [ -n "$name" ] || { echo "setup.sh: this release has no package $line" >&2; exit 1; }
        echo "$name"
    done
}

lines=$(missing)
[ -n "$lines" ] || exit 0
if [ "$only" = --list ]; then
    # shellcheck disable=SC2086
    chosen $lines
    exit 0
fi
if [ "$only" = --cost ]; then
    # shellcheck disable=SC2046,SC2086
    LC_ALL=C apt-get install --assume-no --no-install-recommends $(chosen $lines) |
        grep -E 'newly installed|Need to get|After this operation'
    exit 0
fi
if [ "$(id -u)" -eq 0 ]; then
    as_root=
elif command -v sudo >/dev/null; then
    as_root=sudo
else
    echo "setup.sh: missing packages, and neither root nor sudo to install them:" $lines >&2
    exit 1
fi
# DPkg::Lock::Timeout: another apt may be at work.
$as_root apt-get -o DPkg::Lock::Timeout=600 update -qq
# shellcheck disable=SC2086
packages=$(chosen $lines)
echo "installing:" $packages
# shellcheck disable=SC2086
$as_root env DEBIAN_FRONTEND=noninteractive apt-get -o DPkg::Lock::Timeout=600 install -y -qq --no-install-recommends $packages
lines=$(missing)
[ -z "$lines" ] || { echo "setup.sh: still missing:" $lines >&2; exit 1; }
