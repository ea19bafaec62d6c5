#include "Store.h"

#include "diary/AppLock.h"
#include "journal/People.h"
#include "words/Announced.h"
#include "words/Errors.h"

#include <algorithm>
#include <array>
#include <filesystem>

namespace firstdew::viewmodels {

using namespace facts;

namespace {

constexpr int kLookAtClockMs = 20'000;

struct TroubleOf {
    std::string_view code;
    ui::Trouble::Value trouble;
};
constexpr std::array<TroubleOf, 7> kTroubles{{{"store-damaged", ui::Trouble::Damaged},
                                              {"fact-damaged", ui::Trouble::Damaged},
                                              {"store-newer", ui::Trouble::Newer},
                                              {"store-busy", ui::Trouble::Busy},
                                              {"store-read-only", ui::Trouble::ReadOnly},
                                              {"store-foreign", ui::Trouble::Foreign},
                                              {"store-unreadable", ui::Trouble::Unreadable}}};

} // namespace

Store::Store(ports::Clock& clock, std::string file, std::optional<StoreContent> read)
    : m_clock(clock), m_file(std::move(file))
{
    if (read)
        m_content = std::move(*read);
    else
        m_content.open(m_file, today());
    if (m_content.error)
        m_error = *m_content.error;
    // The day turns while the app is open; the clock may also be set.
    m_midnight.setInterval(kLookAtClockMs);
    connect(&m_midnight, &QTimer::timeout, this, &Store::follow);
    m_midnight.start();
}

ui::Trouble::Value Store::trouble() const
{
    if (m_content.known)
        return ui::Trouble::None;
    const auto* found =
        std::find_if(kTroubles.begin(), kTroubles.end(), [&](const TroubleOf& t) { return t.code == m_error.code; });
    return found == kTroubles.end() ? ui::Trouble::Other : found->trouble;
}

Store::~Store() { awaitWrites(); }

void Store::reopen()
{
    awaitWrites();
    m_content.open(m_file, today());
    if (m_content.error)
        fail(*m_content.error);
    emit changed();
}

void Store::reload()
{
    awaitWrites();
    m_content.read(today());
    if (m_content.journal && m_content.error) // that it could not be opened was said when that was tried
        fail(*m_content.error);
    emit changed();
}

void Store::fail(const Error& error)
{
    m_error = error;
    emit failed();
}

QString Store::errorText() const { return words::errorSentence(m_error); }

QString Store::personName() const { return diary().person ? text(diary().person->name) : QString(); }

void Store::showPerson(const QString& id)
{
    if (id.toStdString() == m_content.reader.person())
        return;
    m_content.reader.setPerson(id.toStdString());
    m_content.assess(today());
    emit changed();
}

/// Only what tells who they are is read: there may be many, each with years of entries.
QList<ui::PersonLine> Store::people() const
{
    std::vector<Fact> told;
    for (const Fact& f : allFacts())
        if (std::holds_alternative<Person>(f.payload) || std::holds_alternative<Retraction>(f.payload))
            told.push_back(f);
    QList<ui::PersonLine> out;
    for (const auto& id : personsIn(allFacts())) {
        const Person shown = diary::readDiary(told, id, today()).person.value_or(Person{});
        out << ui::PersonLine{text(id), text(shown.name), text(shown.adult), id == m_content.reader.person()};
    }
    return out;
}

bool Store::several() const { return personsIn(allFacts()).size() > 1; }

void Store::follow()
{
    if (!m_leading && !m_behind && m_content.journal && m_content.journal->changedElsewhere()) {
        reload();
        return;
    }
    if (today() == diary().today)
        return;
    m_content.assess(today());
    emit changed();
}

Fact Store::factOf(Payload payload, LocalTime happened, std::string corrects) const
{
    return {"", m_content.reader.person(), happened, m_clock.instant().wallMs, std::move(corrects), std::move(payload)};
}

/// Opens the record that another program put in the place of the open one. False where it does not hold this person.
bool Store::readAnew()
{
    std::error_code none;
    if (!std::filesystem::exists(m_file, none))
        return false;
    StoreContent anew;
    anew.open(m_file, today());
    if (!anew.known || std::ranges::count(personsIn(anew.reader.facts()), m_content.reader.person()) == 0)
        return false;
    anew.reader.setPerson(m_content.reader.person());
    m_content = std::move(anew);
    return true;
}

Store::Ids Store::written(const std::vector<Fact>& facts)
{
    awaitWrites();
    auto ids = m_content.journal->appendAll(facts);
    return !ids && ids.error().code == "store-replaced" && readAnew() ? m_content.journal->appendAll(facts) : ids;
}

void Store::add(std::vector<Fact> facts, const std::vector<std::string>& ids)
{
    m_content.reader.turnTo(today());
    for (std::size_t i = 0; i < facts.size(); ++i) {
        facts[i].id = ids[i];
        m_content.reader.add(std::move(facts[i]));
    }
}

std::optional<std::vector<std::string>> Store::write(std::vector<Fact> facts, Assess when)
{
    // What happens in a session is said on the session's own page, which nothing may cover.
    const bool inSession = when == Assess::Later;
    if (!m_content.journal) {
        if (!inSession)
            emit failed();
        return std::nullopt;
    }
    auto ids = written(facts);
    if (!ids) {
        if (!inSession)
            fail(ids.error());
        return std::nullopt;
    }
    QString told;
    for (const Fact& fact : facts)
        if (told.isEmpty())
            told = words::savedName(fact.payload);
    add(std::move(facts), *ids);
    if (when == Assess::AtOnce) {
        m_content.assess(today());
        emit changed();
        if (!told.isEmpty())
            emit saved(told);
    }
    return std::move(ids.value());
}

std::vector<Fact> Store::factsOf(std::span<const Payload> payloads) const
{
    std::vector<Fact> facts;
    for (const Payload& p : payloads)
        facts.push_back(factOf(p, now(), {}));
    return facts;
}

bool Store::append(std::span<const Payload> payloads, Assess when)
{
    return write(factsOf(payloads), when).has_value();
}

bool Store::appendBehind(std::span<const Payload> payloads, std::function<void(bool)> done)
{
    if (m_behind || !m_content.journal)
        return false;
    auto facts = factsOf(payloads);
    auto ids = std::async(std::launch::async, [this, journal = &*m_content.journal, facts] {
        auto kept = journal->appendAll(facts);
        QMetaObject::invokeMethod(this, &Store::awaitWrites, Qt::QueuedConnection);
        return kept;
    });
    m_behind.emplace(Behind{std::move(facts), std::move(done), std::move(ids)});
    return true;
}

void Store::awaitWrites()
{
    if (!m_behind)
        return;
    Behind behind = std::move(*m_behind);
    auto ids = behind.ids.get();
    m_behind.reset();
    if (!ids && ids.error().code == "store-replaced" && readAnew())
        ids = m_content.journal->appendAll(behind.facts);
    if (ids)
        add(std::move(behind.facts), *ids);
    behind.done(ids.ok());
}

std::optional<journal::Journal>& Store::journalForWholeStoreActs()
{
    awaitWrites();
    return m_content.journal;
}

std::optional<std::string> Store::append(Payload payload, std::optional<LocalTime> happened, std::string corrects)
{
    std::vector<Fact> facts;
    facts.push_back(factOf(std::move(payload), happened.value_or(now()), std::move(corrects)));
    auto ids = write(std::move(facts), Assess::AtOnce);
    return ids ? std::optional(std::move(ids->front())) : std::nullopt;
}

bool Store::lockWanted() const { return diary::lockWanted(allFacts()); }

bool Store::recordForAll(const Preference& setting)
{
    std::vector<Fact> facts{factOf(setting, now(), {})};
    for (const auto& id : personsIn(allFacts()))
        if (id != m_content.reader.person()) {
            facts.push_back(factOf(setting, now(), {}));
            facts.back().person = id;
        }
    return write(std::move(facts), Assess::AtOnce).has_value();
}

bool Store::retract(const std::string& id, std::string reason)
{
    const auto fact = std::find_if(allFacts().begin(), allFacts().end(), [&](const Fact& f) { return f.id == id; });
    if (fact == allFacts().end())
        return false;
    return append(Retraction{std::move(reason)}, fact->happened, id).has_value();
}

std::optional<std::string> Store::addPerson(Person person)
{
    const std::string before = m_content.reader.person();
    m_content.reader.setPerson(journal::drawId());
    if (append(std::move(person)))
        return m_content.reader.person();
    m_content.reader.setPerson(before);
    return std::nullopt;
}

} // namespace firstdew::viewmodels
