#include "diary/AppLock.h"
#include "Fingers.h"
#include "Interface.h"
#include "journal/BackUp.h"

#include <QAccessible>
#include <QFile>
#include <QKeyEvent>
#include <QThread>

using namespace firstdew;
using namespace firstdew::tests;

// The app lock as a person meets it: pointer and keys on the window, and what a screen reader is told.
namespace {

using Verdict = FakeLock::Verdict;

/// A record of that person, with the lock on or off.
std::function<void(const QString&)> recordOf(const char* name, Level level, bool on)
{
    return [=](const QString& file) {
        auto journal = journal::Journal::open(file.toStdString());
        REQUIRE(journal);
        const LocalTime then = *LocalTime::parse("2026-03-18T20:00");
        const auto fact = [&](Payload p) { return Fact{"", "p1", then, 1'772'000'000'000, "", std::move(p)}; };
        REQUIRE(journal.value().appendAll({fact(Person{name, LocalDate::parse("1990-04-23"), {}, {}, {}}),
                                           fact(SiteUse{Site::Hands, true}), fact(CheckIn{DiarySite::Hands, level, {}}),
                                           fact(diary::appLockPreference(on))}));
    };
}
const auto kLocked = recordOf("Alma", Level::Clammy, true);
const auto kOpen = recordOf("Alma", Level::Clammy, false);

/// A device is there before the app is.
struct Device {
    FakeLock lock;
    Device(bool there, bool through)
    {
        lock.there = there;
        lock.through = through;
        Interface::deviceLock = &lock;
    }
    ~Device() { Interface::deviceLock = nullptr; }
};

enum class Has { NoLock, Password, Dialog };

struct Guarded : Device, Interface {
    explicit Guarded(const std::function<void(const QString&)>& record, Has has = Has::Password,
                     QSize size = {390, 844})
        : Device(has != Has::NoLock, has == Has::Password),
          Interface((needApplication(), QAccessible::setActive(true), size), "light", record)
    {
        settled();
    }
};

/// With the clock at its fastest a millisecond is a quarter of an hour.
struct Clocks {
    explicit Clocks(double speed) { Interface::sessionSpeed = speed; }
    ~Clocks() { Interface::sessionSpeed = 1; }
};
constexpr double kFast = 1e6;
void awayForLong(Interface& ui)
{
    ui.context.lock.setInFront(false);
    QThread::msleep(2);
    ui.context.lock.setInFront(true);
}

void write(Interface& ui, const QString& text)
{
    for (const QChar letter : text)
        for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent event(type, 0, Qt::NoModifier, QString(letter));
            QCoreApplication::sendEvent(ui.window, &event);
        }
    ui.settled();
}

void key(Interface& ui, Qt::Key which, const QString& text = {})
{
    for (const auto type : {QEvent::ShortcutOverride, QEvent::KeyPress, QEvent::KeyRelease}) {
        QKeyEvent event(type, which, Qt::NoModifier, text);
        QCoreApplication::sendEvent(ui.window, &event);
    }
    ui.settled();
}

/// Everything that stands in the tree of accessibility, seen or not.
QStringList inTree(QAccessibleInterface* from)
{
    QStringList out;
    if (from == nullptr)
        return out;
    for (const auto what : {QAccessible::Name, QAccessible::Description, QAccessible::Value})
        if (const QString said = from->text(what); !said.isEmpty())
            out << plain(said);
    for (int i = 0; i < from->childCount(); ++i)
        out << inTree(from->child(i));
    return out;
}
QStringList inTree(Interface& ui) { return inTree(QAccessible::queryAccessibleInterface(ui.window)); }

const char* const kTitle = "Firstdew is locked";

} // namespace

TEST_CASE("A locked app starts with its lock alone: nothing of the record is drawn, told or kept in the tree")
{
    Guarded ui(kLocked);
    CHECK(shows(ui, kTitle));
    CHECK(button(ui, "Unlock") != nullptr);
    const QString tree = inTree(ui).join('|');
    CHECK(tree.contains(kTitle));
    for (const char* private_ : {"Alma", "Hands", "Clammy", "Today", "Diary", "Plan", "Dry"}) {
        INFO(private_);
        CHECK_FALSE(tree.contains(private_));
        CHECK_FALSE(shows(ui, private_));
    }
    CHECK_FALSE(ui.window->property("canGoBack").toBool()); // the way back leaves the app
    for (const Qt::Key which : {Qt::Key_Escape, Qt::Key_Back, Qt::Key_Down, Qt::Key_Tab})
        key(ui, which);
    CHECK(shows(ui, kTitle));
}

TEST_CASE("The picture of a locked app is the same whatever the record holds")
{
    const auto picture = [](const std::function<void(const QString&)>& record, bool leave) {
        Guarded ui(record, Has::Dialog);
        if (leave) { // locked over an open page, as after a time away
            ui.lock.answer(Verdict::Confirmed);
            REQUIRE(app::showPage(*ui.window, "Diary"));
            ui.settled();
            awayForLong(ui);
        }
        CHECK(shows(ui, kTitle));
        return ui.settled();
    };
    const Clocks fast(kFast);
    const QImage one = picture(recordOf("Alma", Level::Clammy, true), false);
    CHECK(picture(recordOf("Zoe", Level::Dripping, true), false) == one);
    CHECK(picture(recordOf("Zoe", Level::Dripping, true), true) == one);
    Guarded open(kOpen);
    CHECK(open.settled() != one);
}

TEST_CASE("A wrong password is told and asked for again, and the right one opens the app")
{
    Guarded ui(kLocked);
    write(ui, "dew at seven");
    key(ui, Qt::Key_Return, "\r");
    CHECK(ui.lock.asked == 2);
    CHECK(shows(ui, kTitle));
    CHECK(shows(ui, "That was not right. Try again."));
    CHECK(shows(ui, "Caps Lock may be on"));        // in the system's own words
    CHECK_FALSE(button(ui, "Unlock")->isEnabled()); // what was typed is gone
    write(ui, "dew at six");
    press(ui, "Unlock");
    CHECK_FALSE(shows(ui, kTitle));
    CHECK(shows(ui, "Clammy"));
    CHECK(inTree(ui).join('|').contains("Clammy"));
}

TEST_CASE("What is typed into the lock is hidden unless the person wants to see it")
{
    Guarded ui(kLocked);
    write(ui, "dew at six");
    const auto drawn = [&] {
        QString out;
        visit(ui.window->contentItem(), [&](QQuickItem* item) {
            if (item->inherits("QQuickTextField"))
                out = item->property("displayText").toString();
        });
        return out;
    };
    CHECK(drawn() == QString(10, QChar(0x25cf)));
    press(ui, "Show what I type");
    CHECK(drawn() == "dew at six");
    press(ui, "Hide what I type");
    CHECK(drawn() == QString(10, QChar(0x25cf)));
}

TEST_CASE("Back within a minute the app is as it was, and after it the lock stands before the page that was open")
{
    {
        const Clocks standing(0); // no time goes by
        Guarded ui(kLocked, Has::Dialog);
        ui.lock.answer(Verdict::Confirmed);
        REQUIRE(app::showPage(*ui.window, "Diary"));
        ui.context.lock.setInFront(false);
        ui.context.lock.setInFront(true);
        CHECK_FALSE(shows(ui, kTitle));
    }
    const Clocks fast(kFast);
    Guarded ui(kLocked, Has::Dialog);
    ui.lock.answer(Verdict::Confirmed);
    REQUIRE(app::showPage(*ui.window, "KeepPage"));
    ui.settled();
    REQUIRE(shows(ui, "Make a back-up"));
    awayForLong(ui);
    CHECK(shows(ui, kTitle));
    CHECK_FALSE(inTree(ui).join('|').contains("Make a back-up"));
    ui.lock.answer(Verdict::Confirmed);
    CHECK(shows(ui, "Make a back-up"));
}

TEST_CASE("A sheet that is open goes when the lock comes")
{
    const Clocks fast(kFast);
    Guarded ui(kLocked, Has::Dialog);
    ui.lock.answer(Verdict::Confirmed);
    auto* router = ui.router();
    router->openNotNow(ui::DiarySite::Hands);
    ui.settled();
    REQUIRE(router->sheets() == 1);
    awayForLong(ui);
    CHECK(router->sheets() == 0);
    CHECK(shows(ui, kTitle));
}

TEST_CASE("A running session is never locked, and the lock comes once its end is written down")
{
    Device device(true, false);
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("run"));
    REQUIRE(ui.store.recordForAll(diary::appLockPreference(true))); // nobody was confirmed
    ui.context.lock.setInFront(false);
    ui.context.lock.setInFront(true);
    CHECK_FALSE(shows(ui, kTitle));
    CHECK(device.lock.asked == 0);
    press(ui, "Stop");
    ui.bath.stop(); // without the seconds in which it can be taken back
    REQUIRE(ui.bath.page() == ui::BathPage::After);
    CHECK_FALSE(shows(ui, kTitle));
    CHECK(button(ui, "Diary") == nullptr);
    REQUIRE_FALSE(app::showPage(*ui.window, "Diary"));
    REQUIRE_FALSE(app::showPage(*ui.window, "KeepPage"));
    CHECK(ui.window->property("place").toInt() == ui::Place::Session);
    press(ui, "Fine");
    press(ui, "Save in the diary");
    CHECK(shows(ui, kTitle));
    CHECK(device.lock.asked == 1);
    device.lock.answer(Verdict::Confirmed);
    CHECK_FALSE(shows(ui, kTitle));
}

TEST_CASE("A session without an end comes back before the lock, and Stop with it")
{
    QTemporaryDir folder;
    const QString file = folder.path() + "/record.db";
    {
        Interface before({390, 844}, "light");
        REQUIRE(before.store.append(diary::appLockPreference(true)));
        REQUIRE(before.showBath("run"));
        before.bath.flush();
        REQUIRE(QFile::copy(before.file, file));
        for (const char* suffix : {"-wal", "-shm"})
            QFile::copy(before.file + suffix, file + suffix);
    }
    Guarded ui([&](const QString& at) {
        for (const char* suffix : {"", "-wal", "-shm"})
            QFile::copy(file + suffix, at + suffix);
    });
    CHECK(ui.bath.busy());
    CHECK_FALSE(shows(ui, kTitle));
    CHECK(ui.lock.asked == 0);
    CHECK(ui.context.lock.sessionOnly());
}

TEST_CASE("The lock is switched on and off by whoever the device confirms, and by nobody else")
{
    const QString row = "Ask for this phone's lock before showing the diary";
    Guarded ui(kOpen);
    REQUIRE(app::showPage(*ui.window, "Settings"));
    for (const bool on : {true, false}) {
        press(ui, row);
        CHECK(shows(ui, "Confirm that it is you"));
        key(ui, Qt::Key_Escape);
        CHECK(ui.store.lockWanted() != on);
        CHECK(button(ui, row) != nullptr); // where the person was
        press(ui, row);
        write(ui, "dew at seven");
        press(ui, "Confirm");
        CHECK(ui.store.lockWanted() != on);
        write(ui, "dew at six");
        press(ui, "Confirm");
        CHECK(ui.store.lockWanted() == on);
        CHECK(button(ui, row)->property("checked").toBool() == on);
        CHECK_FALSE(shows(ui, kTitle));
    }
}

TEST_CASE("A device that cannot ask after all switches nothing")
{
    Guarded ui(kOpen, Has::Dialog);
    REQUIRE(app::showPage(*ui.window, "Settings"));
    press(ui, "Ask for this phone's lock before showing the diary");
    ui.lock.answer(Verdict::Unable);
    CHECK(shows(ui, "This phone could not ask for its lock. Nothing was changed."));
    CHECK_FALSE(ui.store.lockWanted());
}

TEST_CASE("Where the device has no lock, none can be switched on, and one that is on is said not to hold")
{
    const QString row = "Ask for this phone's lock before showing the diary";
    {
        Guarded ui(kOpen, Has::NoLock);
        REQUIRE(app::showPage(*ui.window, "Settings"));
        CHECK_FALSE(button(ui, row)->isEnabled());
        CHECK(shows(ui, "For this, the phone needs a lock of its own that Firstdew can ask for."));
        press(ui, row);
        CHECK_FALSE(ui.store.lockWanted());
    }
    Guarded ui(kLocked, Has::NoLock);
    CHECK_FALSE(shows(ui, kTitle));
    CHECK(shows(ui, "The app lock does not work here"));
    press(ui, "Close");
    CHECK(shows(ui, "Clammy"));
    REQUIRE(app::showPage(*ui.window, "Settings"));
    press(ui, row); // off, with nobody to ask
    CHECK_FALSE(ui.store.lockWanted());
}

TEST_CASE("A system's dialog that was left is asked for by the button, and one that cannot ask locks nobody out")
{
    Guarded ui(kLocked, Has::Dialog);
    CHECK(ui.lock.asked == 1); // by itself, once
    ui.lock.answer(Verdict::Dropped);
    ui.context.lock.setInFront(false);
    ui.context.lock.setInFront(true);
    ui.settled();
    CHECK(ui.lock.asked == 1);
    press(ui, "Unlock");
    CHECK(ui.lock.asked == 2);
    ui.lock.answer(Verdict::Refused);
    CHECK(shows(ui, "This phone did not confirm you. Try again."));
    press(ui, "Unlock");
    ui.lock.answer(Verdict::Unable);
    CHECK_FALSE(shows(ui, kTitle));
    CHECK(shows(ui, "The app lock does not work here"));
}

TEST_CASE("One person's lock is the app's, and what is restored or imported leaves the lock as it was here")
{
    Guarded ui(kOpen, Has::Dialog);
    REQUIRE(ui.store.addPerson(Person{"Ben", {}, {}, {}, {}}));
    REQUIRE(ui.store.recordForAll(diary::appLockPreference(true)));
    REQUIRE(ui.store.append(diary::appLockPreference(false))); // Ben alone
    CHECK(ui.store.lockWanted());
    CHECK(ui.context.lock.locked());
    ui.settled();
    ui.lock.answer(Verdict::Confirmed);

    const QString sealed = ui.folder.path() + "/locked.pgp";
    auto& journal = ui.store.journalForWholeStoreActs();
    const auto bytes = journal::backUp(*journal, "dew at six", 1024);
    REQUIRE(bytes);
    QFile out(sealed);
    REQUIRE(out.open(QIODevice::WriteOnly));
    out.write(bytes->data(), static_cast<qint64>(bytes->size()));
    out.close();
    REQUIRE(ui.store.recordForAll(diary::appLockPreference(false)));
    REQUIRE(ui.context.keep.restore(sealed, "dew at six").ok);
    CHECK_FALSE(ui.store.lockWanted());
    CHECK_FALSE(ui.context.lock.locked());
    REQUIRE(ui.store.recordForAll(diary::appLockPreference(true)));
    REQUIRE(ui.context.keep.restore(sealed, "dew at six").ok);
    CHECK(ui.store.lockWanted());
    CHECK_FALSE(ui.context.lock.locked()); // confirmed a moment ago
}
