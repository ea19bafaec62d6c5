#pragma once

#include "diary/Reader.h"
#include "journal/Journal.h"
#include "simulator/Disk.h"
#include "simulator/Hours.h"
#include "simulator/Oracle.h"

#include <filesystem>
#include <optional>

namespace firstdew::simulator {

/// What happened, for the table.
using Counts = std::map<std::string, long long>;

/// Faults of the app itself that are put in to see whether the oracle finds them.
enum class Planted {
    None,
    Forgets,
    Doubles,
    NeverSyncs,
    LateAlarm,
    ShowsAgain,
    RingsInSession,
    TrustsTheClock,
    StaleFace
};

/// A phone with the app on it: the production store, diary, planner and engine between a disk, a clock and a system
/// that are simulated. The app is open, or only its alarms are with the system.
class Phone {
public:
    Phone(std::filesystem::path file, Dice& dice, Counts& counts, Planted planted);

    Hours hours;
    bool permitted = true; ///< the person lets it show notices
    bool off = false;
    bool alarms = true; ///< the system takes alarms ahead of time; else it starts the app to look
    Watcher watcher;
    Ledger ledger;

    [[nodiscard]] const diary::Diary& diary() const { return m_reader.diary(); }
    [[nodiscard]] const std::string& person() const { return m_reader.person(); }
    [[nodiscard]] bool leading() const { return m_leading; }
    [[nodiscard]] bool gone() const { return m_disk.dead(); }
    Disk& disk() { return m_disk; }

    /// Opens the app: reads the record, compares it with the ledger, looks.
    void open();
    void close();
    /// The process or the phone is gone; it is opened again.
    void crash(bool powerCut);
    /// Records; true where it was acknowledged. A refused one is tried once more, as a person would.
    bool append(const Payload& payload, std::optional<LocalTime> when = {}, const std::string& corrects = {});
    bool appendAll(const std::vector<Payload>& payloads);
    /// Another process records that fact while the app is open or not.
    void appendElsewhere(const Payload& payload, LocalTime when);
    /// The app looks: follows the record, shows what is due, plans alarms.
    void look();
    /// Alarms whose time has come ring, with the app closed, too.
    void ring();
    void setLeading(bool leading);
    void choose(std::string person);

    /// The back-up, its restoration, and the step to a new version of the store.
    void backUp();
    void restoreBackUp();
    void migrate();
    /// Every face that can be asked tells the same.
    void compareFaces();

private:
    [[nodiscard]] Fact factOf(const Payload& payload, LocalTime when, const std::string& corrects);
    void read();
    void follow();
    void turn() { m_reader.turnTo(hours.local().date); }
    void show(const std::vector<situation::Reminder>& due);

    std::filesystem::path m_file;
    Dice& m_dice;
    Counts& m_counts;
    Planted m_planted;
    Disk m_disk;
    std::optional<journal::Journal> m_journal;
    diary::Reader m_reader;
    std::string m_person;
    std::vector<situation::Reminder> m_planned;
    bool m_leading = false;
    std::string m_sealed;
    std::vector<Fact> m_backedUp;
};

} // namespace firstdew::simulator

namespace firstdew::facts {
FIRSTDEW_TOKENS(simulator::Planted, "none", "forgets", "doubles", "never-syncs", "late-alarm", "shows-again",
                "rings-in-session", "trusts-the-clock", "stale-face");
} // namespace firstdew::facts
