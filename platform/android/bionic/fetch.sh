#!/bin/sh
# Fetches what core.sh builds with, each once, into the folder CACHE: from PyPI the compiler, from Maven Central Android
# 6's libraries and dx, from crates.io two crates, from Debian sources. Checksums pin what no lock file pins.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
cache=${1:?usage: fetch.sh CACHE}
mkdir -p "$cache/get" "$cache/sources"

checked() { # SHA256 FILE
    echo "$1  $2" | sha256sum -c --quiet - || { echo "fetch.sh: $2 is not what was expected" >&2; exit 1; }
}

if [ ! -x "$cache/zig/ziglang/zig" ]; then # clang 22, lld, libc++, musl's and the kernel's headers
    /usr/bin/python3 -m pip download -q --no-deps --only-binary :all: --platform manylinux2010_x86_64 -d "$cache/get" ziglang==0.17.0
    wheel=$(echo "$cache"/get/ziglang-0.17.0-*.whl)
    checked 97079827064a7492cce5541ceb438ae8003ce1e54e399676da2d62fb7a5dc08b "$wheel"
    mkdir -p "$cache/zig"
    (cd "$cache/zig" && jar xf "$wheel" && chmod +x ziglang/zig)
    rm "$wheel"
fi

from_maven() { # GROUP:NAME:VERSION SHA256
    file=$cache/get/$(echo "$1" | cut -d: -f2)-$(echo "$1" | cut -d: -f3).jar
    [ -e "$file" ] || mvn -B -q dependency:copy -Dartifact="$1" -DoutputDirectory="$cache/get"
    checked "$2" "$file"
}
# An emulator for the JVM that carries arm64 libraries of Android 6 with it, as the Android Open Source Project built them.
from_maven com.github.zhkl0228:unidbg-android:0.9.8 e2f71ffc5fdec4d4aaed71e7a9a2b06a9a3c7cc86316c573d1ea5bb5da8ab1fd
if [ ! -e "$cache/android6/libc.so" ]; then
    mkdir -p "$cache/android6" "$cache/part"
    (cd "$cache/part" && jar xf ../get/unidbg-android-0.9.8.jar android/sdk23)
    cp "$cache"/part/android/sdk23/lib64/*.so "$cache/part/android/sdk23/system/usr/share/zoneinfo/tzdata" "$cache/android6/"
    rm -r "$cache/part"
fi

if [ ! -e "$cache/crates/zxing-cpp-0.5.3" ]; then
    command -v cargo >/dev/null || sh "$here/../../linux/setup.sh" cargo
    rm -rf "$cache/crates"
    cargo vendor --quiet --locked --versioned-dirs --manifest-path "$here/crates/Cargo.toml" "$cache/crates" >/dev/null
    find "$cache/crates" -mindepth 1 -maxdepth 1 ! -name 'libc-0.2.191' ! -name 'zxing-cpp-0.5.3' -exec rm -r {} +
    rm -rf "$cache/sources/zxing-cpp"
    cp -r "$cache/crates/zxing-cpp-0.5.3" "$cache/sources/zxing-cpp"
fi

# Debian's sources of this release and the next, with lists of their own. Only the file of the original authors is used.
debian() {
    [ -e "$cache/apt/lists-read" ] && return
    mkdir -p "$cache/apt/lists/partial" "$cache/apt/cache"
    archive=$(sed -n 's/^URIs: *//p; s/^deb [^h]*\(http[^ ]*\) .*/\1/p' /etc/apt/sources.list.d/debian.sources /etc/apt/sources.list 2>/dev/null | head -n 1)
    for suite in bookworm trixie; do
        echo "deb-src [signed-by=/usr/share/keyrings/debian-archive-keyring.gpg] $archive $suite main"
    done >"$cache/apt/sources.list"
    printf 'Dir::Etc::sourcelist "%s/sources.list";\nDir::Etc::sourceparts "-";\nDir::State::lists "%s/lists";\nDir::Cache "%s/cache";\nAPT::Sandbox::User "root";\n' \
        "$cache/apt" "$cache/apt" "$cache/apt" >"$cache/apt/conf"
    APT_CONFIG=$cache/apt/conf apt-get update -qq
    touch "$cache/apt/lists-read"
}
grep -v '^#' "$here/artefacts.txt" | while read -r sum file package version folder; do
    [ ! -e "$cache/sources/$folder" ] || continue
    if [ ! -e "$cache/get/$file" ]; then
        debian
        # The archive may have dropped the packager's part of an old version; the original is checked below.
        (cd "$cache/get" && APT_CONFIG=$cache/apt/conf apt-get source -qq --download-only "$package=$version" >/dev/null 2>&1) || true
    fi
    checked "$sum" "$cache/get/$file"
    mkdir "$cache/sources/$folder.part"
    tar xf "$cache/get/$file" -C "$cache/sources/$folder.part"
    set -- "$cache/sources/$folder.part"/*
    [ $# -gt 1 ] || { mv "$1" "$cache/sources/$folder.only" && rmdir "$cache/sources/$folder.part" && mv "$cache/sources/$folder.only" "$cache/sources/$folder.part"; }
    mv "$cache/sources/$folder.part" "$cache/sources/$folder"
done
