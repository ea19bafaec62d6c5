#!/bin/sh
# Builds the Debian package of the app and the command line, and prints its path as the last line.
# Usage: sh platform/linux/package.sh        (BUILD=folder to build elsewhere than build/package)
set -eu
cd "$(dirname "$0")/../.."
build=${BUILD:-build/package}

sh platform/linux/setup.sh
# The same moment in every file of the package, and no folder of the builder, so that the same source gives the same
# package; reproduce.sh looks for it.
SOURCE_DATE_EPOCH=$(dpkg-parsechangelog -l platform/linux/package/changelog -S Timestamp)
LC_ALL=C.UTF-8
TZ=UTC
export SOURCE_DATE_EPOCH LC_ALL TZ
umask 022
# Debian's hardening flags; without -g, since the package is stripped all the same.
DEB_BUILD_MAINT_OPTIONS=hardening=+all
DEB_CXXFLAGS_MAINT_STRIP=-g
export DEB_BUILD_MAINT_OPTIONS DEB_CXXFLAGS_MAINT_STRIP
CXXFLAGS="$(dpkg-buildflags --get CXXFLAGS) $(dpkg-buildflags --get CPPFLAGS)"
LDFLAGS=$(dpkg-buildflags --get LDFLAGS)
export CXXFLAGS LDFLAGS
mkdir -p "$build"
cmake -S . -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DCMAKE_INSTALL_PREFIX=/usr -DFIRSTDEW_TESTS=OFF \
    -DFIRSTDEW_PACKAGE=ON >"$build/configure.log" 2>&1 || { cat "$build/configure.log" >&2; exit 1; }
cmake --build "$build" -j "$(nproc)"
rm -f "$build"/*.deb
speaker=$(find "$build/platform" -name firstdew-speaker -type f)
/usr/bin/python3 platform/linux/sbom.py "$build" "$build/package-files/firstdew.cdx.json" \
    firstdew="$build/platform/app/firstdew" firstdew-cli="$build/platform/cli/firstdew-cli" ${speaker:+firstdew-speaker="$speaker"}
(cd "$build" && cpack --config CPackConfig.cmake >package.log 2>&1) || { cat "$build/package.log" >&2; exit 1; }
find "$(realpath "$build")" -maxdepth 1 -name 'firstdew_*.deb' -print
