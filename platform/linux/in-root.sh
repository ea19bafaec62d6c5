#!/bin/sh
# Runs a command in a Debian of its own, with this tree at /src. Needs root and mmdebstrap.
# Usage: sh platform/linux/in-root.sh SUITE [COMMAND [ARGUMENT]...]
#        SUITE is bookworm (Debian 12) or trixie (Debian 13).
# Without a command: builds into build/SUITE and runs every test but the layout of the source, which clang-format 14
# of Debian 12 judges. LISTS="run test" installs those packages only (see setup.sh); LISTS= installs none.
# The root is kept in build/root-SUITE; remove that folder to begin anew.
set -eu
cd "$(dirname "$0")/../.."
suite=${1:-}
case $suite in
bookworm | trixie) shift ;;
*)
    echo "in-root.sh: '$suite' is neither 'bookworm' nor 'trixie'" >&2
    exit 2
    ;;
esac
[ "$(id -u)" -eq 0 ] || { echo "in-root.sh: only root may mount and change root" >&2; exit 1; }
if [ $# -eq 0 ]; then
    set -- env BUILD=/src/build/"$suite" sh platform/linux/test.sh -C Whole -E '^layout'
fi

mkdir -p build
root=$(realpath build)/root-$suite
if [ ! -e "$root/src" ]; then
    command -v mmdebstrap >/dev/null || { echo "in-root.sh: no mmdebstrap: sh platform/linux/setup.sh test" >&2; exit 1; }
    rm -rf "$root.part"
    mmdebstrap --mode=root --variant=apt "$suite" "$root.part" >"$root.log" 2>&1 || { cat "$root.log" >&2; exit 1; }
    mkdir "$root.part/src"
    rm -rf "$root"
    mv "$root.part" "$root"
fi
cp /etc/resolv.conf "$root/etc/resolv.conf"

# Mounts and processes end with the command: they are in namespaces of their own.
LISTS=${LISTS-run tour test}
export LISTS
# shellcheck disable=SC2016  # expanded by the inner shells
exec unshare --mount --pid --fork --kill-child sh -euc '
    root=$1
    shift
    mount --bind "$root" "$root" # a mount of its own, as commands inside may want namespaces of their own
    mount --bind . "$root/src"
    mount --rbind /dev "$root/dev"
    mount -t proc proc "$root/proc"
    mount -t tmpfs tmp "$root/tmp"
    mount -t tmpfs run "$root/run"
    exec chroot "$root" env -i HOME=/root PATH=/usr/sbin:/usr/bin:/sbin:/bin LANG=C.UTF-8 LISTS="$LISTS" sh -euc "
        cd /src
        [ -z \"\$LISTS\" ] || sh platform/linux/setup.sh \$LISTS
        exec \"\$@\"" sh "$@"' sh "$root" "$@"
