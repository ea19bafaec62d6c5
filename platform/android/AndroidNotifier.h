#pragma once

#include "android/JavaSide.h"
#include "ports/Notifier.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace firstdew::androidside {

/// What the system permits.
struct Leave {
    bool exact = false;   ///< alarms are on time to the minute; otherwise they may be late
    bool allowed = false; ///< the app may show notifications
};

/// Shows reminders through the system's alarms and notifications.
class AndroidNotifier : public ports::Notifier {
public:
    /// `words` are texts in the person's language, by id: channel-reminders, channel-bath, may-come-late, missed-title,
    /// missed-text, locked, widget-done, and the levels by their own names.
    AndroidNotifier(const JavaSide& java, std::map<std::string, std::string> words);

    /// Sets what is due now. The system holds these and the planned reminders, and nothing else.
    void show(const std::vector<ports::Notice>& due, const ports::Standing& standing) override;
    void ask(std::vector<ports::AskedSite> sites) override { m_asked = std::move(sites); }
    [[nodiscard]] bool plansAhead() const override { return true; }
    void plan(std::vector<ports::PlannedNotice> upcoming) override;
    /// An answer that cannot be read becomes an empty one and is logged.
    [[nodiscard]] std::vector<ports::NoticeAnswer> answers() override;
    void dropAnswers(std::size_t count) override;
    /// Changes the language of the texts.
    void speak(std::map<std::string, std::string> words);

    /// The permissions when the system last accepted reminders; nullopt before the first time.
    [[nodiscard]] std::optional<Leave> leave() const { return m_leave; }
    /// Asks the person for permission to show notifications.
    void askLeave() const;

private:
    void sync();

    const JavaSide& m_java;
    std::map<std::string, std::string> m_words;
    std::vector<ports::AskedSite> m_asked;
    std::vector<ports::Notice> m_due;
    std::vector<ports::PlannedNotice> m_planned;
    nlohmann::json m_held; ///< the reminders that the system accepted last
    std::optional<Leave> m_leave;
};

} // namespace firstdew::androidside
