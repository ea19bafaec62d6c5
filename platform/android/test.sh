#!/bin/sh
# Links manifest and resources with aapt2, compiles the Java part and tests it on the JVM.
# Downloads from Maven Central, or the mirror in your Maven settings, on the first run. Last line: `N passed, N failed`.
set -eu
cd "$(dirname "$0")/../.."
sh platform/linux/setup.sh
made=$PWD/build/android
mkdir -p "$made/for-tests/com/android/tools"

# Android 16's classes want Java 21 or later. Where no such JDK is installed, Android 15's are taken, for which 17 is enough.
sdk=35
android=15-robolectric-13954326
for jdk in "${JAVA_HOME:-/usr/lib/jvm/default-java}" /usr/lib/jvm/*; do
    [ -x "$jdk/bin/javac" ] || continue
    version=$("$jdk/bin/javac" -version 2>&1 | sed 's/^javac \([0-9]*\).*/\1/')
    [ "$version" -ge 21 ] || continue
    export JAVA_HOME="$jdk"
    sdk=36
    android=16-robolectric-13921718
    break
done
maven() {
    mvn -B -f platform/android/pom.xml -Dandroid="$android" "$@"
}

rm -rf "$made/system"
maven -q validate || { echo "0 passed, 1 failed"; exit 1; }
(cd "$made/system" && jar xf monitor-*.aar classes.jar && mv classes.jar monitor.jar)
aapt2 compile --dir platform/android/package/res -o "$made/resources.zip"
# Debian's aapt2 is older than <queries> (Android 11).
sed '/<queries>/,/<\/queries>/d' platform/android/package/AndroidManifest.xml >"$made/AndroidManifest.xml"
aapt2 link -I "$made"/system/android-all-14-*.jar --manifest "$made/AndroidManifest.xml" -o "$made/resources.apk" "$made/resources.zip" 2>"$made/aapt.log" ||
    { cat "$made/aapt.log"; echo "0 passed, 1 failed"; exit 1; }
cat >"$made/for-tests/com/android/tools/test_config.properties" <<END
android_merged_manifest=$PWD/platform/android/package/AndroidManifest.xml
android_resource_apk=$made/resources.apk
android_custom_package=org.firstdew
END
echo "sdk=$sdk" >"$made/for-tests/robolectric.properties"

rm -rf "$made/surefire-reports"
maven test >"$made/test.log" 2>&1 || true
grep -E '^\[(ERROR|WARNING)\]|Tests run:' "$made/test.log" || true
count() { cat "$made"/surefire-reports/*.txt 2>/dev/null | sed -n "s/^Tests run:.*$1: \([0-9]*\).*/\1/p;" | awk '{ n += $1 } END { print n + 0 }'; }
run=$(cat "$made"/surefire-reports/*.txt 2>/dev/null | sed -n 's/^Tests run: \([0-9]*\).*/\1/p' | awk '{ n += $1 } END { print n + 0 }')
bad=$(($(count Failures) + $(count Errors) + $(count Skipped)))
[ "$run" -gt 0 ] || bad=1
echo "on the classes of API level $sdk"
echo "$((run > bad ? run - bad : 0)) passed, $bad failed"
[ "$bad" -eq 0 ]
