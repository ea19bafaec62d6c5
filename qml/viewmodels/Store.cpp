#include "Store.h"

#include "words/Errors.h"

#include <QDateTime>
#include <QQmlEngine>
#include <algorithm>

namespace firstdew::viewmodels {

using namespace facts;

namespace {
Store* theStore = nullptr;
constexpr int kLookAtClockMs = 20'000;
} // namespace

Store::Store(ports::Clock& clock, std::string file, std::optional<Opened> read)
    : m_clock(clock), m_file(std::move(file))
{
    theStore = this;
    if (read)
        m_now = std::move(*read);
    else
        m_now.open(m_file, today());
    tellOfError();
    // The day turns while the app is open; the clock may also be set.
    m_midnight.setInterval(kLookAtClockMs);
    connect(&m_midnight, &QTimer::timeout, this, [this] {
        if (m_clock.localNow().date != m_now.situation.today) {
            look();
            emit changed();
        }
    });
    m_midnight.start();
}

Store* Store::instance() { return theStore; }

Store* Store::create(QQmlEngine*, QJSEngine*)
{
    QQmlEngine::setObjectOwnership(theStore, QQmlEngine::CppOwnership);
    return theStore;
}

void Store::reopen()
{
    m_now.open(m_file, today());
    tellOfError();
    emit changed();
}

void Store::reload()
{
    m_now.read(today());
    if (m_now.journal) // that it could not be opened was said when that was tried
        tellOfError();
    emit changed();
}

void Store::look() { m_now.look(today()); }

void Store::tellOfError()
{
    if (m_now.error)
        fail(*m_now.error);
}

void Store::fail(const Error& error)
{
    m_error = error;
    emit failed();
}

QString Store::errorText() const { return words::errorSentence(m_error); }

QString Store::personName() const
{
    const auto* p = m_now.record.latest<Person>();
    return p == nullptr ? QString() : text(p->payload.name);
}

void Store::setPerson(const QString& id)
{
    if (id.toStdString() == m_now.person)
        return;
    m_now.person = id.toStdString();
    look();
    emit changed();
}

QVariantList Store::people() const
{
    QVariantList out;
    for (const auto& id : personsIn(m_now.facts)) {
        const Record record = recordOf(m_now.facts, id);
        const auto* p = record.latest<Person>();
        out << QVariantMap{{"id", text(id)},
                           {"name", p == nullptr ? QString() : text(p->payload.name)},
                           {"adult", p == nullptr ? QString() : text(p->payload.adult)}};
    }
    return out;
}

bool Store::several() const { return personsIn(m_now.facts).size() > 1; }

QString Store::todayIso() const { return text(m_now.situation.today); }

std::optional<std::string> Store::preference(std::string_view key) const
{
    std::optional<std::string> out;
    for (const auto& e : m_now.record.all<Preference>())
        if (e.payload.key == key)
            out = e.payload.value;
    return out;
}

QString Store::preferenceOr(const QString& key, const QString& otherwise) const
{
    const auto value = preference(key.toStdString());
    return value ? text(*value) : otherwise;
}

void Store::setPreference(const QString& key, const QString& value)
{
    if (preference(key.toStdString()) != value.toStdString())
        append(Preference{key.toStdString(), value.toStdString()});
}

Fact Store::factOf(Payload payload, LocalTime happened, std::string corrects) const
{
    return {"", m_now.person, happened, m_clock.instant().wallMs, std::move(corrects), std::move(payload)};
}

std::optional<std::string> Store::append(Payload payload, std::optional<LocalTime> happened, std::string corrects)
{
    if (!m_now.journal) {
        emit failed();
        return std::nullopt;
    }
    Fact fact = factOf(std::move(payload), happened.value_or(now()), std::move(corrects));
    const auto id = m_now.journal->append(fact);
    if (!id) {
        fail(id.error());
        return std::nullopt;
    }
    fact.id = *id;
    m_now.facts.push_back(std::move(fact));
    look();
    emit changed();
    emit recorded(text(*id));
    return *id;
}

bool Store::appendAll(std::vector<Payload> payloads)
{
    if (!m_now.journal) {
        emit failed();
        return false;
    }
    std::vector<Fact> facts;
    for (auto& p : payloads)
        facts.push_back(factOf(std::move(p), now(), {}));
    const auto ids = m_now.journal->appendAll(std::move(facts));
    if (!ids) {
        fail(ids.error());
        return false;
    }
    reload();
    return true;
}

bool Store::appendQuietly(Payload payload)
{
    if (!m_now.journal)
        return false;
    Fact fact = factOf(std::move(payload), now(), {});
    const auto id = m_now.journal->append(fact);
    if (!id)
        return false;
    fact.id = *id;
    m_now.facts.push_back(std::move(fact));
    return true;
}

bool Store::retract(const std::string& id, std::string reason)
{
    const auto fact = std::find_if(m_now.facts.begin(), m_now.facts.end(), [&](const Fact& f) { return f.id == id; });
    if (fact == m_now.facts.end())
        return false;
    return append(Retraction{std::move(reason)}, fact->happened, id).has_value();
}

std::optional<std::string> Store::addPerson(Person person)
{
    const auto known = personsIn(m_now.facts);
    int number = 1;
    while (std::find(known.begin(), known.end(), "p" + std::to_string(number)) != known.end())
        ++number;
    const std::string before = m_now.person;
    m_now.person = "p" + std::to_string(number);
    if (append(std::move(person)))
        return m_now.person;
    m_now.person = before;
    look();
    return std::nullopt;
}

} // namespace firstdew::viewmodels
