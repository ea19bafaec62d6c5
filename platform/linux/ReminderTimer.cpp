#include "linux/ReminderTimer.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QProcess>
#include <QSaveFile>
#include <QStandardPaths>
#include <utility>

namespace firstdew::linuxside {

namespace {

/// What systemd keeps from the program: it needs its own files and local sockets only. Places on the disk stay as they
/// are, since a service of a person's own cannot shut them off everywhere. A tap on a notice starts the app from here:
/// so it may compile code (no MemoryDenyWriteExecute), and a call that is not allowed fails instead of ending it.
const char* const kShutIn = "UMask=0077\n"
                            "NoNewPrivileges=yes\n"
                            "RestrictAddressFamilies=AF_UNIX\n"
                            "RestrictNamespaces=yes\n"
                            "RestrictRealtime=yes\n"
                            "RestrictSUIDSGID=yes\n"
                            "LockPersonality=yes\n"
                            "SystemCallArchitectures=native\n"
                            "SystemCallFilter=@system-service\n"
                            "SystemCallFilter=~@privileged @resources\n"
                            "SystemCallErrorNumber=EPERM\n"
                            "KeyringMode=private\n";

/// As systemd.syntax(7) and the Desktop Entry Specification both take it: in double quotes, special characters escaped;
/// `percent` doubles the sign that either would fill in.
QString quoted(QString word)
{
    word.replace(QLatin1Char('\\'), QLatin1String("\\\\"))
        .replace(QLatin1Char('"'), QLatin1String("\\\""))
        .replace(QLatin1Char('%'), QLatin1String("%%"));
    return QLatin1Char('"') + word + QLatin1Char('"');
}

bool holds(const QString& file, const QString& text)
{
    QFile present(file);
    return present.open(QIODevice::ReadOnly) && present.readAll() == text.toUtf8();
}

bool replaced(const QString& file, const QString& text)
{
    if (holds(file, text))
        return true;
    QDir().mkpath(QFileInfo(file).path());
    QSaveFile out(file);
    const QByteArray bytes = text.toUtf8();
    return out.open(QIODevice::WriteOnly) && out.write(bytes) == bytes.size() && out.commit();
}

bool systemctl(const QStringList& arguments)
{
    constexpr int kPatienceMs = 10'000;
    QProcess process;
    process.start(QStringLiteral("systemctl"), QStringList{QStringLiteral("--user")} + arguments);
    return process.waitForFinished(kPatienceMs) && process.exitStatus() == QProcess::NormalExit &&
           process.exitCode() == 0;
}

const QString kTimer = QStringLiteral("firstdew-remind.timer");

} // namespace

ReminderTimer::ReminderTimer(QString config, QString program, QString record, QString systemd)
    : m_systemd(std::move(systemd)), m_config(std::move(config)), m_program(std::move(program)),
      m_record(std::move(record))
{
}

QString ReminderTimer::unit(const char* kind) const
{
    return QStringLiteral("%1/systemd/user/firstdew-remind.%2").arg(m_config, QLatin1String(kind));
}

QString ReminderTimer::autostart() const { return m_config + QStringLiteral("/autostart/firstdew-remind.desktop"); }

bool ReminderTimer::runsSystemd() const
{
    return QFileInfo::exists(m_systemd) && !QStandardPaths::findExecutable(QStringLiteral("systemctl")).isEmpty();
}

bool ReminderTimer::isSet() const
{
    return (holds(unit("service"), serviceText()) && holds(unit("timer"), timerText())) ||
           holds(autostart(), autostartText());
}

QString ReminderTimer::serviceText() const
{
    // The condition: once the program is taken off the computer, the timer that stays behind does nothing.
    return QStringLiteral("[Unit]\nDescription=Firstdew reminders that are due\nConditionFileIsExecutable=%3\n\n"
                          "[Service]\nType=exec\nExecStart=%1 --store %2 --remind\n%4")
        .arg(quoted(m_program), quoted(m_record), QString(m_program).replace(QLatin1Char('%'), QLatin1String("%%")),
             QLatin1String(kShutIn));
}

QString ReminderTimer::timerText() const
{
    // Persistent: what was missed while the computer was off is looked at once when it is on again.
    return QStringLiteral("[Unit]\nDescription=Looks for Firstdew reminders that are "
                          "due\n\n[Timer]\nOnCalendar=*:0/5\nPersistent=true\n\n"
                          "[Install]\nWantedBy=timers.target\n");
}

QString ReminderTimer::autostartText() const
{
    // The entry's own rule for text comes on top: each backslash twice.
    const auto text = [](QString s) { return s.replace(QLatin1Char('\\'), QLatin1String("\\\\")); };
    return QStringLiteral("[Desktop Entry]\nType=Application\nName=Firstdew reminders\nTryExec=%3\nExec=%1 --store %2 "
                          "--remind --watch\n"
                          "NoDisplay=true\nX-GNOME-Autostart-enabled=true\n")
        .arg(text(quoted(m_program)), text(quoted(m_record)), text(m_program));
}

bool ReminderTimer::startTimer() const
{
    return replaced(unit("service"), serviceText()) && replaced(unit("timer"), timerText()) &&
           systemctl({QStringLiteral("daemon-reload")}) &&
           systemctl({QStringLiteral("enable"), QStringLiteral("--now"), kTimer});
}

void ReminderTimer::removeUnits() const
{
    if (QFileInfo::exists(unit("timer")) && runsSystemd())
        systemctl({QStringLiteral("disable"), QStringLiteral("--now"), kTimer});
    for (const QString& file : {unit("timer"), unit("service")})
        QFile::remove(file);
}

bool ReminderTimer::set(bool on)
{
    if (on && runsSystemd() && startTimer()) {
        QFile::remove(autostart());
        return true;
    }
    // A timer that systemd would not start does nothing; the desktop starts programs itself.
    removeUnits();
    if (on)
        return replaced(autostart(), autostartText());
    return !QFileInfo::exists(autostart()) || QFile::remove(autostart());
}

} // namespace firstdew::linuxside
