#pragma once

// What has been checked of this folder, and what has not: there is no machine here with Apple's compiler and
// frameworks, so none of it was ever built or run on iOS. Its syntax and its use of our own headers are checked by
// clang against declarations that tests/ios/stubs repeats from Apple's documentation; how the system behaves is not
// checked.

#include "ports/Notifier.h"

#include <functional>
#include <map>
#include <memory>
#include <string>
#include <vector>

namespace firstdew::iosside {

/// Reminders through UserNotifications. The system holds what is planned, by the hour of the person's own clock, and
/// shows it with the app closed, after a restart and in another zone; it holds at most 64.
class AppleNotifier : public ports::Notifier {
public:
    /// `words` are the buttons', by id: dry, clammy, start, later. `opened` is called with the place to open.
    AppleNotifier(const std::map<std::string, std::string>& words,
                  std::function<void(const std::string& place)> opened);
    ~AppleNotifier() override;
    AppleNotifier(const AppleNotifier&) = delete;
    AppleNotifier& operator=(const AppleNotifier&) = delete;

    void show(const std::vector<ports::Notice>& due, const ports::Standing& standing) override;
    [[nodiscard]] bool plansAhead() const override { return true; }
    void plan(std::vector<ports::PlannedNotice> upcoming) override;
    [[nodiscard]] std::vector<ports::NoticeAnswer> answers() override;
    void dropAnswers(std::size_t count) override;
    /// The buttons in another language from now on.
    void speak(const std::map<std::string, std::string>& words);

private:
    struct Inside;
    std::unique_ptr<Inside> m_inside;
};

} // namespace firstdew::iosside
