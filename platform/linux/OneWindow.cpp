#include "linux/OneWindow.h"

#include <QCryptographicHash>
#include <QDBusConnectionInterface>
#include <QDBusMessage>
#include <QElapsedTimer>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>
#include <QThread>

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

namespace firstdew::linuxside {

namespace {

const QString kPath = QStringLiteral("/org/firstdew/Window");
const QString kInterface = QStringLiteral("org.firstdew.Window");
constexpr int kPatienceMs = 5'000;
constexpr int kRetryMs = 50;

/// The path with links resolved, also of a record that does not exist yet.
QString resolved(const QString& record)
{
    const QFileInfo file(record);
    if (file.exists())
        return file.canonicalFilePath();
    const QString folder = QFileInfo(file.absolutePath()).canonicalFilePath();
    return folder.isEmpty() ? file.absoluteFilePath() : folder + QLatin1Char('/') + file.fileName();
}

} // namespace

QString nameFor(const QString& role, const QString& record)
{
    // A part of a name on the bus must not begin with a digit.
    return QStringLiteral("org.firstdew.%1.r").arg(role) +
           QString::fromLatin1(
               QCryptographicHash::hash(resolved(record).toUtf8(), QCryptographicHash::Sha256).toHex().left(16));
}

OneWindow::OneWindow(const QString& record, QDBusConnection bus)
    : m_bus(std::move(bus)), m_name(nameFor(QStringLiteral("Window"), record))
{
    // The object is there before the name, so that whoever finds the name can call it.
    m_bus.registerObject(kPath, this, QDBusConnection::ExportScriptableSlots);
}

OneWindow::~OneWindow()
{
    m_bus.unregisterObject(kPath);
    if (m_lock < 0)
        return;
    m_bus.unregisterService(m_name);
    ::close(m_lock);
}

bool OneWindow::acquireName()
{
    if (m_bus.isConnected() && !m_bus.registerService(m_name))
        return false;
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::RuntimeLocation);
    m_lock = ::open(QFile::encodeName(folder + QLatin1Char('/') + m_name + QStringLiteral(".lock")).constData(),
                    O_RDWR | O_CREAT | O_CLOEXEC, S_IRUSR | S_IWUSR);
    // Without a runtime folder the bus alone decides.
    if (m_lock < 0 || ::flock(m_lock, LOCK_EX | LOCK_NB) == 0)
        return true;
    ::close(std::exchange(m_lock, -1));
    m_bus.unregisterService(m_name);
    return false;
}

bool OneWindow::handOver(const QString& place) const
{
    if (!m_bus.isConnected())
        return false;
    QDBusMessage call = QDBusMessage::createMethodCall(m_name, kPath, kInterface, QStringLiteral("Show"));
    call << place;
    return m_bus.call(call, QDBus::Block, kPatienceMs).type() == QDBusMessage::ReplyMessage;
}

OneWindow::Claim OneWindow::claim(const QString& place)
{
    QElapsedTimer waited;
    waited.start();
    do {
        if (acquireName())
            return Claim::Granted;
        if (handOver(place))
            return Claim::HandedOver;
        QThread::msleep(kRetryMs); // the other window may be about to end
    } while (waited.elapsed() < kPatienceMs);
    return Claim::Refused;
}

} // namespace firstdew::linuxside
