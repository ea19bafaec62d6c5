#!/bin/sh
# Links manifest and resources with aapt2, compiles the Java part and tests it on the JVM.
# Downloads from Maven Central, or the mirror in your Maven settings, on the first run. Last line: `N passed, N failed`.
set -eu
cd "$(dirname "$0")/../.."
sh platform/linux/setup.sh
made=$PWD/build/android
mkdir -p "$made/for-tests/com/android/tools"

mvn -B -q -f platform/android/pom.xml validate || { echo "0 passed, 1 failed"; exit 1; }
system=$(find "$made/system" -name 'android-all-instrumented-*.jar')
(cd "$made/system" && jar xf monitor-*.aar classes.jar && mv classes.jar monitor.jar)
aapt2 compile --dir platform/android/package/res -o "$made/resources.zip"
# Debian's aapt2 is older than <queries> (Android 11).
sed '/<queries>/,/<\/queries>/d' platform/android/package/AndroidManifest.xml >"$made/AndroidManifest.xml"
aapt2 link -I "$system" --manifest "$made/AndroidManifest.xml" -o "$made/resources.apk" "$made/resources.zip" 2>"$made/aapt.log" ||
    { cat "$made/aapt.log"; echo "0 passed, 1 failed"; exit 1; }
cat >"$made/for-tests/com/android/tools/test_config.properties" <<END
android_merged_manifest=$PWD/platform/android/package/AndroidManifest.xml
android_resource_apk=$made/resources.apk
android_custom_package=org.firstdew
END

rm -rf "$made/surefire-reports"
mvn -B -f platform/android/pom.xml test >"$made/test.log" 2>&1 || true
grep -E '^\[(ERROR|WARNING)\]|Tests run:' "$made/test.log" || true
count() { cat "$made"/surefire-reports/*.txt 2>/dev/null | sed -n "s/^Tests run:.*$1: \([0-9]*\).*/\1/p;" | awk '{ n += $1 } END { print n + 0 }'; }
run=$(cat "$made"/surefire-reports/*.txt 2>/dev/null | sed -n 's/^Tests run: \([0-9]*\).*/\1/p' | awk '{ n += $1 } END { print n + 0 }')
bad=$(($(count Failures) + $(count Errors) + $(count Skipped)))
[ "$run" -gt 0 ] || bad=1
echo "$((run > bad ? run - bad : 0)) passed, $bad failed"
[ "$bad" -eq 0 ]
