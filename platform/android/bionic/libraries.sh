#!/bin/sh
# Builds for Android what core links with, each once, into $PREFIX. core.sh calls it and sets the variables.
set -eu
: "${SOURCES:?}" "${PREFIX:?}" "${TOOLS:?}" "${WORK:?}" "${JOBS:?}"
here=$(cd "$(dirname "$0")" && pwd)
# A little optimised unless OPTIMIZE says otherwise: -O0 compiles in half the time, but what it makes is slow under the
# emulator. Linking always says -O1, so that the compiler makes its own C++ library once.
export CC="$TOOLS/cc" CXX="$TOOLS/c++" AR="$TOOLS/ar" RANLIB="$TOOLS/ranlib" LDFLAGS="-O1 -fPIC"
export CFLAGS="${OPTIMIZE:--O1} -fPIC" CXXFLAGS="${OPTIMIZE:--O1} -fPIC"
export PKG_CONFIG_LIBDIR="$PREFIX/lib/pkgconfig"
mkdir -p "$PREFIX/include" "$PREFIX/lib/pkgconfig"

by_cmake() { # NAME FOLDER OPTION...
    name=$1
    folder=$2
    shift 2
    cmake -S "$folder" -B "$WORK/$name" -G Ninja -DCMAKE_TOOLCHAIN_FILE="$here/bionic.cmake" -DCMAKE_BUILD_TYPE=None \
        -DCMAKE_INSTALL_PREFIX="$PREFIX" -DBUILD_SHARED_LIBS=OFF "$@"
    cmake --build "$WORK/$name" -j "$JOBS"
    cmake --install "$WORK/$name"
}
by_hand() { # NAME FOLDER FLAGS SOURCE...
    name=$1
    folder=$2
    flags=$3
    shift 3
    mkdir -p "$WORK/$name"
    for source in "$@"; do
        # shellcheck disable=SC2086  # several flags
        "$CC" $CFLAGS $flags -I"$folder" -c "$folder/$source" -o "$WORK/$name/$(basename "$source" .c).o"
    done
    rm -f "$PREFIX/lib/lib$name.a"
    "$AR" rcs "$PREFIX/lib/lib$name.a" "$WORK/$name"/*.o
}
described() { # NAME VERSION LIBRARIES
    printf 'prefix=%s\nName: %s\nDescription: %s\nVersion: %s\nLibs: -L${prefix}/lib %s\nCflags: -I${prefix}/include\n' \
        "$PREFIX" "$1" "$1" "$2" "$3" >"$PREFIX/lib/pkgconfig/$1.pc"
}

build_zlib() {
    by_hand z "$SOURCES/zlib" "-DHAVE_UNISTD_H -DHAVE_STDARG_H" adler32.c compress.c crc32.c deflate.c gzclose.c gzlib.c gzread.c \
        gzwrite.c infback.c inffast.c inflate.c inftrees.c trees.c uncompr.c zutil.c
    cp "$SOURCES/zlib/zlib.h" "$SOURCES/zlib/zconf.h" "$PREFIX/include/"
}
build_bzip2() {
    by_hand bz2 "$SOURCES/bzip2" "" blocksort.c huffman.c crctable.c randtable.c compress.c decompress.c bzlib.c
    cp "$SOURCES/bzip2/bzlib.h" "$PREFIX/include/"
}
build_qrencode() {
    by_hand qrencode "$SOURCES/qrencode" "-DSTATIC_IN_RELEASE=static -DMAJOR_VERSION=4 -DMINOR_VERSION=1 -DMICRO_VERSION=1 -DVERSION=\"4.1.1\"" \
        qrencode.c qrinput.c bitstream.c qrspec.c rsecc.c split.c mask.c mqrspec.c mmask.c
    cp "$SOURCES/qrencode/qrencode.h" "$PREFIX/include/"
    described libqrencode 4.1.1 -lqrencode
}
build_headers() {
    cp -r "$SOURCES/nlohmann-json/include/nlohmann" "$PREFIX/include/"
    mkdir -p "$PREFIX/include/catch2"
    cp "$SOURCES/catch2/single_include/catch2/catch.hpp" "$PREFIX/include/catch2/"
    mkdir -p "$PREFIX/lib/cmake/nlohmann_json"
    echo 'add_library(nlohmann_json::nlohmann_json INTERFACE IMPORTED)
set_target_properties(nlohmann_json::nlohmann_json PROPERTIES INTERFACE_INCLUDE_DIRECTORIES "${CMAKE_CURRENT_LIST_DIR}/../../../include")' \
        >"$PREFIX/lib/cmake/nlohmann_json/nlohmann_jsonConfig.cmake"
}
build_fmt() {
    by_cmake fmt "$SOURCES/fmtlib" -DFMT_DOC=OFF -DFMT_TEST=OFF
}
build_sqlitecpp() { # with the SQLite that comes in its source
    by_cmake sqlitecpp "$SOURCES/sqlitecpp" -DSQLITECPP_RUN_CPPLINT=OFF -DSQLITECPP_RUN_CPPCHECK=OFF -DSQLITECPP_INTERNAL_SQLITE=ON
    cp "$SOURCES/sqlitecpp/sqlite3/sqlite3.h" "$PREFIX/include/"
}
build_jsonc() {
    by_cmake jsonc "$SOURCES/json-c" -DDISABLE_WERROR=ON -DDISABLE_EXTRA_LIBS=ON -DBUILD_TESTING=OFF
}
build_botan() {
    mkdir -p "$WORK/botan"
    cd "$WORK/botan"
    # shellcheck disable=SC2046
    python3 "$SOURCES/botan/configure.py" --prefix="$PREFIX" --cc=clang --cc-bin="$CXX" --ar-command="$AR" --os=android --cpu=arm64 \
        --disable-shared-library --amalgamation --minimized-build --without-documentation --build-targets=static \
        --disable-neon --disable-armv8crypto \
        --enable-modules="$(tr '\n' ',' <"$SOURCES/rnp/ci/botan-modules")"
    # shellcheck disable=SC2086  # several flags
    "$CXX" $CXXFLAGS -std=c++11 -D_REENTRANT -DBOTAN_IS_BEING_BUILT -Ibuild/include -c botan_all.cpp -o botan_all.o
    rm -f "$PREFIX/lib/libbotan-2.a"
    "$AR" rcs "$PREFIX/lib/libbotan-2.a" botan_all.o
    mkdir -p "$PREFIX/include/botan-2"
    cp -rL build/include/botan "$PREFIX/include/botan-2/"
    cd "$here"
}
build_rnp() {
    by_cmake rnp "$SOURCES/rnp" -DBUILD_TESTING=OFF -DENABLE_DOC=OFF -DDOWNLOAD_GTEST=OFF -DDOWNLOAD_RUBYRNP=OFF \
        -DBOTAN2_INCLUDE_DIR="$PREFIX/include/botan-2" -DBOTAN2_LIBRARY="$PREFIX/lib/libbotan-2.a"
    described librnp 0.16.3 "-lrnp -lbotan-2 -ljson-c -lbz2 -lz"
}
build_zxing() { # its writer is not used, but the crate lacks what a build without it includes
    by_cmake zxing "$SOURCES/zxing-cpp/core" -DZXING_READERS=ON -DZXING_WRITERS=NEW -DZXING_USE_BUNDLED_ZINT=ON -DZXING_ENABLE_1D=OFF \
        -DZXING_ENABLE_AZTEC=OFF -DZXING_ENABLE_DATAMATRIX=OFF -DZXING_ENABLE_MAXICODE=OFF -DZXING_ENABLE_PDF417=OFF
}
build_rapidcheck() {
    by_cmake rapidcheck "$SOURCES/rapidcheck" -DRC_ENABLE_TESTS=OFF -DRC_ENABLE_EXAMPLES=OFF -DCMAKE_UNITY_BUILD=ON -DCMAKE_UNITY_BUILD_BATCH_SIZE=0
}

if [ "${1:-}" = --one ]; then # in a process of its own, so that every failure in it counts
    "build_$2"
    exit 0
fi
for library in ${*:-headers zlib bzip2 qrencode fmt sqlitecpp rapidcheck zxing jsonc botan rnp}; do
    [ ! -e "$PREFIX/$library.done" ] || continue
    echo "building $library"
    sh "$0" --one "$library" >"$WORK/$library.log" 2>&1 || { tail -n 30 "$WORK/$library.log" >&2; exit 1; }
    touch "$PREFIX/$library.done"
done
echo "$(find "$PREFIX" -maxdepth 1 -name '*.done' ! -name headers.done | grep -c .) libraries in place"
