#include "Interface.h"

#include <QFile>

#include <sqlite3.h>

using namespace firstdew;
using namespace firstdew::tests;

namespace {

QStringList textsOf(Interface& ui)
{
    ui.settled();
    QStringList out;
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (isText(item))
            out << item->property("text").toString();
    });
    return out;
}

void write(const QString& file, const QByteArray& content)
{
    QFile out(file);
    REQUIRE(out.open(QIODevice::WriteOnly));
    REQUIRE(out.write(content) == content.size());
}

/// A store of some facts, ready to be ruined.
void makeStore(const QString& file)
{
    auto journal = journal::Journal::open(file.toStdString());
    REQUIRE(journal);
    std::vector<Fact> facts;
    for (int i = 0; i < 400; ++i)
        facts.push_back(
            {"", "p1", *LocalTime::parse("2026-03-01T19:00"), 1'772'000'000'000 + i, "",
             Question{"A question long enough to fill some pages of the store, number " + std::to_string(i)}});
    REQUIRE(journal.value().appendAll(facts));
}

void runSql(const QString& file, const char* sql)
{
    sqlite3* db = nullptr;
    REQUIRE(sqlite3_open(file.toUtf8().constData(), &db) == SQLITE_OK);
    REQUIRE(sqlite3_exec(db, sql, nullptr, nullptr, nullptr) == SQLITE_OK);
    REQUIRE(sqlite3_close(db) == SQLITE_OK);
}

const char* const kTitle = "Your record could not be opened";

/// Says so, says what is safe, offers to try again, and nothing of a beginning.
void checkSaid(Interface& ui, ui::Trouble::Value trouble, bool repair)
{
    const QStringList texts = textsOf(ui);
    CHECK(ui.store.trouble() == trouble);
    CHECK(texts.contains(kTitle));
    CHECK(texts.contains("Try again"));
    CHECK(texts.contains("Repair the record") == repair);
    for (const char* beginning : {"Welcome to Firstdew", "Set up", "Today", "Plan"})
        CHECK_FALSE(texts.contains(beginning));
}

} // namespace

TEST_CASE("A damaged record is said to be damaged, never a welcome, and can be repaired on the spot")
{
    const auto ruin = [](const QString& file) {
        makeStore(file);
        QFile page(file);
        REQUIRE(page.open(QIODevice::ReadWrite));
        REQUIRE(page.seek(3 * 4096));
        page.write(QByteArray(4096, '\x5a'));
    };
    Interface ui({390, 844}, "light", ruin);
    checkSaid(ui, ui::Trouble::Damaged, true);
    const auto repaired = ui.context.keep.repair();
    CHECK(repaired.ok);
    CHECK(ui.store.trouble() == ui::Trouble::None);
    const QStringList texts = textsOf(ui);
    CHECK_FALSE(texts.contains(kTitle));
    CHECK(texts.contains("Today"));
}

TEST_CASE("A record of a newer version is said to be one, and stays as it is")
{
    Interface ui({390, 844}, "light", [](const QString& file) {
        makeStore(file);
        runSql(file, "PRAGMA user_version = 99");
    });
    checkSaid(ui, ui::Trouble::Newer, false);
}

TEST_CASE("A file that is no record is said to be none, and stays as it is")
{
    const QByteArray letter = QByteArray("Dear Anna, ").repeated(100);
    Interface ui({390, 844}, "light", [&](const QString& file) { write(file, letter); });
    checkSaid(ui, ui::Trouble::Foreign, false);
    QFile file(ui.folder.path() + "/record.db");
    REQUIRE(file.open(QIODevice::ReadOnly));
    CHECK(file.readAll() == letter);
}

TEST_CASE("A record that was emptied while a copy lies beside it is not taken for a new one")
{
    Interface ui({390, 844}, "light", [](const QString& file) {
        makeStore(file);
        auto journal = journal::Journal::open(file.toStdString());
        REQUIRE(journal.value().keepCopy("before-import"));
        for (const char* suffix : {"", "-wal", "-shm"})
            QFile::remove(file + suffix);
    });
    checkSaid(ui, ui::Trouble::Damaged, true);
    CHECK(ui.context.keep.repair().ok);
    CHECK(ui.store.trouble() == ui::Trouble::None);
    CHECK(ui.store.allFacts().size() == 400);
}

TEST_CASE("Where the folder of the record cannot be, that is said")
{
    Interface ui({390, 844}, "light", [](const QString& file) {
        REQUIRE(QDir().mkpath(file)); // a folder in its place
    });
    checkSaid(ui, ui::Trouble::Unreadable, false);
}

TEST_CASE("A record that another program holds is opened once it lets go")
{
    sqlite3* other = nullptr;
    Interface ui({390, 844}, "light", [&](const QString& file) {
        makeStore(file);
        REQUIRE(sqlite3_open(file.toUtf8().constData(), &other) == SQLITE_OK);
        REQUIRE(sqlite3_exec(other, "PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE", nullptr, nullptr, nullptr) ==
                SQLITE_OK);
    });
    checkSaid(ui, ui::Trouble::Busy, false);
    sqlite3_close(other);
    ui.store.reopen();
    CHECK(ui.store.trouble() == ui::Trouble::None);
    CHECK_FALSE(textsOf(ui).contains(kTitle));
}

TEST_CASE("What was read stays when reading it again fails, so that a running session keeps its page")
{
    Interface ui({390, 844}, "light");
    const auto before = ui.store.allFacts().size();
    sqlite3* other = nullptr;
    REQUIRE(sqlite3_open((ui.folder.path() + "/record.db").toUtf8(), &other) == SQLITE_OK);
    runSql(ui.folder.path() + "/record.db", "ALTER TABLE fact RENAME TO gone");
    ui.store.reload();
    CHECK(ui.store.allFacts().size() == before);
    CHECK(ui.store.trouble() == ui::Trouble::None);
    CHECK_FALSE(textsOf(ui).contains(kTitle));
    sqlite3_close(other);
}
