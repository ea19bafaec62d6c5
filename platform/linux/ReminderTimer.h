#pragma once

#include <QString>

namespace firstdew::linuxside {

/// Has the system show due reminders while the app is closed: by a user timer of systemd, or, without systemd, by a
/// program started with the desktop (XDG Desktop Application Autostart Specification).
class ReminderTimer {
public:
    /// `config` is the folder of the person's settings ($XDG_CONFIG_HOME), `program` the program to run, `record` its
    /// store. The folder `systemd` exists where systemd runs (sd_booted(3)).
    ReminderTimer(QString config, QString program, QString record,
                  QString systemd = QStringLiteral("/run/systemd/system"));
    /// Switches this on or off. Doing it twice changes nothing. Returns false if a file could not be written.
    bool set(bool on);
    /// Whether it is switched on for this program and record.
    [[nodiscard]] bool isSet() const;

private:
    [[nodiscard]] QString unit(const char* kind) const;
    [[nodiscard]] QString autostart() const;
    [[nodiscard]] QString serviceText() const;
    [[nodiscard]] QString timerText() const;
    [[nodiscard]] QString autostartText() const;
    [[nodiscard]] bool runsSystemd() const;
    [[nodiscard]] bool startTimer() const;
    void removeUnits() const;

    QString m_systemd;
    QString m_config;
    QString m_program;
    QString m_record;
};

} // namespace firstdew::linuxside
