#pragma once

#include "android/JavaSide.h"
#include "facts/LocalDate.h"
#include "ports/Notifier.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace firstdew::androidside
{

/// What a notice offers besides opening the app.
enum class Offer { Nothing, CheckIn, Start };

/// A reminder for later, which the system shows at its time with the app closed.
struct Planned {
    ports::Notice notice;
    facts::LocalTime at;
    Offer offer = Offer::Nothing;
};

/// What the person answered on a notice while the app was closed.
struct Answer {
    std::string key;
    std::string answer; ///< dry, clammy, or later (put off by an hour)
    facts::LocalTime at;
    long long recordedMs = 0;
};

/// What the system lets us do.
struct Leave {
    bool exact = false;   ///< alarms come to the minute; otherwise they may come late
    bool allowed = false; ///< notices are shown at all
};

/// Reminders through the system's alarms and notifications.
class AndroidNotifier : public ports::Notifier
{
public:
    /// `words` are the person's, by id: channel-reminders, channel-bath, may-come-late, missed-title, missed-text,
    /// dry, clammy, start, later.
    AndroidNotifier(const JavaSide& java, std::map<std::string, std::string> words);

    /// What is due now; together with what is planned it is all that the system holds.
    void show(const std::vector<ports::Notice>& due) override;
    /// The reminders still to come. Take answers() first: one that was put off would come at its old time again.
    void plan(std::vector<Planned> upcoming);
    /// In another language from now on.
    void speak(std::map<std::string, std::string> words);

    /// Answers not taken yet, oldest first. Once they are in the record, taken(how many).
    [[nodiscard]] facts::Result<std::vector<Answer>> answers() const;
    facts::Result<facts::Done> taken(std::size_t count) const;

    /// As of the last time that the system took our reminders; nothing before.
    [[nodiscard]] std::optional<Leave> leave() const { return m_leave; }
    /// Asks the person for leave to show notices.
    void askLeave() const;

private:
    void sync();

    const JavaSide& m_java;
    std::map<std::string, std::string> m_words;
    std::vector<ports::Notice> m_due;
    std::vector<Planned> m_planned;
    nlohmann::json m_held; ///< what the system took last
    std::optional<Leave> m_leave;
};

} // namespace firstdew::androidside
