#include "linux/PortalChooser.h"

#include <QCoreApplication>
#include <QDBusArgument>
#include <QDBusMessage>
#include <QDBusMetaType>
#include <QDBusObjectPath>
#include <QDBusReply>
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
}

/// Where the portal will answer: made of our name on the bus and of the token.
QString requestPath(const QDBusConnection& bus, const QString& token)
{
    QString sender = bus.baseService().mid(1); // without its colon
    sender.replace(QLatin1Char('.'), QLatin1Char('_'));
    return QStringLiteral("/org/freedesktop/portal/desktop/request/%1/%2").arg(sender, token);
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

bool PortalChooser::choose(const std::string& title, const std::string& endings, Chosen chosen)
{
    registerTypes();
    QStringList globs;
    QList<Pattern> patterns;
    for (const QString& ending : QString::fromStdString(endings).split(QLatin1Char(' '))) {
        globs << QStringLiteral("*.") + ending;
        patterns << Pattern{0, globs.constLast()};
    }
    return ask(
        title,
        {{QStringLiteral("filters"), QVariant::fromValue(QList<Filter>{{globs.join(QLatin1Char(' ')), patterns}})}},
        std::move(chosen));
}

bool PortalChooser::chooseFolder(const std::string& title, Chosen chosen)
{
    return ask(title, {{QStringLiteral("directory"), true}}, std::move(chosen));
}

bool PortalChooser::ask(const std::string& title, QVariantMap options, Chosen chosen)
{
    if (!m_bus.isConnected())
        return false;
    const QString token = QStringLiteral("firstdew%1_%2").arg(QCoreApplication::applicationPid()).arg(++m_count);
    // The answer may come before the call returns, so listen first.
    listenTo(requestPath(m_bus, token));
    options.insert(QStringLiteral("handle_token"), token);
    options.insert(QStringLiteral("modal"), true);
    QDBusMessage message = QDBusMessage::createMethodCall(kPortal, QStringLiteral("/org/freedesktop/portal/desktop"),
                                                          QStringLiteral("org.freedesktop.portal.FileChooser"),
                                                          QStringLiteral("OpenFile"));
    message << QString() << QString::fromStdString(title) << options;
    m_chosen = std::move(chosen);
    const QDBusReply<QDBusObjectPath> reply = m_bus.call(message, QDBus::Block, kPortalMs);
    if (!reply.isValid()) {
        listenTo({});
        m_chosen = {};
        return false;
    }
    return true;
}

void PortalChooser::onResponse(uint code, const QVariantMap& results)
{
    listenTo({});
    const auto chosen = std::exchange(m_chosen, {});
    const QStringList uris = code == 0 ? results.value(QStringLiteral("uris")).toStringList() : QStringList();
    const QString path = uris.isEmpty() ? QString() : QUrl(uris.constFirst()).toLocalFile();
    if (chosen)
        chosen(QFileInfo(path).isReadable() ? std::optional(path.toStdString()) : std::nullopt);
}

} // namespace firstdew::linuxside
