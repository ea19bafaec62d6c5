#pragma once

#include "TodayValues.h"
// The meta-object compiler of Qt 6.4 cannot read the standard library's concepts.
#ifndef Q_MOC_RUN
#include "StoreContent.h"
#include "ports/Clock.h"
#endif

#include <QObject>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <functional>
#include <future>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

class QQmlEngine;
class QJSEngine;

namespace firstdew::viewmodels {

/// The open journal, one person's record out of it, and where things stand today. Everything shown is
/// read from here; everything recorded goes through append().
class Store : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// Why there is no record to show; None where there is one.
    Q_PROPERTY(firstdew::ui::Trouble::Value trouble READ trouble NOTIFY changed)
    Q_PROPERTY(QString file READ fileName CONSTANT)
    Q_PROPERTY(QString personName READ personName NOTIFY changed)
    Q_PROPERTY(QList<firstdew::ui::PersonLine> people READ people NOTIFY changed)
    /// Whether there is more than one of them; costs far less than to ask for all.
    Q_PROPERTY(bool several READ several NOTIFY changed)
    /// Days since 1970-01-01.
    Q_PROPERTY(int today READ todayNumber NOTIFY changed)
    /// What went wrong last, in a sentence.
    Q_PROPERTY(QString errorText READ errorText NOTIFY failed)

public:
    /// When the situation follows what is recorded. A running session does not wait for it.
    enum class Assess { AtOnce, Later };

    /// `read` is what was read of that file today, where that was done beforehand.
    Store(ports::Clock& clock, std::string file, std::optional<StoreContent> read = {});
    ~Store() override;
    static Store* create(QQmlEngine*, QJSEngine*);

    /// The store could be opened and read.
    [[nodiscard]] bool isOpen() const { return m_content.known; }
    [[nodiscard]] ui::Trouble::Value trouble() const;
    [[nodiscard]] QString fileName() const { return QString::fromStdString(m_file); }
    [[nodiscard]] QString person() const { return QString::fromStdString(m_content.reader.person()); }
    [[nodiscard]] QString personName() const;
    [[nodiscard]] QList<ui::PersonLine> people() const;
    [[nodiscard]] bool several() const;
    [[nodiscard]] int todayNumber() const { return m_content.situation.today.daysSince1970(); }
    [[nodiscard]] QString errorText() const;

    [[nodiscard]] const ports::Clock& clock() const { return m_clock; }
    [[nodiscard]] facts::LocalTime now() const { return m_clock.localNow(); }
    /// The present person's record as it reads today.
    [[nodiscard]] const diary::Diary& diary() const { return m_content.reader.diary(); }
    [[nodiscard]] const std::vector<facts::Fact>& allFacts() const { return m_content.reader.facts(); }
    [[nodiscard]] const situation::Situation& situation() const { return m_content.situation; }
    [[nodiscard]] const std::string& file() const { return m_file; }
    /// Records facts of the present person in one transaction, all or none. When this returns true they are on disk
    /// and in diary(); otherwise failed() was emitted, but not where Later: the session says that on its own page.
    bool append(std::span<const facts::Payload> payloads, Assess when = Assess::AtOnce);
    /// Records them without waiting for the disk, in one transaction; `done` hears in this thread whether they are on
    /// disk and in diary(). False where an earlier call has not been answered yet: nothing is recorded then.
    bool appendBehind(std::span<const facts::Payload> payloads, std::function<void(bool)> done);
    /// Waits until the disk has answered the last appendBehind().
    void awaitWrites();
    /// The same for one fact; gives its id. `happened` is now where left out; `corrects` is the id of the fact it
    /// replaces.
    std::optional<std::string> append(facts::Payload payload, std::optional<facts::LocalTime> happened = {},
                                      std::string corrects = {});
    /// Whether anybody whose record is here wants the app locked.
    [[nodiscard]] bool lockWanted() const;
    /// Records a setting of the app itself, for everybody whose record is here.
    bool recordForAll(const facts::Preference& setting);
    /// Withdraws the fact of that id.
    bool retract(const std::string& id, std::string reason);
    /// Begins the record of somebody further and makes it the present one. Gives the id.
    std::optional<std::string> addPerson(facts::Person person);
    /// Judges anew where the day has turned, and reads anew where another program has recorded something; not in the
    /// middle of a session, which waits for no disk.
    void follow();
    /// Whether a session is being led here.
    void setLeading(bool leading) { m_leading = leading; }
    /// The journal itself, for whole-store acts (restore, import, delete); call reload() after.
    [[nodiscard]] std::optional<journal::Journal>& journalForWholeStoreActs();

    Q_INVOKABLE void showPerson(const QString& id);
    Q_INVOKABLE void reload();
    Q_INVOKABLE void reopen();

signals:
    void changed();
    void failed();
    /// Something was recorded that the person saved: what a screen reader says of it.
    void saved(const QString& told);

private:
    [[nodiscard]] facts::LocalDate today() const { return m_clock.localNow().date; }
    std::optional<std::vector<std::string>> write(std::vector<facts::Fact> facts, Assess when);
    using Ids = facts::Result<std::vector<std::string>>;
    [[nodiscard]] Ids written(const std::vector<facts::Fact>& facts);
    [[nodiscard]] std::vector<facts::Fact> factsOf(std::span<const facts::Payload> payloads) const;
    bool readAnew();
    void add(std::vector<facts::Fact> facts, const std::vector<std::string>& ids);

    /// What is being written by another thread. Only that thread uses the journal meanwhile.
    struct Behind {
        std::vector<facts::Fact> facts;
        std::function<void(bool)> done;
        std::future<Ids> ids;
    };
    void fail(const facts::Error& error);
    [[nodiscard]] facts::Fact factOf(facts::Payload payload, facts::LocalTime happened, std::string corrects) const;

    ports::Clock& m_clock;
    std::string m_file;
    StoreContent m_content;
    std::optional<Behind> m_behind;
    bool m_leading = false;
    facts::Error m_error;
    QTimer m_midnight;
};

/// Text across the edge to QML.
[[nodiscard]] inline QString text(std::string_view s)
{
    return QString::fromUtf8(s.data(), static_cast<qsizetype>(s.size()));
}
[[nodiscard]] inline QString text(facts::LocalDate d) { return QString::fromStdString(d.iso()); }
/// The tokens of core as text, for notices and what the system keeps.
template <class E>
[[nodiscard]] QString tokenText(E value)
{
    return text(facts::token(value));
}
template <class E>
[[nodiscard]] std::optional<E> valueOf(const QString& token)
{
    return facts::fromToken<E>(token.toStdString());
}
template <class E>
[[nodiscard]] facts::SetOf<E> setOf(const QStringList& list)
{
    facts::SetOf<E> out;
    for (const QString& t : list)
        if (const auto e = valueOf<E>(t))
            out.insert(*e);
    return out;
}

} // namespace firstdew::viewmodels
