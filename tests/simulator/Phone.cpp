#include "simulator/Phone.h"

#include "codec/RecordJson.h"
#include "exchange/Fhir.h"
#include "journal/BackUp.h"
#include "summary/Contents.h"
#ifdef FIRSTDEW_WORDS
#include "words/Names.h"
#include "words/Sentences.h"
#endif

#include <SQLiteCpp/SQLiteCpp.h>
#include <algorithm>
#include <nlohmann/json.hpp>

namespace firstdew::simulator {

using journal::Journal;
using situation::Advice;
using situation::ReminderKind;

namespace {

constexpr int kLateAlarmMinutes = 30;

std::string told(const situation::SiteSituation& s)
{
    std::string out = std::string(token(s.site)) + " " + std::string(token(s.stage)) + " " +
                      std::string(token(s.advice)) + " " + (s.nextSession ? s.nextSession->iso() : "-");
    for (const auto& r : s.reasons)
        out += " " + std::string(token(r.kind));
    return out;
}

std::string told(const situation::Situation& s)
{
    std::string out;
    for (const auto& site : s.sites)
        out += told(site) + "\n";
    return out;
}

/// Whether a notice of that kind goes with the advice of its site.
bool agree(ReminderKind kind, Advice advice)
{
    if (kind == ReminderKind::CourseSession)
        return advice == Advice::DoCourseSession;
    return situation::callsForTopUp(advice);
}

bool asksForSession(ReminderKind kind)
{
    return kind == ReminderKind::CourseSession || kind == ReminderKind::TopUpDue || kind == ReminderKind::FirstDew;
}

} // namespace

Phone::Phone(std::filesystem::path file, Dice& dice, Counts& counts, Planted planted)
    : m_file(std::move(file)), m_dice(dice), m_counts(counts), m_planted(planted)
{
    m_disk.lies = planted == Planted::NeverSyncs;
    m_person = m_dice.id();
}

void Phone::read()
{
    const auto facts = m_journal->readAll();
    mustHold(facts.ok(), "the record cannot be read: " + (facts.ok() ? "" : facts.error().message));
    ledger.compare(*facts);
    m_reader = diary::Reader(*facts, m_person, hours.local().date);
}

void Phone::open()
{
    auto journal = Journal::open(m_file);
    for (int i = 0; !journal && i < 2; ++i) { // whoever cannot open it tries again, on a disk that works again
        if (m_disk.dead())
            m_disk.restart(false, m_dice);
        m_disk.mend();
        journal = Journal::open(m_file);
    }
    mustHold(journal.ok(), "the store does not open: " + (journal.ok() ? "" : journal.error().message));
    m_journal.emplace(std::move(journal.value()));
    read();
}

void Phone::close() { m_journal.reset(); }

void Phone::crash(bool powerCut)
{
    m_journal.reset();
    m_disk.restart(powerCut, m_dice);
    ++m_counts[powerCut ? "power cuts" : "kills"];
    if (powerCut)
        hours.bootMs = hours.trueMs, hours.sleptMs = 0;
    open();
}

Fact Phone::factOf(const Payload& payload, LocalTime when, const std::string& corrects)
{
    Fact fact{m_dice.id(), m_person, when, hours.wallMs(), corrects, payload};
    ledger.tried.insert(fact.id);
    return fact;
}

bool Phone::append(const Payload& payload, std::optional<LocalTime> when, const std::string& corrects)
{
    if (m_disk.dead() || !m_journal)
        return false;
    follow();
    turn();
    const Fact fact = factOf(payload, when.value_or(hours.local()), corrects);
    for (int attempt = 0; attempt < 2; ++attempt) {
        const auto done =
            m_planted == Planted::Forgets && m_dice.oneIn(200) ? Result<std::string>(fact.id) : m_journal->append(fact);
        if (done) {
            ++m_counts["facts acknowledged"];
            ledger.acknowledged.push_back(fact);
            if (m_planted != Planted::StaleFace || !m_dice.oneIn(50))
                m_reader.add(fact);
            if (m_planted == Planted::Doubles && m_dice.oneIn(200)) {
                Fact again = fact;
                again.id = m_dice.id();
                (void)m_journal->append(again);
            }
            return true;
        }
        ++m_counts["facts refused"];
        if (m_disk.dead())
            return false;
    }
    return false;
}

bool Phone::appendAll(const std::vector<Payload>& payloads)
{
    if (m_disk.dead() || !m_journal)
        return false;
    follow();
    turn();
    std::vector<Fact> facts;
    for (const Payload& p : payloads)
        facts.push_back(factOf(p, hours.local(), {}));
    if (!m_journal->appendAll(facts)) {
        ++m_counts["facts refused"];
        return false;
    }
    for (const Fact& fact : facts) {
        ledger.acknowledged.push_back(fact);
        m_reader.add(fact);
    }
    m_counts["facts acknowledged"] += static_cast<long long>(facts.size());
    return true;
}

void Phone::appendElsewhere(const Payload& payload, LocalTime when)
{
    auto other = Journal::openExisting(m_file);
    if (!other) {
        ++m_counts["facts refused"];
        return;
    }
    const Fact fact = factOf(payload, when, {});
    ++m_counts["facts by a second process"];
    if (other.value().append(fact)) {
        ledger.acknowledged.push_back(fact);
        ++m_counts["facts acknowledged"];
    }
}

void Phone::follow()
{
    if (m_journal->changedElsewhere())
        read();
}

void Phone::choose(std::string person)
{
    m_person = std::move(person);
    m_reader.setPerson(m_person);
}

void Phone::setLeading(bool leading) { m_leading = leading; }

void Phone::show(const std::vector<situation::Reminder>& due)
{
    if (!permitted || off)
        return;
    for (const auto& r : due) {
        const auto known = watcher.shown.find(r.key);
        const bool again =
            known != watcher.shown.end() && (known->second.contains(r.at) || r.at < *known->second.rbegin());
        if (!again || (m_planted == Planted::ShowsAgain && m_dice.oneIn(20)))
            watcher.sees(r, m_leading);
    }
}

void Phone::look()
{
    if (m_disk.dead() || !m_journal || off)
        return;
    follow();
    turn();
    const auto now = hours.local().at;
    auto today = situation::todaysReminders(diary(), now);
    if (m_planted == Planted::RingsInSession && m_leading) {
        diary::Diary blind = diary();
        blind.ledSessions.clear();
        today = situation::todaysReminders(blind, now);
    }
    // A session that is led holds back what the record does not know of yet, as the notifier does while it leads.
    if (!m_leading || m_planted == Planted::RingsInSession)
        show(today.due);
    m_planned = situation::upcomingReminders(diary(), now);
    if (m_planted == Planted::LateAlarm)
        for (auto& r : m_planned)
            r.at = r.at.plusMinutes(kLateAlarmMinutes);
    if (permitted && !m_leading)
        watcher.missesNothing(today.due);
    ++m_counts["looks"];
}

void Phone::ring()
{
    if (off || m_leading)
        return;
    const LocalTime now = hours.local();
    std::vector<situation::Reminder> due;
    std::erase_if(m_planned, [&](const auto& r) {
        if (r.at <= now)
            due.push_back(r);
        return r.at <= now;
    });
    if (due.empty())
        return;
    if (!alarms) { // the system starts the app, which looks for itself
        look();
        return;
    }
    show(due);
    m_counts["alarms"] += static_cast<long long>(due.size());
    // What the record says is due now has been shown, though nobody opened the app since the alarms were set.
    turn();
    if (!permitted || !m_journal)
        return;
    auto wanted = situation::todaysReminders(diary(), now.at).due;
    // Left out: the health questions, which are asked where a session is.
    std::erase_if(wanted, [](const auto& r) { return r.kind == situation::ReminderKind::Screening; });
    watcher.missesNothing(wanted);
}

void Phone::backUp()
{
    const auto sealed = journal::backUp(*m_journal, "a long passphrase", 1024);
    if (!sealed)
        return;
    m_sealed = *sealed;
    m_backedUp = ledger.acknowledged;
    const auto all = m_journal->readAll();
    if (all)
        m_backedUp = *all;
    ++m_counts["back-ups"];
}

void Phone::restoreBackUp()
{
    if (m_sealed.empty())
        return;
    const auto facts = journal::openBackUp("back-up", m_sealed, "a long passphrase");
    mustHold(facts.ok() && *facts == m_backedUp, "a back-up does not give back what it was made of");
    m_journal.reset();
    const auto done = journal::restore(m_file, *facts);
    ++m_counts["restores"];
    if (m_disk.dead())
        return; // the old record is there, or the new one; which, the next opening tells
    if (done)
        ledger.acknowledged = *facts;
    open();
}

void Phone::migrate()
{
    m_journal.reset();
    {
        SQLite::Database db(m_file.string(), SQLite::OPEN_READWRITE);
        db.exec("PRAGMA user_version = 1");
    }
    ++m_counts["updates with a migration"];
    open();
}

void Phone::compareFaces()
{
    turn();
    const auto today = hours.local();
    const auto seen = situation::assess(diary());
    const std::string page = told(seen);
    const auto facts = m_journal->readAll();
    if (!facts)
        return;
    const diary::Diary anew = diary::readDiary(*facts, m_person, today.date);
    mustHold(told(situation::assess(anew)) == page, "the record read anew is judged differently:\n" + page);
    std::string paper;
    for (const auto& site : summary::contentsFor(anew, today.date - 30).sites)
        paper += told(site.situation) + "\n";
    mustHold(paper == page, "the paper tells another story:\n" + paper + "page:\n" + page);
    for (const auto& r : situation::todaysReminders(diary(), today.at).standing) {
        if (!asksForSession(r.kind))
            continue;
        const auto site = std::ranges::find(seen.sites, r.site, [](const auto& s) { return std::optional(s.site); });
        mustHold(site != seen.sites.end() && agree(r.kind, site->advice),
                 "a notice the page does not know: " + r.key + ", page:\n" + page);
#ifdef FIRSTDEW_WORDS
        const QString words = words::reminderTitle(r) + ' ' + words::reminderText(r);
        const bool named = words.contains(words::siteName(*r.site), Qt::CaseInsensitive);
        mustHold(named, "a notice without its site: " + r.key + ": " + words.toStdString());
#endif
    }
    const auto incoming = codec::readRecordJson("export", codec::recordJson(*facts));
    mustHold(incoming.ok() && incoming->size() == facts->size(), "an export does not come back");
    const auto bundle = nlohmann::json::parse(exchange::fhirBundle(*facts, {}));
    long long procedures = 0;
    for (const auto& entry : bundle["entry"]) {
        const auto& resource = entry["resource"];
        procedures += resource["resourceType"] == "Procedure";
    }
    long long sessions = 0;
    for (const auto& person : personsIn(*facts))
        sessions += static_cast<long long>(diary::readDiary(*facts, person, diary::kEndOfTime).sessions.size());
    mustHold(procedures == sessions, "FHIR has other sessions than the diary");
    ++m_counts["faces compared"];
}

} // namespace firstdew::simulator
