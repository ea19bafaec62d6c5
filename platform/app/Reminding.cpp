#include "Reminding.h"

#include "situation/Reminders.h"
#include "situation/Sites.h"
#include "words/Sentences.h"

#include <algorithm>

namespace firstdew::app {

using namespace facts;
using situation::ReminderKind;

namespace {

constexpr int kLaterMinutes = 60; // our own choice
constexpr int kMinuteMs = 60'000;

bool asksForBath(ReminderKind kind)
{
    return kind == ReminderKind::CourseSession || kind == ReminderKind::TopUpDue || kind == ReminderKind::FirstDew;
}

std::optional<Level> levelOf(const QString& action)
{
    const auto level = viewmodels::valueOf<Level>(action);
    return level == Level::Dry || level == Level::Clammy ? level : std::nullopt;
}

std::vector<ports::NoticeAction> actionsOf(const situation::Reminder& r)
{
    const auto named = [](const char* id, const QString& label) { return ports::NoticeAction{id, label.toStdString()}; };
    if (r.kind == ReminderKind::CheckIn)
        return {named("dry", words::levelName(Level::Dry)), named("clammy", words::levelName(Level::Clammy)), named("later", Reminding::tr("Later"))};
    if (asksForBath(r.kind))
        return {named("start", Reminding::tr("Start")), named("later", Reminding::tr("Later"))};
    return {named("later", Reminding::tr("Later"))};
}

ports::Notice noticeOf(const situation::Reminder& r)
{
    return {r.key, words::reminderTitle(r).toStdString(), words::reminderText(r).toStdString(), actionsOf(r)};
}

ports::Offer offerOf(ReminderKind kind)
{
    return kind == ReminderKind::CheckIn ? ports::Offer::CheckIn : asksForBath(kind) ? ports::Offer::Start : ports::Offer::Nothing;
}

} // namespace

Reminding::Reminding(viewmodels::Store& store, ports::Notifier& notifier) : m_store(store), m_notifier(notifier)
{
    m_minute.setInterval(kMinuteMs);
    connect(&m_minute, &QTimer::timeout, this, &Reminding::look);
    connect(&store, &viewmodels::Store::changed, this, &Reminding::look);
    m_minute.start();
    look();
}

void Reminding::look()
{
    std::vector<ports::Notice> notices;
    for (const auto& r : situation::dueReminders(m_store.record(), m_store.now()))
        notices.push_back(noticeOf(r));
    m_notifier.show(notices);
    if (m_notifier.plansAhead())
        planAhead();
}

/// Answers given while the app was closed go into the record first: they change what is still to come.
void Reminding::planAhead()
{
    if (m_planning)
        return;
    m_planning = true;
    const auto answers = m_notifier.answers();
    std::size_t kept = 0;
    for (const auto& a : answers)
        kept += record(a.key, QString::fromStdString(a.answer), a.at) ? 1 : 0;
    m_notifier.taken(kept);
    std::vector<ports::PlannedNotice> ahead;
    for (const auto& r : situation::upcomingReminders(m_store.record(), m_store.now()))
        ahead.push_back({noticeOf(r), r.at, offerOf(r.kind)});
    m_notifier.plan(std::move(ahead));
    m_planning = false;
}

/// Writes down an answer given at `when`. True where nothing of it is left to do, also when the cause was gone by then.
bool Reminding::record(const std::string& key, const QString& action, LocalTime when)
{
    const auto due = situation::dueReminders(m_store.record(), when);
    const auto one = std::find_if(due.begin(), due.end(), [&](const auto& r) { return r.key == key; });
    if (one == due.end())
        return true;
    const auto level = levelOf(action);
    if (!level || one->kind != ReminderKind::CheckIn)
        return m_store.append(ReminderHandled{key, ReminderAction::Snoozed, when.plusMinutes(kLaterMinutes)}, when).has_value();
    for (const auto& used : situation::sitesInUse(m_store.record())) {
        const auto reports = situation::dayReports(m_store.record(), used.site, when.date);
        const bool known = !reports.empty() && reports.back().date == when.date;
        const bool meant = !used.paused && (!one->site || *one->site == used.site);
        if (meant && !known && !m_store.append(CheckIn{used.site, *level, {}}, when))
            return false;
    }
    return true;
}

void Reminding::answer(const QString& key, const QString& action)
{
    // The record may have gained what another run of the program wrote.
    m_store.reload();
    if (action == QLatin1String("later") || levelOf(action)) {
        record(key.toStdString(), action, m_store.now());
        return;
    }
    emit wanted(action == QLatin1String("start") ? QStringLiteral("bath") : QStringLiteral("today"));
}

} // namespace firstdew::app
