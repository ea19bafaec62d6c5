#!/bin/sh
# Packs the Java side, the resources and, where core.sh has built it, core as libfirstdew_native.so into an APK, signed
# with a throw-away key. Built and signed; native code run under a stand-in for Android; never started on Android. It has
# no interface, because Qt is not in it: it shows that each step of the packaging takes what we give it.
# Usage: sh platform/android/apk.sh      Last line: `N passed, N failed`. The APK: build/apk/firstdew-parts.apk
set -eu
cd "$(dirname "$0")/../.."
sh platform/linux/setup.sh
sh platform/linux/setup.sh android
made=$PWD/build/apk
library=$PWD/build/bionic/core/libfirstdew_native.so
package=platform/android/package
mkdir -p "$made"
logs=$made
. platform/linux/tally.sh
# In a shell of its own, so that every step in it counts.
steps() { # LABEL
    tally "$1" sh "$0" --step "$1"
}

# The system's classes, which the tests on the JVM compile against too, and the last dx, which needs no SDK.
classes() {
    for artefact in org.robolectric:android-all:14-robolectric-10818077 com.jakewharton.android.repackaged:dalvik-dx:16.0.1; do
        mvn -B -q -Dstyle.color=never dependency:copy -Dartifact="$artefact" -DoutputDirectory="$made"
    done
    rm -rf "$made/classes"
    mkdir "$made/classes"
    javac --release 8 -Xlint:all,-processing,-classfile,-options -Werror -cp "$made/android-all-14-robolectric-10818077.jar" \
        -d "$made/classes" "$package"/src/org/firstdew/*.java
    find "$made/classes" -name '*.class' | wc -l | sed 's/$/ classes, in the form of Java 8/'
}
# dx rewrites nothing. What Android has no class for, such as a lambda's, would stop the app where it is used.
dex() {
    java -cp "$made/dalvik-dx-16.0.1.jar" com.android.dx.command.Main --dex --min-sdk-version=28 --output="$made/classes.dex" "$made/classes"
    dexdump -d "$made/classes.dex" >"$made/classes.txt"
    if grep -E 'invoke-(custom|polymorphic)|Ljava/lang/invoke/|Ljava/util/(List|Set|Map);\.(of|copyOf)' "$made/classes.txt"; then
        echo "Android has no such thing"
        exit 1
    fi
    echo "$(stat -c %s "$made/classes.dex") bytes of bytecode, nothing in it that Android would not find"
}
resources() {
    rm -f "$made"/parts.*
    aapt2 compile --dir "$package/res" -o "$made/resources.zip"
    # Debian's aapt2 is older than <queries> (Android 11). What Gradle would remove while merging goes here, too.
    sed '/<queries>/,/<\/queries>/d; /tools:node="remove"/d' "$package/AndroidManifest.xml" >"$made/AndroidManifest.xml"
    aapt2 link -I "$made/android-all-14-robolectric-10818077.jar" --manifest "$made/AndroidManifest.xml" -o "$made/parts.apk" "$made/resources.zip"
    aapt2 dump badging "$made/parts.apk" >"$made/badging.txt"
    for said in "package: name='org.firstdew'" "sdkVersion:'28'" "targetSdkVersion:'36'" "uses-permission: name='android.permission.WAKE_LOCK'" \
        "uses-permission: name='android.permission.FOREGROUND_SERVICE_MEDIA_PLAYBACK'"; do
        grep -qF "$said" "$made/badging.txt" || { echo "the manifest does not say $said"; exit 1; }
    done
    if grep -E 'INTERNET|NETWORK' "$made/badging.txt"; then
        echo "it asks for the network"
        exit 1
    fi
    echo "$(aapt2 dump xmltree "$made/parts.apk" --file AndroidManifest.xml | grep -cE 'E: (activity|service|receiver|provider) ') parts in the manifest, read back by aapt2"
}
packed() {
    rm -rf "$made/lib"
    cp "$made/parts.apk" "$made/unaligned.apk"
    (cd "$made" && jar uf unaligned.apk classes.dex)
    if [ -e "$library" ]; then
        mkdir -p "$made/lib/arm64-v8a"
        aarch64-linux-gnu-strip -o "$made/lib/arm64-v8a/libfirstdew_native.so" "$library"
        (cd "$made" && jar uf unaligned.apk lib)
    fi
    zipalign -f -p 4 "$made/unaligned.apk" "$made/aligned.apk"
    zipalign -c -p 4 "$made/aligned.apk"
    echo "aligned"
}
signed() {
    rm -f "$made/test.keystore"
    keytool -genkeypair -keystore "$made/test.keystore" -storepass throw-away -alias test -keyalg EC -groupname secp256r1 -validity 2 \
        -dname "CN=throw-away test key"
    apksigner sign --ks "$made/test.keystore" --ks-pass pass:throw-away --min-sdk-version 28 --out "$made/firstdew-parts.apk" "$made/aligned.apk"
    rm "$made/test.keystore"
    apksigner verify --verbose --min-sdk-version 28 "$made/firstdew-parts.apk" >"$made/verified.txt"
    grep -q '^Verified using v3 scheme (APK Signature Scheme v3): true' "$made/verified.txt"
    # One byte changed has to be noticed.
    cp "$made/firstdew-parts.apk" "$made/changed.apk"
    printf x | dd of="$made/changed.apk" bs=1 seek=200 conv=notrunc status=none
    if apksigner verify --min-sdk-version 28 "$made/changed.apk" >/dev/null 2>&1; then
        echo "a changed byte was not noticed"
        exit 1
    fi
    echo "$(stat -c %s "$made/firstdew-parts.apk") bytes, $([ -e "$library" ] && echo with || echo without) native code; v3 verified, as Android 9 reads it"
}

if [ "${1:-}" = --step ]; then
    "$2"
    exit 0
fi
for step in classes dex resources packed signed; do
    [ "$failed" -gt 0 ] || steps "$step"
done
echo "built and signed; native code run under a stand-in for Android; never started on Android"
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
