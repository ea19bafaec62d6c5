#pragma once

#include <functional>
#include <string>

namespace firstdew::iosside {

/// Hears of the app's shortcuts on the home screen (Info.plist.in), also of the one that started the app. `opened` gets
/// the place to open, today or bath, on the system's thread.
void hearOfShortcuts(std::function<void(const std::string& place)> opened);

} // namespace firstdew::iosside
