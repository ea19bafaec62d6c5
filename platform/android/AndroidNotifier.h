#pragma once

#include "android/JavaSide.h"
#include "ports/Notifier.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace firstdew::androidside {

/// What the system lets us do.
struct Leave {
    bool exact = false;   ///< alarms come to the minute; otherwise they may come late
    bool allowed = false; ///< notices are shown at all
};

/// Reminders through the system's alarms and notifications.
class AndroidNotifier : public ports::Notifier {
public:
    /// `words` are the person's, by id: channel-reminders, channel-bath, may-come-late, missed-title, missed-text.
    AndroidNotifier(const JavaSide& java, std::map<std::string, std::string> words);

    /// What is due now; together with what is planned it is all that the system holds.
    void show(const std::vector<ports::Notice>& due, const ports::Standing& standing) override;
    [[nodiscard]] bool plansAhead() const override { return true; }
    void plan(std::vector<ports::PlannedNotice> upcoming) override;
    /// One that cannot be read is an empty one, with a line in the log.
    [[nodiscard]] std::vector<ports::NoticeAnswer> answers() override;
    void dropAnswers(std::size_t count) override;
    /// In another language from now on.
    void speak(std::map<std::string, std::string> words);

    /// As of the last time that the system took our reminders; nothing before.
    [[nodiscard]] std::optional<Leave> leave() const { return m_leave; }
    /// Asks the person for leave to show notices.
    void askLeave() const;

private:
    void sync();

    const JavaSide& m_java;
    std::map<std::string, std::string> m_words;
    std::vector<ports::Notice> m_due;
    std::vector<ports::PlannedNotice> m_planned;
    nlohmann::json m_held; ///< what the system took last
    std::optional<Leave> m_leave;
};

} // namespace firstdew::androidside
