#include "linux/PortalChooser.h"
#include "journal/OwnFile.h"

#include <QCoreApplication>
#include <QDBusArgument>
#include <QDBusMessage>
#include <QDBusMetaType>
#include <QDBusObjectPath>
#include <QDBusReply>
#include <QFile>
#include <QFileInfo>
#include <QUrl>

#include <utility>

namespace firstdew::linuxside {

namespace {

constexpr int kPortalMs = 2000;
const QString kPortal = QStringLiteral("org.freedesktop.portal.Desktop");

/// A rule of the portal's filter: 0 and a pattern of the name.
struct Pattern {
    uint kind = 0;
    QString glob;
};

QDBusArgument& operator<<(QDBusArgument& out, const Pattern& p)
{
    out.beginStructure();
    out << p.kind << p.glob;
    out.endStructure();
    return out;
}

const QDBusArgument& operator>>(const QDBusArgument& in, Pattern& p)
{
    in.beginStructure();
    in >> p.kind >> p.glob;
    in.endStructure();
    return in;
}

struct Filter {
    QString name;
    QList<Pattern> patterns;
};

QDBusArgument& operator<<(QDBusArgument& out, const Filter& f)
{
    out.beginStructure();
    out << f.name << f.patterns;
    out.endStructure();
    return out;
}

const QDBusArgument& operator>>(const QDBusArgument& in, Filter& f)
{
    in.beginStructure();
    in >> f.name >> f.patterns;
    in.endStructure();
    return in;
}

} // namespace

} // namespace firstdew::linuxside

Q_DECLARE_METATYPE(firstdew::linuxside::Pattern)
Q_DECLARE_METATYPE(firstdew::linuxside::Filter)

namespace firstdew::linuxside {

namespace {

void registerTypes()
{
    qDBusRegisterMetaType<Pattern>();
    qDBusRegisterMetaType<QList<Pattern>>();
    qDBusRegisterMetaType<Filter>();
    qDBusRegisterMetaType<QList<Filter>>();
    qDBusRegisterMetaType<QList<QByteArray>>();
}

/// Where the portal will answer: made of our name on the bus and of the token.
QString requestPath(const QDBusConnection& bus, const QString& token)
{
    QString sender = bus.baseService().mid(1); // without its colon
    sender.replace(QLatin1Char('.'), QLatin1Char('_'));
    return QStringLiteral("/org/freedesktop/portal/desktop/request/%1/%2").arg(sender, token);
}

facts::Error notSaved(const facts::Error& e)
{
    return {e.code == "file-exists" || e.code == "disk-full" ? e.code : "save-failed", e.input, e.message};
}

/// Writes each file under the name chosen for it. The dialog has asked before one file replaces another; several
/// replace none.
facts::Result<std::optional<ports::SavedAs>> written(const std::vector<ports::OutFile>& files, const QStringList& names)
{
    const bool one = files.size() == 1;
    if (static_cast<std::size_t>(names.size()) != files.size())
        return facts::Error{"save-failed", "the chosen place", "was told for another number of files; try again"};
    for (std::size_t i = 0; i < files.size(); ++i) {
        const std::string name = names.at(static_cast<qsizetype>(i)).toStdString();
        const auto put =
            one ? journal::replaceFile(name, files[i].content) : journal::writeNewFile(name, files[i].content);
        if (put)
            continue;
        while (i-- > 0)
            QFile::remove(names.at(static_cast<qsizetype>(i)));
        return notSaved(put.error());
    }
    const QString first = names.constFirst();
    if (one)
        return std::optional(ports::SavedAs{first.toStdString(), first.toStdString()});
    return std::optional(ports::SavedAs{QFileInfo(first).path().toStdString(), {}});
}

} // namespace

PortalChooser::~PortalChooser() { listenTo({}); }

void PortalChooser::listenTo(const QString& request)
{
    const QString interface = QStringLiteral("org.freedesktop.portal.Request");
    const QString signal = QStringLiteral("Response");
    if (!m_request.isEmpty())
        m_bus.disconnect(kPortal, m_request, interface, signal, this, SLOT(onResponse(uint, QVariantMap)));
    m_request = request;
    if (!m_request.isEmpty())
        m_bus.connect(kPortal, m_request, interface, signal, this, SLOT(onResponse(uint, QVariantMap)));
}

bool PortalChooser::ask(const QString& method, const std::string& title, QVariantMap options, Answer answer)
{
    if (!m_bus.isConnected())
        return false;
    const QString token = QStringLiteral("firstdew%1_%2").arg(QCoreApplication::applicationPid()).arg(++m_count);
    // The answer may come before the call returns, so listen first.
    listenTo(requestPath(m_bus, token));
    options.insert(QStringLiteral("handle_token"), token);
    options.insert(QStringLiteral("modal"), true);
    QDBusMessage message = QDBusMessage::createMethodCall(kPortal, QStringLiteral("/org/freedesktop/portal/desktop"),
                                                          QStringLiteral("org.freedesktop.portal.FileChooser"), method);
    message << QString() << QString::fromStdString(title) << options;
    m_answer = std::move(answer);
    const QDBusReply<QDBusObjectPath> reply = m_bus.call(message, QDBus::Block, kPortalMs);
    if (!reply.isValid()) {
        listenTo({});
        m_answer = {};
        return false;
    }
    return true;
}

bool PortalChooser::choose(const std::string& title, const std::string& endings, Chosen chosen)
{
    registerTypes();
    QStringList globs;
    QList<Pattern> patterns;
    for (const QString& ending : QString::fromStdString(endings).split(QLatin1Char(' '))) {
        globs << QStringLiteral("*.") + ending;
        patterns << Pattern{0, globs.constLast()};
    }
    const QVariantMap options{
        {QStringLiteral("filters"), QVariant::fromValue(QList<Filter>{{globs.join(QLatin1Char(' ')), patterns}})}};
    return open(title, options, std::move(chosen));
}

bool PortalChooser::chooseFolder(const std::string& title, Chosen chosen)
{
    return open(title, {{QStringLiteral("directory"), true}}, std::move(chosen));
}

bool PortalChooser::open(const std::string& title, const QVariantMap& options, Chosen chosen)
{
    return ask(QStringLiteral("OpenFile"), title, options, [chosen = std::move(chosen)](const auto& names) {
        const QString path = names && *names ? (*names)->constFirst() : QString();
        chosen(QFileInfo(path).isReadable() ? std::optional(path.toStdString()) : std::nullopt);
    });
}

bool PortalChooser::save(const std::string& title, std::vector<ports::OutFile> files, Saved saved)
{
    registerTypes();
    QVariantMap options;
    if (files.size() == 1) {
        options.insert(QStringLiteral("current_name"), QString::fromStdString(files.front().name));
    } else {
        QList<QByteArray> names; // the portal takes names as they are on disk, each with its zero
        for (const auto& file : files)
            names << QByteArray(file.name.c_str(), static_cast<qsizetype>(file.name.size() + 1));
        options.insert(QStringLiteral("files"), QVariant::fromValue(names));
    }
    const QString method = files.size() == 1 ? QStringLiteral("SaveFile") : QStringLiteral("SaveFiles");
    return ask(method, title, options, [files = std::move(files), saved = std::move(saved)](const auto& names) {
        if (names && !*names)
            saved(std::optional<ports::SavedAs>());
        else
            saved(names ? written(files, **names) : names.error());
    });
}

void PortalChooser::onResponse(uint code, const QVariantMap& results)
{
    listenTo({});
    const auto answer = std::exchange(m_answer, {});
    if (!answer)
        return;
    if (code != 0)
        return answer(std::optional<QStringList>());
    QStringList names;
    for (const QString& uri : results.value(QStringLiteral("uris")).toStringList())
        names << QUrl(uri).toLocalFile();
    if (names.isEmpty() || names.contains(QString()))
        return answer(facts::Error{"save-failed", "the chosen place", "is no file of this computer; choose another"});
    answer(std::optional(names));
}

} // namespace firstdew::linuxside
