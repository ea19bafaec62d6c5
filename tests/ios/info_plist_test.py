"""The app's entry for iOS: shortcuts lead to places that the app has, and what the system
shows of it is there in each language.

Usage: info_plist_test.py SOURCE-FOLDER"""
import pathlib
import plistlib
import re
import sys

SOURCE = pathlib.Path(sys.argv[1])
IOS = SOURCE / 'platform/ios'
with open(IOS / 'Info.plist.in', 'rb') as file:
    plist = plistlib.load(file)
assert plist['CFBundleIdentifier'] == 'org.firstdew' and 'audio' in plist['UIBackgroundModes'], plist

places = re.search(r'kPlaceTokens\{(.*?)\}', (SOURCE / 'qml/viewmodels/Tokens.h').read_text())[1]
items = plist['UIApplicationShortcutItems']
assert [i['UIApplicationShortcutItemType'] for i in items] == ['today', 'bath'], items
titles = {i['UIApplicationShortcutItemTitle'] for i in items}
for item in items:
    assert f'"{item["UIApplicationShortcutItemType"]}"' in places, places
texts = titles | {'NSFaceIDUsageDescription'}
assert plist['NSFaceIDUsageDescription'], plist
build = (SOURCE / 'platform/app/CMakeLists.txt').read_text()
for language in plist['CFBundleLocalizations']:
    if language == 'en':  # the titles themselves
        continue
    text = (IOS / f'{language}.lproj/InfoPlist.strings').read_text(encoding='utf-8')
    lines = dict(re.findall(r'^"(.*)" = "(.+)";$', text, re.M))
    assert set(lines) == texts and not titles & set(lines.values()), (language, lines)
    assert re.search(rf'foreach\(language.*\b{language}\b', build), f'{language} is not in the bundle'
