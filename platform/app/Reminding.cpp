#include "Reminding.h"

#include "situation/Reminders.h"
#include "words/Sentences.h"

#include <QStringList>
#include <algorithm>

namespace firstdew::app {

using namespace facts;
using situation::ReminderKind;

namespace {

constexpr int kLaterMinutes = 60; // our own choice
constexpr int kMinuteMs = 60'000;
/// A reminder shown this long after its time is late: the device was off or asleep (our own choice).
constexpr int kLateMinutes = 15;
constexpr int kLastMinute = 24 * 60 - 1;

bool asksForBath(ReminderKind kind)
{
    return kind == ReminderKind::CourseSession || kind == ReminderKind::TopUpDue || kind == ReminderKind::FirstDew;
}

std::optional<Level> levelOf(const QString& action) { return viewmodels::valueOf<Level>(action); }

std::vector<ports::NoticeAction> actionsOf(const situation::Reminder& r)
{
    const auto named = [](const char* id, const QString& label) {
        return ports::NoticeAction{id, label.toStdString()};
    };
    std::vector<ports::NoticeAction> out;
    if (r.kind == ReminderKind::CheckIn)
        for (const Level level : allOf<Level>())
            out.push_back(named(token(level).data(), words::levelName(level)));
    if (asksForBath(r.kind))
        out.push_back(named("start", Reminding::tr("Start")));
    out.push_back(named("later", Reminding::tr("Later")));
    return out;
}

ports::Notice noticeOf(const situation::Reminder& r, bool late = false)
{
    // A question stands by itself however late it comes, because its buttons answer for its own site alone.
    return {r.key, words::reminderTitle(r).toStdString(),  words::reminderText(r).toStdString(), actionsOf(r),
            r.at,  late && r.kind != ReminderKind::CheckIn};
}

/// What a check-in's key asks about: "check-in:hands:2026-03-05".
struct Question {
    DiarySite site{};
    LocalDate day;
};

std::optional<Question> questionOf(const std::string& key)
{
    const QStringList parts = QString::fromStdString(key).split(QLatin1Char(':'));
    if (parts.size() != 3 || parts.front() != viewmodels::tokenText(ReminderKind::CheckIn))
        return std::nullopt;
    const auto site = viewmodels::valueOf<DiarySite>(parts[1]);
    const auto day = LocalDate::parse(parts.back().toStdString());
    if (!day || !site)
        return std::nullopt;
    return Question{*site, *day};
}

} // namespace

Reminding::Reminding(viewmodels::Store& store, ports::Notifier& notifier) : m_store(store), m_notifier(notifier)
{
    m_minute.setInterval(kMinuteMs);
    connect(&m_minute, &QTimer::timeout, this, &Reminding::update);
    connect(&store, &viewmodels::Store::changed, this, &Reminding::update);
    m_minute.start();
    update();
}

void Reminding::update()
{
    if (m_recording)
        return; // each recorded answer changes the record; one update after the last is enough
    recordAnswers();
    m_store.follow();
    const LocalTime now = m_store.now();
    const auto today = situation::todaysReminders(m_store.diary(), now.at);
    std::vector<ports::Notice> notices;
    for (const auto& r : today.due)
        notices.push_back(noticeOf(r, r.at.plusMinutes(kLateMinutes) < now));
    ports::Standing standing;
    for (const auto& r : today.standing)
        standing[r.key] = r.at;
    m_notifier.ask(asked());
    m_notifier.show(notices, standing);
    if (m_notifier.plansAhead())
        planAhead();
}

/// The sites of a check-in outside the app, and which of them have been reported today.
std::vector<ports::AskedSite> Reminding::asked() const
{
    const auto& diary = m_store.diary();
    std::vector<ports::AskedSite> out;
    for (const auto& used : diary.sitesInUse()) {
        if (used.paused)
            continue;
        const bool known = diary.reportOn(used.site, diary.today) != nullptr;
        out.push_back({std::string(token(used.site)), words::siteName(used.site).toStdString(),
                       known ? std::optional(diary.today) : std::nullopt});
    }
    return out;
}

void Reminding::planAhead()
{
    std::vector<ports::PlannedNotice> ahead;
    for (const auto& r : situation::upcomingReminders(m_store.diary(), m_store.now().at))
        ahead.push_back({noticeOf(r), r.at});
    m_notifier.plan(std::move(ahead));
}

/// Answers given while the app was closed go into the record first, since they change what is due and what is planned.
void Reminding::recordAnswers()
{
    if (!m_store.isOpen())
        return;
    m_recording = true;
    std::size_t written = 0;
    for (const auto& a : m_notifier.answers()) {
        if (!record(a.key, QString::fromStdString(a.answer), a.at))
            break; // the system keeps it and those after it for the next update
        ++written;
    }
    if (written > 0)
        m_notifier.dropAnswers(written);
    m_recording = false;
}

/// Records an answer given at `when`. Returns true if nothing of it is left to do, also when the person has reported
/// the day in the app since, or when the answer is unknown.
bool Reminding::record(const std::string& key, const QString& action, LocalTime when)
{
    if (action == QLatin1String("later"))
        return m_store.append(ReminderHandled{key, ReminderAction::Snoozed, when.plusMinutes(kLaterMinutes)}, when)
            .has_value();
    const auto level = levelOf(action);
    const auto question = questionOf(key);
    if (!level || !question)
        return true;
    // An answer after midnight is still about the day that the notice asked about.
    const LocalTime happened = when.date == question->day ? when : LocalTime{question->day, {kLastMinute}};
    const auto used = m_store.diary().sitesInUse();
    const bool asked =
        std::ranges::any_of(used, [&](const diary::SiteInUse& s) { return s.site == question->site && !s.paused; });
    const bool known = m_store.diary().reportOn(question->site, question->day) != nullptr;
    return !asked || known || m_store.append(CheckIn{question->site, *level, {}}, happened).has_value();
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
