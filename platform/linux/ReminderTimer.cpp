#include "linux/ReminderTimer.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QProcess>
#include <QSaveFile>
#include <QStandardPaths>

namespace firstdew::linuxside
{

namespace
{

/// As systemd.syntax(7) and the Desktop Entry Specification both take it: in double quotes, special characters escaped;
/// `percent` doubles the sign that either would fill in.
QString quoted(QString word)
{
    word.replace(QLatin1Char('\\'), QLatin1String("\\\\")).replace(QLatin1Char('"'), QLatin1String("\\\"")).replace(QLatin1Char('%'), QLatin1String("%%"));
    return QLatin1Char('"') + word + QLatin1Char('"');
}

bool replaced(const QString& file, const QString& text)
{
    QFile present(file);
    if (present.open(QIODevice::ReadOnly) && present.readAll() == text.toUtf8())
        return true;
    QDir().mkpath(QFileInfo(file).path());
    QSaveFile out(file);
    const QByteArray bytes = text.toUtf8();
    return out.open(QIODevice::WriteOnly) && out.write(bytes) == bytes.size() && out.commit();
}

bool systemd()
{
    return QFileInfo::exists(QStringLiteral("/run/systemd/system")) && !QStandardPaths::findExecutable(QStringLiteral("systemctl")).isEmpty();
}

bool systemctl(const QStringList& arguments)
{
    constexpr int kPatienceMs = 10'000;
    QProcess process;
    process.start(QStringLiteral("systemctl"), QStringList{QStringLiteral("--user")} + arguments);
    return process.waitForFinished(kPatienceMs) && process.exitCode() == 0;
}

} // namespace

ReminderTimer::ReminderTimer(QString config, QString program, QString record) : m_config(std::move(config)), m_program(std::move(program)), m_record(std::move(record)) {}

QString ReminderTimer::unit(const char* kind) const
{
    return QStringLiteral("%1/systemd/user/firstdew-remind.%2").arg(m_config, QLatin1String(kind));
}

QString ReminderTimer::autostart() const
{
    return m_config + QStringLiteral("/autostart/firstdew-remind.desktop");
}

bool ReminderTimer::isSet() const
{
    return QFileInfo::exists(unit("timer")) || QFileInfo::exists(autostart());
}

bool ReminderTimer::writeUnits() const
{
    // The condition: once the program is taken off the computer, the timer that stays behind does nothing.
    const QString service = QStringLiteral("[Unit]\nDescription=Firstdew reminders that are due\nConditionFileIsExecutable=%3\n\n"
                                           "[Service]\nType=exec\nExecStart=%1 --store %2 --remind\n")
                                .arg(quoted(m_program), quoted(m_record), QString(m_program).replace(QLatin1Char('%'), QLatin1String("%%")));
    // Persistent: what was missed while the computer was off is looked at once when it is on again.
    const QString timer = QStringLiteral("[Unit]\nDescription=Looks for Firstdew reminders that are due\n\n[Timer]\nOnCalendar=*:0/5\nPersistent=true\n\n"
                                         "[Install]\nWantedBy=timers.target\n");
    return replaced(unit("service"), service) && replaced(unit("timer"), timer);
}

bool ReminderTimer::writeAutostart() const
{
    return replaced(autostart(), QStringLiteral("[Desktop Entry]\nType=Application\nName=Firstdew reminders\nTryExec=%3\nExec=%1 --store %2 --remind --watch\n"
                                                "NoDisplay=true\nX-GNOME-Autostart-enabled=true\n")
                                     .arg(quoted(m_program), quoted(m_record), QString(m_program).replace(QLatin1Char('\\'), QLatin1String("\\\\"))));
}

bool ReminderTimer::set(bool on)
{
    if (!on) {
        if (QFileInfo::exists(unit("timer")) && systemd())
            systemctl({QStringLiteral("disable"), QStringLiteral("--now"), QStringLiteral("firstdew-remind.timer")});
        for (const QString& file : {unit("timer"), unit("service"), autostart()})
            QFile::remove(file);
        return !isSet();
    }
    if (!systemd())
        return writeAutostart();
    return writeUnits() && systemctl({QStringLiteral("daemon-reload")}) &&
           systemctl({QStringLiteral("enable"), QStringLiteral("--now"), QStringLiteral("firstdew-remind.timer")});
}

} // namespace firstdew::linuxside
