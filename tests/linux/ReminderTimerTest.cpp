#include "linux/ReminderTimer.h"
#include "Bus.h"

#include <QDir>
#include <QFile>

using namespace firstdew;

namespace {

/// A home with, where wanted, a systemd: a systemctl that writes down what it was asked, and fails where told to.
struct Home {
    QTemporaryDir own;
    QByteArray path = qgetenv("PATH");
    QString program = own.filePath("programs/first dew 100%");
    QString record = own.filePath("my \"record\".db");

    explicit Home(bool systemd = true)
    {
        tests::program();
        if (!systemd)
            return;
        QDir(own.path()).mkpath("run/systemd/system");
        QDir(own.path()).mkpath("bin");
        const QString file = own.filePath("bin/systemctl");
        write(file, "#!/bin/sh\necho \"$*\" >>'" + own.filePath("asked").toUtf8() + "'\n! grep -qsF \"$2\" '" +
                        own.filePath("refused").toUtf8() + "'\n");
        REQUIRE(QFile::setPermissions(file, QFile::ReadOwner | QFile::ExeOwner));
        qputenv("PATH", own.filePath("bin").toUtf8() + ":" + path);
    }
    ~Home() { qputenv("PATH", path); }
    Home(const Home&) = delete;
    Home& operator=(const Home&) = delete;

    linuxside::ReminderTimer timer() const
    {
        return {own.filePath("config"), program, record, own.filePath("run/systemd/system")};
    }
    static void write(const QString& name, const QByteArray& text)
    {
        QFile file(name);
        REQUIRE(file.open(QIODevice::WriteOnly));
        file.write(text);
    }
    QStringList lines(const QString& name) const
    {
        QFile file(own.filePath(name));
        return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()).split('\n', Qt::SkipEmptyParts)
                                              : QStringList();
    }
    QStringList asked()
    {
        const auto out = lines("asked");
        QFile::remove(own.filePath("asked"));
        return out;
    }
    /// Every file of the settings.
    QStringList files() const
    {
        QStringList out;
        for (const char* name : {"systemd/user/firstdew-remind.service", "systemd/user/firstdew-remind.timer",
                                 "autostart/firstdew-remind.desktop"})
            if (QFile::exists(own.filePath(QString("config/") + name)))
                out << name;
        return out;
    }
};

const QStringList kUnits{"systemd/user/firstdew-remind.service", "systemd/user/firstdew-remind.timer"};
const QStringList kAutostart{"autostart/firstdew-remind.desktop"};

} // namespace

TEST_CASE("with systemd a timer of the person's own looks every five minutes, and at once for what was missed")
{
    Home home;
    CHECK_FALSE(home.timer().isSet());
    CHECK(home.timer().set(true));
    CHECK(home.timer().isSet());
    CHECK(home.files() == kUnits);
    CHECK(home.asked() == QStringList{"--user daemon-reload", "--user enable --now firstdew-remind.timer"});
    const auto timer = home.lines("config/systemd/user/firstdew-remind.timer");
    CHECK(timer.contains("OnCalendar=*:0/5")); // tests/system/month_test.py goes by it
    CHECK(timer.contains("Persistent=true"));
    CHECK(timer.contains("WantedBy=timers.target"));
    const auto service = home.lines("config/systemd/user/firstdew-remind.service");
    const QString folder = home.own.path();
    // As systemd.syntax(7) has it: quotes escaped, the sign of a specifier doubled.
    CHECK(service.contains("ExecStart=\"" + folder + "/programs/first dew 100%%\" --store \"" + folder +
                           "/my \\\"record\\\".db\" --remind"));
    CHECK(service.contains("ConditionFileIsExecutable=" + folder + "/programs/first dew 100%%"));
    // No network, no further rights, nothing that others can read.
    for (const char* line : {"RestrictAddressFamilies=AF_UNIX", "NoNewPrivileges=yes", "UMask=0077",
                             "SystemCallFilter=@system-service", "RestrictNamespaces=yes"})
        CHECK(service.contains(line));
}

TEST_CASE("systemd judges the reminder's unit to be shut in as far as one of a person's own can be")
{
    Home home;
    REQUIRE(home.timer().set(true));
    // systemd's own figure, 0 is best: 6.3 before calls were filtered further, 5.9 since (systemd 252).
    QProcess judge;
    auto environment = QProcessEnvironment::systemEnvironment();
    environment.insert("XDG_RUNTIME_DIR", home.own.path());
    judge.setProcessEnvironment(environment);
    judge.setProcessChannelMode(QProcess::MergedChannels);
    judge.start("systemd-analyze", {"security", "--user", "--offline=true", "--threshold=59",
                                    home.own.filePath("config/systemd/user/firstdew-remind.service")});
    REQUIRE(judge.waitForFinished());
    const auto told = judge.readAll().toStdString();
    INFO(told);
    CHECK(told.find("Overall exposure level") != std::string::npos);
    CHECK(judge.exitCode() == 0);
    // A tap on the notice starts the app from this unit: Qt compiles, and a display driver may try what is not allowed.
    const auto service = home.lines("config/systemd/user/firstdew-remind.service");
    CHECK(service.contains("SystemCallErrorNumber=EPERM"));
    CHECK_FALSE(service.join('\n').contains("MemoryDenyWriteExecute"));
}

TEST_CASE("the timer is taken away without a trace")
{
    Home home;
    REQUIRE(home.timer().set(true));
    (void)home.asked();
    CHECK(home.timer().set(false));
    CHECK(home.asked() == QStringList{"--user disable --now firstdew-remind.timer"});
    CHECK(home.files().isEmpty());
    CHECK(home.timer().set(false)); // again changes nothing
    CHECK(home.asked().isEmpty());
}

TEST_CASE("a timer for another program or record is not the one wanted")
{
    Home home;
    REQUIRE(home.timer().set(true));
    home.record = home.own.filePath("other.db");
    CHECK_FALSE(home.timer().isSet());
    CHECK(home.timer().set(true));
    CHECK(home.lines("config/systemd/user/firstdew-remind.service").join('\n').contains("other.db"));
}

TEST_CASE("without systemd the desktop starts a program that watches")
{
    Home home(false);
    CHECK(home.timer().set(true));
    CHECK(home.timer().isSet());
    CHECK(home.files() == kAutostart);
    const auto entry = home.lines("config/autostart/firstdew-remind.desktop");
    CHECK(entry.contains("Exec=\"" + home.own.path() + "/programs/first dew 100%%\" --store \"" + home.own.path() +
                         "/my \\\\\"record\\\\\".db\" --remind --watch"));
    CHECK(entry.contains("TryExec=" + home.own.path() + "/programs/first dew 100%"));
    QProcess validate;
    validate.setProcessChannelMode(QProcess::MergedChannels);
    validate.start("desktop-file-validate", {home.own.filePath("config/autostart/firstdew-remind.desktop")});
    REQUIRE(validate.waitForFinished());
    CHECK(validate.readAll().toStdString() == "");
    CHECK(validate.exitCode() == 0);
    CHECK(home.timer().set(false));
    CHECK(home.files().isEmpty());
}

TEST_CASE("where systemd will not start the timer the desktop does it, and is left when systemd will")
{
    Home home;
    Home::write(home.own.filePath("refused"), "enable\n");
    CHECK(home.timer().set(true));
    CHECK(home.timer().isSet());
    CHECK(home.files() == kAutostart);
    REQUIRE(QFile::remove(home.own.filePath("refused")));
    CHECK(home.timer().set(true));
    CHECK(home.files() == kUnits);
}

TEST_CASE("settings that cannot be written are said")
{
    Home home(false);
    Home::write(home.own.filePath("config"), "no folder");
    CHECK_FALSE(home.timer().set(true));
    CHECK_FALSE(home.timer().isSet());
}
