#include "Fingers.h"

#include "exchange/CareSheetFile.h"

#include <QDir>
#include <QFile>

using namespace firstdew;
using namespace firstdew::tests;

namespace {

/// A sheet for both hands, given on that day.
CareSheet sheetOf(const char* given, double direct)
{
    CareSheet s;
    s.who = "Dr Vance";
    s.given = *LocalDate::parse(given);
    s.sites = {Site::Hands};
    s.directLimit = Milliamps{direct};
    return s;
}

/// The documents of an invented home, with one care sheet in them.
struct Home {
    explicit Home(const CareSheet& sheet)
    {
        qputenv("HOME", folder.path().toUtf8());
        QDir(folder.path()).mkdir("Documents");
        QFile file(folder.path() + "/Documents/sheet.json");
        REQUIRE(file.open(QIODevice::WriteOnly));
        file.write(QByteArray::fromStdString(exchange::careSheetJson(sheet)));
    }
    ~Home() { qputenv("HOME", before); }
    Home(const Home&) = delete;
    Home& operator=(const Home&) = delete;

    QByteArray before = qgetenv("HOME");
    QTemporaryDir folder;
};

QQuickItem* tapOn(Interface& ui, const QString& text)
{
    QQuickItem* found = button(ui, text);
    REQUIRE(found != nullptr);
    tap(ui, onScreen(found).center());
    return found;
}

std::size_t sheets(Interface& ui) { return ui.store.diary().careSheets.size(); }

} // namespace

TEST_CASE("A care sheet that allows more is shown as that, and is used only after a word for it")
{
    Home home(sheetOf("2026-03-19", 14.5));
    Interface ui({600, 1600}, "light");
    REQUIRE(ui.store.append(sheetOf("2026-03-01", 12)));
    REQUIRE(ui.show("CareSheetPage"));
    CHECK(shows(ui, "Limit, direct: 12 mA"));
    tapOn(ui, "sheet.json");
    CHECK(shows(ui, "Allows more than now. Limit, direct: 14.5 mA (now 12 mA)"));
    QQuickItem* use = tapOn(ui, "Use this care sheet");
    CHECK_FALSE(use->isEnabled());
    CHECK(sheets(ui) == 1);
    CHECK_FALSE(ui.context.keep.acceptSheet(home.folder.path() + "/Documents/sheet.json", false));
    tapOn(ui, "My prescriber told me that more is allowed from now on");
    tapOn(ui, "Use this care sheet");
    CHECK(sheets(ui) == 2);
    CHECK(shows(ui, "Limit, direct: 14.5 mA"));
}

TEST_CASE("A care sheet that lowers a limit is used at once, and one from the future is refused")
{
    {
        Home home(sheetOf("2026-03-19", 9));
        Interface ui({600, 1600}, "light");
        REQUIRE(ui.show("CareSheetPage"));
        tapOn(ui, "sheet.json");
        CHECK_FALSE(shows(ui, "Allows more than now."));
        tapOn(ui, "Use this care sheet");
        CHECK(sheets(ui) == 1);
    }
    Home home(sheetOf("2026-03-21", 9)); // tomorrow
    Interface ui({600, 1600}, "light");
    REQUIRE(ui.show("CareSheetPage"));
    tapOn(ui, "sheet.json");
    CHECK(button(ui, "Use this care sheet") == nullptr);
    CHECK(shows(ui, "This care sheet is dated in the future."));
}

TEST_CASE("A care sheet older than the one in use changes nothing, and says so")
{
    Home home(sheetOf("2026-02-01", 15));
    Interface ui({600, 1600}, "light");
    REQUIRE(ui.store.append(sheetOf("2026-03-01", 12)));
    REQUIRE(ui.show("CareSheetPage"));
    tapOn(ui, "sheet.json");
    CHECK(shows(ui, "This care sheet changes nothing"));
    CHECK(button(ui, "Use this care sheet") == nullptr);
}
