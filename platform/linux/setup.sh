#!/bin/sh
# Installs the Debian packages of packages.txt that are missing, as root or through sudo.
# With all of them there it changes nothing and asks for nothing.
set -eu
cd "$(dirname "$0")"

# Asks about all at once: dpkg-query names the unknown ones on standard error and fails, the others it answers.
missing() {
    listed=$(grep -Ev '^[[:space:]]*(#|$)' packages.txt | sort -u)
    # shellcheck disable=SC2086  # one word a package
    there=$(dpkg-query -W -f='${Package} ${db:Status-Status}\n' $listed 2>/dev/null | sed -n 's/ installed$//p' | sort -u)
    printf '%s\n' "$listed" | grep -Fxv "${there:-/}" || true
}

packages=$(missing)
[ -n "$packages" ] || exit 0
if [ "$(id -u)" -eq 0 ]; then
    as_root=
elif command -v sudo >/dev/null; then
    as_root=sudo
else
    echo "setup.sh: missing packages, and neither root nor sudo to install them:" $packages >&2
    exit 1
fi
echo "installing:" $packages
# DPkg::Lock::Timeout: another apt may be at work.
$as_root apt-get -o DPkg::Lock::Timeout=600 update -qq
# shellcheck disable=SC2086
$as_root env DEBIAN_FRONTEND=noninteractive apt-get -o DPkg::Lock::Timeout=600 install -y -qq --no-install-recommends $packages
packages=$(missing)
[ -z "$packages" ] || { echo "setup.sh: still missing:" $packages >&2; exit 1; }
