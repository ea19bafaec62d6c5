#pragma once

#include <QString>

namespace firstdew::linuxside {

/// Has the system look for due reminders while the app is closed: by a user timer of systemd, or, without systemd, by a
/// program started with the desktop (XDG Desktop Application Autostart Specification).
class ReminderTimer {
public:
    /// `config` is the folder of the person's settings ($XDG_CONFIG_HOME); `program` what is to be run; `record` its
    /// store. `systemd` is the folder that is there where systemd runs (sd_booted(3)).
    ReminderTimer(QString config, QString program, QString record,
                  QString systemd = QStringLiteral("/run/systemd/system"));
    /// Makes the system look, or stop looking. Doing it twice changes nothing. False where it could not be written.
    bool set(bool on);
    /// Whether the system looks, and for this program and record.
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
