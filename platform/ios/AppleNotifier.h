#pragma once

// This folder has never been linked or run for iOS, because that needs Apple's frameworks. clang compiles it for arm64
// against the declarations in tests/ios/stubs, and .ci/ios holds those against the objc2 crates, which were generated
// from Apple's headers. Nothing checks since which version of iOS a method exists, or how the system behaves.

#include "ports/Notifier.h"

#include <functional>
#include <map>
#include <memory>
#include <string>
#include <vector>

namespace firstdew::iosside {

/// Shows reminders through UserNotifications. The system stores planned reminders by local time. It shows them with the
/// app closed, after a restart and in another time zone. It stores at most 64.
class AppleNotifier : public ports::Notifier {
public:
    /// `words` are the labels of the buttons, by id: dry, clammy, start, later. `opened` gets the place to open.
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
    /// Changes the language of the buttons.
    void speak(const std::map<std::string, std::string>& words);

private:
    struct Inside;
    std::unique_ptr<Inside> m_inside;
};

} // namespace firstdew::iosside
