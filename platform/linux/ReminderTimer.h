#pragma once

#include <QString>

namespace firstdew::linuxside
{

/// Has the system look for due reminders while the app is closed: by a user timer of systemd, or, without systemd, by a
/// program started with the desktop (XDG Desktop Application Autostart Specification).
class ReminderTimer
{
public:
    /// `config` is the folder of the person's settings ($XDG_CONFIG_HOME); `program` what is to be run; `record` its store.
    ReminderTimer(QString config, QString program, QString record);
    /// Makes the system look, or stop looking. Doing it twice changes nothing. False where it could not be written.
    bool set(bool on);
    [[nodiscard]] bool isSet() const;

private:
    [[nodiscard]] QString unit(const char* kind) const;
    [[nodiscard]] QString autostart() const;
    [[nodiscard]] bool writeUnits() const;
    [[nodiscard]] bool writeAutostart() const;

    QString m_config;
    QString m_program;
    QString m_record;
};

} // namespace firstdew::linuxside
