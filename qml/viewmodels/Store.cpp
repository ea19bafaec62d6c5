#include "Store.h"

#include "words/Errors.h"

#include <algorithm>
#include <array>

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
    connect(&m_midnight, &QTimer::timeout, this, &Store::followClock);
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

void Store::reopen()
{
    m_content.open(m_file, today());
    if (m_content.error)
        fail(*m_content.error);
    emit changed();
}

void Store::reload()
{
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

QString Store::personName() const { return m_content.diary.person ? text(m_content.diary.person->name) : QString(); }

void Store::showPerson(const QString& id)
{
    if (id.toStdString() == m_content.person)
        return;
    m_content.person = id.toStdString();
    m_content.assess(today());
    emit changed();
}

/// Only what tells who they are is read: there may be many, each with years of entries.
QList<ui::PersonLine> Store::people() const
{
    std::vector<Fact> told;
    for (const Fact& f : m_content.facts)
        if (std::holds_alternative<Person>(f.payload) || std::holds_alternative<Retraction>(f.payload))
            told.push_back(f);
    QList<ui::PersonLine> out;
    for (const auto& id : personsIn(m_content.facts)) {
        const Person shown = diary::readDiary(told, id, today()).person.value_or(Person{});
        out << ui::PersonLine{text(id), text(shown.name), text(shown.adult), id == m_content.person};
    }
    return out;
}

bool Store::several() const { return personsIn(m_content.facts).size() > 1; }

void Store::followClock()
{
    if (today() == m_content.diary.today)
        return;
    m_content.assess(today());
    emit changed();
}

Fact Store::factOf(Payload payload, LocalTime happened, std::string corrects) const
{
    return {"", m_content.person, happened, m_clock.instant().wallMs, std::move(corrects), std::move(payload)};
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
    auto ids = m_content.journal->appendAll(facts);
    if (!ids) {
        if (!inSession)
            fail(ids.error());
        return std::nullopt;
    }
    for (std::size_t i = 0; i < facts.size(); ++i) {
        facts[i].id = ids.value()[i];
        m_content.facts.push_back(std::move(facts[i]));
    }
    if (when == Assess::Later) {
        m_content.gather(today());
    } else {
        m_content.assess(today());
        emit changed();
    }
    return std::move(ids.value());
}

bool Store::append(std::span<const Payload> payloads, Assess when)
{
    std::vector<Fact> facts;
    for (const Payload& p : payloads)
        facts.push_back(factOf(p, now(), {}));
    return write(std::move(facts), when).has_value();
}

std::optional<std::string> Store::append(Payload payload, std::optional<LocalTime> happened, std::string corrects)
{
    std::vector<Fact> facts;
    facts.push_back(factOf(std::move(payload), happened.value_or(now()), std::move(corrects)));
    auto ids = write(std::move(facts), Assess::AtOnce);
    return ids ? std::optional(std::move(ids->front())) : std::nullopt;
}

bool Store::retract(const std::string& id, std::string reason)
{
    const auto fact =
        std::find_if(m_content.facts.begin(), m_content.facts.end(), [&](const Fact& f) { return f.id == id; });
    if (fact == m_content.facts.end())
        return false;
    return append(Retraction{std::move(reason)}, fact->happened, id).has_value();
}

std::optional<std::string> Store::addPerson(Person person)
{
    const auto known = personsIn(m_content.facts);
    int number = 1;
    while (std::find(known.begin(), known.end(), "p" + std::to_string(number)) != known.end())
        ++number;
    const std::string before = m_content.person;
    m_content.person = "p" + std::to_string(number);
    if (append(std::move(person)))
        return m_content.person;
    m_content.person = before;
    return std::nullopt;
}

} // namespace firstdew::viewmodels
