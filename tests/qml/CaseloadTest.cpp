#include "Fingers.h"

#include "exchange/CareSheetFile.h"
#include "journal/BackUp.h"
#include "journal/Journal.h"
#include "ports/FileChooser.h"

#include <QDir>
#include <QFile>
#include <QProcess>
#include <sys/resource.h>

using namespace firstdew;
using namespace firstdew::tests;

namespace {

/// The person, who chooses that.
struct Choosing final : ports::FileChooser {
    std::string path;
    bool folders = true;
    bool choose(const std::string&, const std::string&, Chosen chosen) override { return answer(std::move(chosen)); }
    bool save(const std::string&, std::vector<ports::OutFile>, Saved) override { return false; }
    bool chooseFolder(const std::string&, Chosen chosen) override { return folders && answer(std::move(chosen)); }
    bool answer(Chosen chosen) const
    {
        QMetaObject::invokeMethod(
            qApp, [path = path, chosen] { chosen(path); }, Qt::QueuedConnection);
        return true;
    }
};

/// The invented people of demo-data, as a nurse receives them.
struct Received {
    Received()
    {
        QProcess made;
        made.start("/usr/bin/python3", {FIRSTDEW_CASELOAD, folder.path(), "--today", "2026-03-20"});
        REQUIRE(made.waitForFinished());
        REQUIRE(made.exitCode() == 0);
    }
    [[nodiscard]] QByteArray content() const
    {
        QByteArray all;
        for (const auto& name : QDir(folder.path()).entryList(QDir::Files, QDir::Name)) {
            QFile file(folder.filePath(name));
            REQUIRE(file.open(QIODevice::ReadOnly));
            all += name.toUtf8() + file.readAll();
        }
        return all;
    }
    QTemporaryDir folder;
};

struct Home {
    Home() { qputenv("HOME", folder.path().toUtf8()); }
    ~Home() { qputenv("HOME", before); }
    Home(const Home&) = delete;
    Home& operator=(const Home&) = delete;
    QByteArray before = qgetenv("HOME");
    QTemporaryDir folder;
};

/// The reading thread posts an event for each file.
void awaitReading(Interface& ui)
{
    QCoreApplication::processEvents();
    while (ui.context.caseload.reading())
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
}

void readFolder(Interface& ui, const Received& received)
{
    ui.context.caseload.useFolder(received.folder.path());
    awaitReading(ui);
}

} // namespace

TEST_CASE("The caseload is there for those who say that they teach")
{
    Interface ui({390, 2000}, "light");
    REQUIRE(ui.show("Settings"));
    CHECK(button(ui, "Caseload") == nullptr);
    press(ui, "I teach others");
    CHECK(ui.store.diary().preferences.teaches);
    press(ui, "Caseload");
    CHECK(shows(ui, "Ask the people you teach for their record"));
}

TEST_CASE("A folder of records is a list of who needs a call, and stays as it is")
{
    const Received received;
    const auto before = received.content();
    Interface ui({390, 9000}, "light");
    Choosing chooser;
    chooser.path = received.folder.path().toStdString();
    ui.context.caseload.useChooser(chooser);
    const auto own = ui.store.allFacts().size();
    REQUIRE(ui.show("Caseload"));
    press(ui, "Choose the folder");
    awaitReading(ui);
    const auto people = ui.context.caseload.people();
    CHECK(people.size() == 60);
    CHECK(people.constFirst().skin);
    CHECK_FALSE(people.constLast().call);
    CHECK(shows(ui, QString("%1 of 60 need a call.").arg(ui.context.caseload.calls())));
    CHECK(shows(ui, "blister or burn since"));
    CHECK(shows(ui, "Doing well, last entry"));
    CHECK(received.content() == before);
    CHECK(ui.store.allFacts().size() == own + 1); // where the folder is
    CHECK(ui.store.people().size() == 1);
}

TEST_CASE("A person of the caseload is the summary of that person")
{
    const Received received;
    Interface ui({390, 9000}, "light");
    readFolder(ui, received);
    REQUIRE(ui.show("Caseload"));
    const auto first = ui.context.caseload.people().constFirst();
    press(ui, first.name);
    CHECK(shows(ui, first.why.constFirst()));
    CHECK_FALSE(ui.context.caseload.page(400).isNull());
    CHECK(ui.context.caseload.page(400) != ui.summary.page(400));
    CHECK(button(ui, "Make a care sheet") != nullptr);
}

TEST_CASE("With room enough the list and the person stand side by side, mirrored where one reads from the right")
{
    const Received received;
    for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        Interface ui({1024, 768}, "light", 1, direction);
        readFolder(ui, received);
        REQUIRE(ui.show("Caseload"));
        const auto second = ui.context.caseload.people()[1];
        press(ui, second.name);
        QQuickItem* preview = nullptr;
        visit(ui.window->contentItem(), [&](QQuickItem* item) {
            if (item->inherits("firstdew::controls::PagePreview"))
                preview = item;
        });
        REQUIRE(preview != nullptr);
        const QRectF list = onScreen(button(ui, second.name));
        const QRectF page = onScreen(preview);
        CHECK((page.left() > list.right() || page.right() < list.left()));
    }
    QGuiApplication::setLayoutDirection(Qt::LeftToRight);
}

TEST_CASE("What cannot be read is named with what to do, and a passphrase opens a back-up")
{
    const QTemporaryDir folder;
    const std::string phrase = "an invented phrase";
    {
        auto opened = journal::Journal::open(folder.filePath("them.db").toStdString());
        REQUIRE(opened.ok());
        journal::Journal store = std::move(opened.value());
        const Fact fact{"",
                        "0123456789abcdef0123456789abcdef",
                        *LocalTime::parse("2026-03-19T18:00"),
                        1,
                        "",
                        Person{"Birke", LocalDate::parse("1990-04-23"), {}, {}, {}}};
        REQUIRE(store.append(fact).ok());
        const auto sealed = journal::backUp(store, phrase).value();
        QFile file(folder.filePath("birke.pgp"));
        REQUIRE(file.open(QIODevice::WriteOnly));
        file.write(QByteArray::fromStdString(sealed));
    }
    for (const auto& name : QDir(folder.path()).entryList({"them.db*"}, QDir::Files))
        QFile::remove(folder.filePath(name));
    QFile other(folder.filePath("holiday.txt"));
    REQUIRE(other.open(QIODevice::WriteOnly));
    other.write("no record");
    other.close();

    Interface ui({390, 2000}, "light");
    ui.context.caseload.useFolder(folder.path());
    awaitReading(ui);
    REQUIRE(ui.show("Caseload"));
    CHECK(shows(ui, "birke.pgp"));
    CHECK(shows(ui, "holiday.txt"));
    CHECK(shows(ui, "Type the passphrase below if it is a back-up."));
    ui.context.caseload.unlock("another phrase");
    awaitReading(ui);
    CHECK(shows(ui, "The passphrase does not open it."));
    ui.context.caseload.unlock(QString::fromStdString(phrase));
    awaitReading(ui);
    CHECK(shows(ui, "Birke"));
    CHECK_FALSE(shows(ui, "birke.pgp"));
    CHECK(shows(ui, "holiday.txt"));
}

TEST_CASE("Where no folder can be chosen, files come one by one")
{
    const Received received;
    Interface ui({390, 3000}, "light");
    Choosing chooser;
    chooser.folders = false;
    ui.context.caseload.useChooser(chooser);
    REQUIRE(ui.show("Caseload"));
    press(ui, "Choose the folder");
    CHECK(button(ui, "Choose the folder") == nullptr);
    const auto names = QDir(received.folder.path()).entryList(QDir::Files, QDir::Name);
    for (int i = 0; i < 2; ++i) {
        chooser.path = received.folder.filePath(names[i]).toStdString();
        press(ui, "Add a file");
        awaitReading(ui);
    }
    CHECK(ui.context.caseload.people().size() == 2);
}

TEST_CASE("A folder that is gone says what to do")
{
    Interface ui({390, 2000}, "light");
    ui.context.caseload.useFolder("/nowhere/at/all");
    awaitReading(ui);
    REQUIRE(ui.show("Caseload"));
    CHECK(shows(ui, "This folder cannot be read now."));
}

TEST_CASE("A care sheet is made by taps, and what is wrong says so beside the field")
{
    const Home home;
    Interface ui({390, 6000}, "light");
    ui.context.sheet.begin();
    REQUIRE(ui.show("MakeSheetPage"));
    CHECK(shows(ui, "Choose where to treat."));
    CHECK(shows(ui, "Type your name, on one short line."));
    CHECK_FALSE(button(ui, "Hand it over")->isEnabled());
    press(ui, "Both hands");
    CHECK_FALSE(shows(ui, "Choose where to treat."));
    CHECK(shows(ui, "2 times 10 minute"));
    ui.context.sheet.setWho("Nurse Invented");
    ui.context.sheet.setContact("Nurse Invented, 555 0100");
    press(ui, "Direct current");
    for (int i = 0; i < 3; ++i)
        ui.context.sheet.stepDirect(-1);
    CHECK(shows(ui, "17 mA"));
    press(ui, "Under 18");
    CHECK(shows(ui, "Too high: 15 mA is the usual limit. Lower it."));
    CHECK_FALSE(ui.context.sheet.ready());
    ui.context.sheet.stepDirect(-1);
    CHECK(shows(ui, "As usual: 15 mA"));
    ui.context.sheet.stepDirect(1); // never above the table
    CHECK(ui.context.sheet.sheet().directLimit == std::nullopt);
    press(ui, "Armpits");
    CHECK(shows(ui, "Armpits need pulsed current. Choose that one."));
    press(ui, "Pulsed current");
    press(ui, "Days I choose");
    for (const char* day : {"3", "8"})
        press(ui, day);
    CHECK(ui.context.sheet.sheet().days == std::vector<int>{1, 3, 8});
    press(ui, "1"); // stays
    CHECK(ui.context.sheet.sheet().days == std::vector<int>{1, 3, 8});
    press(ui, "Call me before you go on.");
    press(ui, "Hand it over");
    CHECK(shows(ui, "On paper"));
    const auto read = exchange::readCareSheet("code", ui.context.sheet.code().toStdString(), AgeGroup::Child);
    REQUIRE(read.ok());
    CHECK(read->sites == SetOf<Site>{Site::Hands, Site::Armpits});
    CHECK(read->waveform == Waveform::Pulsed);
    CHECK(read->atNoResponse == "Call me before you go on.");
}

TEST_CASE("What is made is signed as the last one, and its code on paper is the same sheet")
{
    const Home home;
    Interface ui({390, 2000}, "light");
    auto& sheet = ui.context.sheet;
    sheet.begin();
    sheet.setSites({ui::Site::Hands});
    sheet.setWho("Nurse Invented");
    sheet.setContact("Nurse Invented, 555 0100");
    sheet.stepDirect(-8);
    ui::FileResult went;
    QObject::connect(&sheet, &viewmodels::SheetModel::went, &sheet, [&](const auto& result) { went = result; });
    sheet.shareSheet(); // no program takes it, so it is saved
    const auto file = went;
    REQUIRE(file.ok);
    CHECK(file.message.contains(file.where));
    CHECK(ui.context.keep.readSheet(file.path).ok);
    sheet.saveHandout();
    const auto paper = went;
    REQUIRE(paper.ok);
    CHECK(QFile(paper.path).size() > 10'000);
    // The printed page as a scanner sees it, in 150 dots an inch, and the page that is shown before.
    const QString photo = home.folder.filePath("photo.png");
    QProcess scanned;
    scanned.start("pdftoppm", {"-r", "150", "-png", "-singlefile", paper.path, home.folder.filePath("photo")});
    REQUIRE(scanned.waitForFinished());
    const QString shown = home.folder.filePath("shown.png");
    REQUIRE(sheet.page(1240).save(shown));
    CHECK(ui.context.keep.readSheet(shown).ok);
    const auto seen = ui.context.keep.readSheet(photo);
    REQUIRE(seen.ok);
    REQUIRE(ui.context.keep.acceptSheet(photo, false));
    CHECK(ui.store.diary().at(DiarySite::Hands).course()->course.plan == CourseTemplate::Seven);
    const auto accepted = sheet.sheet();
    sheet.begin();
    CHECK(sheet.who().shown == "Nurse Invented");
    CHECK(sheet.contact().shown == "Nurse Invented, 555 0100");
    CHECK(accepted.directLimit == Milliamps{12});
}

TEST_CASE("A picture is measured before it is unpacked, and a packed drawing is not unpacked at all")
{
    const Home home;
    Interface ui({390, 2000}, "light");
    const auto made = [&](const char* name, const char* how) {
        QProcess python;
        python.start("/usr/bin/python3", {"-c", how, home.folder.filePath(name)});
        REQUIRE(python.waitForFinished());
        REQUIRE(python.exitCode() == 0);
        return home.folder.filePath(name);
    };
    // A thousand million pixels of one colour, and half a gigabyte of spaces, each in a small file.
    const QString vast = made("vast.png", R"(import struct, sys, zlib
def chunk(kind, data): return struct.pack('>I', len(data)) + kind + data + struct.pack('>I', zlib.crc32(kind + data))
packed, rows = zlib.compressobj(9), b''
for _ in range(32_000): rows += packed.compress(bytes(4_001))
rows += packed.flush()
head = struct.pack('>IIBBBBB', 32_000, 32_000, 1, 0, 0, 0, 0)
open(sys.argv[1], 'wb').write(b'\x89PNG\r\n\x1a\n' + chunk(b'IHDR', head)
    + chunk(b'IDAT', rows) + chunk(b'IEND', b'')))");
    const QString packed = made("packed.svgz", R"(import gzip, sys
with gzip.open(sys.argv[1], 'wb') as out:
    out.write(b'<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9">')
    for _ in range(512): out.write(b' ' * 2**20)
    out.write(b'</svg>'))");
    const auto peakMb = [] {
        rusage used{};
        getrusage(RUSAGE_SELF, &used);
        return used.ru_maxrss / 1024;
    };
    const auto before = peakMb();
    for (const QString& file : {vast, packed}) {
        REQUIRE(QFile(file).size() < 600'000);
        CHECK_FALSE(ui.context.keep.readSheet(file).ok);
    }
    CHECK(peakMb() - before < 40);
}

TEST_CASE("A care sheet for somebody of the caseload begins with what is known of them")
{
    const Received received;
    Interface ui({390, 2000}, "light");
    readFolder(ui, received);
    const auto first = ui.context.caseload.people().constFirst();
    ui.context.caseload.show(first.id);
    ui.context.sheet.beginForShown();
    CHECK(ui.context.sheet.name() == first.name);
    CHECK(ui.context.sheet.age() == ui::AgeGroup::Adult);
    CHECK_FALSE(ui.context.sheet.sites().isEmpty());
    CHECK(ui.context.sheet.given() == ui.store.todayNumber());
}
