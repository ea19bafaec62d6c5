#!/bin/sh
# Builds for arm64, as a Linux phone runs it, and runs what was built under qemu. Last line: `N passed, N failed`.
# Usage: sh platform/linux/cross-arm64.sh          core, command line and their tests
#        sh platform/linux/cross-arm64.sh app      the app: its Debian package installed in an arm64 Debian, every page loaded, removed
#        sh platform/linux/cross-arm64.sh tour     the app used as a person would, as by run.sh --tour; PICTURES=folder keeps pictures
#        ONLY_BUILD=TARGET sh platform/linux/cross-arm64.sh     that program of core alone, and nothing run
# As root: it unpacks Debian's own arm64 libraries into the build folder (BUILD=folder, or build/arm64-SUITE and build/arm64-app-SUITE).
# For another release than this machine's: sh platform/linux/in-root.sh trixie sh platform/linux/cross-arm64.sh app
set -eu
cd "$(dirname "$0")/../.."
what=${1:-core}
case $what in
core | app | tour) ;;
*)
    echo "cross-arm64.sh: '$what' is none of 'core', 'app' and 'tour'" >&2
    exit 2
    ;;
esac

sh platform/linux/setup.sh
# shellcheck disable=SC1091
suite=$(. /etc/os-release && echo "$VERSION_CODENAME")
libraries=libc6-dev,libstdc++-$(aarch64-linux-gnu-g++ -dumpversion)-dev,catch2,libcli11-dev,libfmt-dev,libqrencode-dev,librapidcheck-dev,librnp-dev
libraries=$libraries,libsqlite3-dev,libsqlitecpp-dev,libzxing-dev,nlohmann-json3-dev,zlib1g-dev,tzdata
build=${BUILD:-build/arm64-$suite}
if [ "$what" != core ]; then
    build=${BUILD:-build/arm64-app-$suite}
    libraries=$libraries,qt6-base-dev,qt6-declarative-dev,qt6-multimedia-dev,qt6-speech-dev,qt6-svg-dev,qt6-tools-dev,qt6-tools-dev-tools
    libraries=$libraries,qt6-l10n-tools,libqpdf-dev,libpam0g-dev,libpulse-dev,libsndfile1-dev,libgl-dev,libvulkan-dev,qml6-module-qtquick,qml6-module-qtquick-layouts
    libraries=$libraries,qml6-module-qtquick-templates,qml6-module-qtqml,qml6-module-qtqml-models,qml6-module-qtqml-workerscript
fi
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
    # shellcheck disable=SC2046
    mmdebstrap --mode=root --arch=arm64 --variant=extract --hook-dir=/usr/share/mmdebstrap/hooks/merged-usr \
        --include="$libraries" "$suite" "$SYSROOT" $(sources) >"$build/sysroot.log" 2>&1 || { cat "$build/sysroot.log" >&2; exit 1; }
    [ -e "$SYSROOT/lib" ] || ln -s usr/lib "$SYSROOT/lib" # Debian 13 has it from a package that is not unpacked
    turn_links_inwards
    echo "$libraries" >"$build/libraries"
fi

PKG_CONFIG_SYSROOT_DIR=$SYSROOT
PKG_CONFIG_LIBDIR=$SYSROOT/usr/lib/aarch64-linux-gnu/pkgconfig:$SYSROOT/usr/share/pkgconfig
export PKG_CONFIG_SYSROOT_DIR PKG_CONFIG_LIBDIR
configure() {
    cmake -S . -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DCMAKE_TOOLCHAIN_FILE="$PWD/platform/linux/arm64.cmake" "$@" \
        >"$build/configure.log" 2>&1 || { cat "$build/configure.log" >&2; exit 1; }
}

logs=$build
. platform/linux/tally.sh
# A program of that build as one file, as tests start it. Looking through a folder is not led into the other root, opening a
# file is: Qt's folders by their full names.
emulated() { # PROGRAM
    file "$1" | grep -q 'ARM aarch64'
    qt=$SYSROOT/usr/lib/aarch64-linux-gnu/qt6
    printf '#!/bin/sh\nexport QT_PLUGIN_PATH="%s" QML_IMPORT_PATH="%s"\nexec qemu-aarch64-static -L "%s" "%s" "$@"\n' \
        "$qt/plugins" "$qt/qml" "$SYSROOT" "$1" >"$build/$(basename "$1").sh"
    chmod +x "$build/$(basename "$1").sh"
}

run_core() {
    configure -DFIRSTDEW_APP=OFF
    if [ -n "${ONLY_BUILD:-}" ]; then
        cmake --build "$build" -j "$(nproc)" --target "$ONLY_BUILD"
        exit 0
    fi
    # Without test_rehearsal: its simulated people take minutes under the emulator, by arithmetic that test_outlook checks.
    programs="test_facts test_diary test_protocol test_bath test_outlook test_situation test_codec test_journal test_summary test_exchange"
    # shellcheck disable=SC2086
    cmake --build "$build" -j "$(nproc)" --target firstdew-cli $programs
    emulated "$build/platform/cli/firstdew-cli"
    for test in tests/system/cli_store_test.py tests/system/cli_exchange_test.py tests/system/cli_care_sheet_test.py; do
        tally "$(basename "$test" .py)" /usr/bin/python3 "$test" "$build/firstdew-cli.sh"
    done
    # Each program as a whole: under the emulator, starting one takes longer than most of its tests.
    for program in $programs; do
        emulated "$build/tests/core/$program"
        tally "$program" "$build/$program.sh"
    done
}

# Qt's own tools (moc and the like) are those of this machine; they have to be of the same version as the libraries.
build_app() {
    tools=/usr/lib/$(dpkg-architecture -qDEB_BUILD_MULTIARCH)/cmake
    configure -DFIRSTDEW_TESTS=OFF -DFIRSTDEW_PACKAGE=ON -DCMAKE_INSTALL_PREFIX=/usr -DCMAKE_INSTALL_LIBDIR=lib/aarch64-linux-gnu -DQT_HOST_PATH=/usr \
        -DQT_HOST_PATH_CMAKE_DIR="$tools" -DQt6LinguistTools_DIR="$tools/Qt6LinguistTools" -DFIRSTDEW_PACKAGE_ARCHITECTURE=arm64
    cmake --build "$build" -j "$(nproc)"
}

# The packages that those programs load from. They have the same names for this machine's processor, whose list is at hand.
loaded_from() { # PROGRAM...
    for program in "$@"; do aarch64-linux-gnu-readelf --dynamic "$program"; done | sed -n 's/.*(NEEDED).*\[\(.*\)\]$/\1/p' |
        grep -v '^ld-linux' | sort -u | while read -r library; do
        dpkg-query --search "*/$(dpkg-architecture -qDEB_BUILD_MULTIARCH)/$library" | cut -d: -f1
    done | sort -u
}

run_app() {
    build_app
    named=$(loaded_from "$build/platform/app/firstdew" "$build/platform/cli/firstdew-cli" "$build"/platform/lib/*/firstdew/firstdew-speaker | tr '\n' ';')
    configure -DFIRSTDEW_PACKAGE_LIBRARIES="${named%;}"
    rm -f "$build"/*.deb
    tally package sh -c "cd '$build' && cpack --config CPackConfig.cmake && dpkg-deb -f firstdew_*_arm64.deb Architecture | grep -x arm64"
    tally installed sh platform/linux/emulating.sh /usr/bin/python3 tests/package/deb_test.py "$build"/firstdew_*_arm64.deb
}

# At a fifth of the tour's usual speed: what the app does in a second takes ten and more under the emulator.
run_tour() {
    build_app
    emulated "$build/platform/app/firstdew"
    emulated "$build/platform/cli/firstdew-cli"
    tally tour env PATIENCE=300 /usr/bin/python3 tests/system/tour.py --app "$build/firstdew.sh" --cli "$build/firstdew-cli.sh" --speed 3 \
        ${PICTURES:+--out "$PICTURES"}
}

"run_$what"
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
