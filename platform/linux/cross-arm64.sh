#!/bin/sh
# Builds core, command line and core tests for arm64, as a Linux phone runs them, and runs them under qemu.
# Usage: sh platform/linux/cross-arm64.sh     (BUILD=folder to build elsewhere than build/arm64)
# As root: it unpacks Debian's own arm64 libraries into the build folder. Last line: `N passed, N failed`.
set -eu
cd "$(dirname "$0")/../.."
build=${BUILD:-build/arm64}
libraries=libc6-dev,libstdc++-12-dev,catch2,libcli11-dev,libfmt-dev,libqrencode-dev,librapidcheck-dev,librnp-dev
libraries=$libraries,libsqlite3-dev,libsqlitecpp-dev,libzxing-dev,nlohmann-json3-dev,zlib1g-dev,tzdata

sh platform/linux/setup.sh
mkdir -p "$build"
build=$(realpath "$build")
SYSROOT=$build/sysroot
export SYSROOT

# The archive that this machine itself uses, so that the versions are those of the ordinary build.
sources() {
    for list in /etc/apt/sources.list /etc/apt/sources.list.d/debian.sources; do
        [ ! -s "$list" ] || echo "$list"
    done
}

# Links that name the root of a running system would lead out of the folder.
turn_links_inwards() {
    find "$SYSROOT" -type l -lname '/*' -not -path "$SYSROOT/dev/*" | while read -r link; do
        ln -sfn "$(realpath -m --relative-to="$(dirname "$link")" "$SYSROOT$(readlink "$link")")" "$link"
    done
}

if [ "$(cat "$build/libraries" 2>/dev/null)" != "$libraries" ]; then
    rm -rf "$SYSROOT" "$build/libraries"
    # shellcheck disable=SC1091
    suite=$(. /etc/os-release && echo "$VERSION_CODENAME")
    # shellcheck disable=SC2046
    mmdebstrap --mode=root --arch=arm64 --variant=extract --hook-dir=/usr/share/mmdebstrap/hooks/merged-usr \
        --include="$libraries" "$suite" "$SYSROOT" $(sources) >"$build/sysroot.log" 2>&1 || { cat "$build/sysroot.log" >&2; exit 1; }
    turn_links_inwards
    echo "$libraries" >"$build/libraries"
fi

PKG_CONFIG_SYSROOT_DIR=$SYSROOT
PKG_CONFIG_LIBDIR=$SYSROOT/usr/lib/aarch64-linux-gnu/pkgconfig:$SYSROOT/usr/share/pkgconfig
export PKG_CONFIG_SYSROOT_DIR PKG_CONFIG_LIBDIR
cmake -S . -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DFIRSTDEW_APP=OFF \
    -DCMAKE_TOOLCHAIN_FILE="$PWD/platform/linux/arm64.cmake" >"$build/configure.log" 2>&1 || { cat "$build/configure.log" >&2; exit 1; }
cmake --build "$build" -j "$(nproc)" --target firstdew-cli tests/core/all

# The tests of the command line start it as one file.
cli=$build/firstdew-cli.sh
printf '#!/bin/sh\nexec qemu-aarch64-static -L "%s" "%s" "$@"\n' "$SYSROOT" "$build/platform/cli/firstdew-cli" >"$cli"
chmod +x "$cli"
file "$build/platform/cli/firstdew-cli" | grep -q 'ARM aarch64'

passed=0
failed=0
tally() { # LABEL COMMAND...
    label=$1
    shift
    if "$@" >"$build/$label.log" 2>&1; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
        cat "$build/$label.log"
    fi
    echo "$label: $(tail -n 1 "$build/$label.log")"
}
for test in tests/system/cli_store_test.py tests/system/cli_exchange_test.py tests/system/cli_care_sheet_test.py; do
    tally "$(basename "$test" .py)" /usr/bin/python3 "$test" "$cli"
done
results=$build/results.xml
rm -f "$results"
ctest --test-dir "$build/tests/core" -j "$(nproc)" --output-on-failure --no-tests=error --output-junit "$results" || true
[ -s "$results" ] || { echo "cross-arm64.sh: ctest left no results" >&2; failed=$((failed + 1)); }
count() { sed -n "s/^[[:space:]]*$1=\"\([0-9]*\)\".*/\1/p" "$results" | head -n 1; }
core_failed=$(($(count failures) + $(count disabled) + $(count skipped)))
passed=$((passed + $(count tests) - core_failed))
failed=$((failed + core_failed))
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
