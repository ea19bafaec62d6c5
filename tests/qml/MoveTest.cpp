#include "Fingers.h"

#include "codec/RecordJson.h"
#include "ports/FileChooser.h"

#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>

using namespace firstdew;
using namespace firstdew::tests;

namespace {

/// The person, who chooses that file.
struct Choosing final : ports::FileChooser {
    std::string file;
    std::string ending;
    int asked = 0;
    std::vector<ports::OutFile> saved; ///< the files that the app last wanted to save
    /// Where the person saves them, or why that fails.
    facts::Result<std::optional<ports::SavedAs>> place = std::optional<ports::SavedAs>();
    int dropped = 0;
    bool choose(const std::string&, const std::string& wanted, Chosen chosen) override
    {
        ++asked;
        ending = wanted;
        QMetaObject::invokeMethod(
            qApp, [this, chosen] { chosen(file.empty() ? std::nullopt : std::optional(file)); }, Qt::QueuedConnection);
        return true;
    }
    bool save(const std::string&, std::vector<ports::OutFile> files, Saved told) override
    {
        saved = std::move(files);
        QMetaObject::invokeMethod(
            qApp, [this, told] { told(place); }, Qt::QueuedConnection);
        return true;
    }
    void dropCopies() override { ++dropped; }
};

struct Home {
    Home() { qputenv("HOME", folder.path().toUtf8()); }
    ~Home() { qputenv("HOME", before); }
    Home(const Home&) = delete;
    Home& operator=(const Home&) = delete;
    QByteArray before = qgetenv("HOME");
    QTemporaryDir folder;
};

/// Types into the field of that label.
void write(Interface& ui, const QString& label, const QString& text)
{
    QQuickItem* field = nullptr;
    ui.settled();
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (QString::fromLatin1(item->metaObject()->className()).startsWith("Field_QML") &&
            item->property("label") == label)
            field = item;
    });
    INFO(label.toStdString());
    REQUIRE(field != nullptr);
    field->setProperty("text", text);
    ui.settled();
}

const QString kPhrase = QStringLiteral("an invented phrase");

/// Makes the file on the old phone, as its page leads; returns its path.
QString sentFrom(Interface& old)
{
    REQUIRE(old.show("MovePage"));
    press(old, "The old one: send from here");
    write(old, "Passphrase", "short");
    CHECK_FALSE(button(old, "Make the file")->isEnabled());
    write(old, "Passphrase", kPhrase);
    press(old, "Make the file");
    CHECK(shows(old, "2. Send the file to the new phone"));
    CHECK(shows(old, "3 check-in"));
    CHECK(shows(old, "1 session"));
    CHECK(button(old, "Send the file") != nullptr);
    const auto files = QDir(old.context.keep.folder()).entryInfoList({"*.pgp"}, QDir::Files);
    REQUIRE(files.size() == 1);
    return files.constFirst().absoluteFilePath();
}

} // namespace

TEST_CASE("A record moves to a new phone by one path, and both phones show the same numbers")
{
    const Home home;
    Interface old({390, 2000}, "light");
    const QString sent = sentFrom(old);

    Interface fresh({390, 2000}, "light", [](const QString&) {});
    Choosing person;
    fresh.context.keep.useChooser(person);
    REQUIRE(fresh.show("Today"));
    press(fresh, "Move from another phone");
    press(fresh, "Choose the file"); // nothing is chosen
    CHECK(person.ending == "pgp");
    CHECK_FALSE(shows(fresh, "Chosen"));
    person.file = sent.toStdString();
    press(fresh, "Choose the file");
    CHECK(shows(fresh, "Chosen"));
    write(fresh, "Its passphrase", "another phrase");
    press(fresh, "Look into it");
    CHECK(shows(fresh, "It does not open with this passphrase"));
    CHECK(fresh.store.allFacts().empty());
    write(fresh, "Its passphrase", kPhrase);
    press(fresh, "Look into it");
    CHECK(shows(fresh, "The file holds"));
    CHECK(shows(fresh, "3 check-in"));
    CHECK(fresh.store.allFacts().empty());
    CHECK_FALSE(shows(fresh, "is replaced"));
    press(fresh, "Use it here");
    CHECK(shows(fresh, "Everything is here."));
    CHECK(shows(fresh, "3 check-in"));
    CHECK(shows(fresh, "1 session"));
    CHECK(fresh.store.allFacts() == old.store.allFacts());
    press(fresh, "Go to Today");
    CHECK(shows(fresh, "Hands"));
}

TEST_CASE("Where a record is, moving another one here says that it is replaced, and keeps a copy")
{
    const Home home;
    Interface old({390, 2000}, "light");
    const QString sent = sentFrom(old);
    Interface other({390, 2000}, "light");
    other.fillFor("Berta");
    const auto before = other.store.allFacts();
    Choosing person;
    person.file = sent.toStdString();
    other.context.keep.useChooser(person);
    REQUIRE(other.show("MovePage"));
    press(other, "The new one: bring it here");
    press(other, "Choose the file");
    write(other, "Its passphrase", kPhrase);
    press(other, "Look into it");
    CHECK(shows(other, "What is on this phone now is replaced."));
    CHECK(other.store.allFacts() == before);
    press(other, "Replace what is here");
    CHECK(shows(other, "Everything is here."));
    CHECK(other.store.allFacts() == old.store.allFacts());
    const auto kept = QDir(other.folder.path()).entryList(QDir::Files);
    CHECK(kept.size() > 1);
    CHECK(shows(other, "What was on this phone before is kept in"));
}

TEST_CASE("A file that is no back-up changes nothing")
{
    const Home home;
    Interface ui({390, 2000}, "light");
    const auto before = ui.store.allFacts();
    const QString file = home.folder.path() + "/a.pgp";
    QFile out(file);
    REQUIRE(out.open(QIODevice::WriteOnly));
    out.write("this is no back-up");
    out.close();
    const auto read = ui.context.keep.lookInto(file, kPhrase);
    CHECK_FALSE(read.ok);
    CHECK(read.message.startsWith("This is no back-up"));
    CHECK_FALSE(ui.context.keep.takeOver(file, kPhrase).ok);
    CHECK_FALSE(ui.context.keep.takeOver(home.folder.path() + "/none.pgp", kPhrase).ok);
    CHECK(ui.store.allFacts() == before);
}

TEST_CASE("Where the system has no chooser, files come from the person's documents")
{
    struct None final : ports::FileChooser {
        bool choose(const std::string&, const std::string&, Chosen) override { return false; }
        bool save(const std::string&, std::vector<ports::OutFile>, Saved) override { return false; }
    } none;
    const Home home;
    QDir(home.folder.path()).mkdir("Documents");
    QFile out(home.folder.path() + "/Documents/mine.pgp");
    REQUIRE(out.open(QIODevice::WriteOnly));
    out.close();
    Interface ui({390, 2000}, "light");
    ui.context.keep.useChooser(none);
    REQUIRE(ui.show("MovePage"));
    press(ui, "The new one: bring it here");
    press(ui, "Choose the file");
    CHECK(shows(ui, "mine.pgp"));
}

TEST_CASE("What is exported goes to the place that the person chooses, and nothing into the documents")
{
    const Home home;
    Interface ui({390, 3000}, "light");
    Choosing person;
    ui.context.keep.useChooser(person);
    REQUIRE(ui.show("KeepPage"));
    press(ui, "Everything, as JSON"); // and cancels
    REQUIRE(person.saved.size() == 1);
    CHECK(person.saved.front().name == "firstdew-2026-03-20.json");
    CHECK(person.saved.front().content == codec::recordJson(ui.store.allFacts()));
    CHECK_FALSE(shows(ui, "Done"));
    CHECK_FALSE(shows(ui, "Your record is as it was."));

    person.place = Error{"save-failed", "/media/full/a.json", "cannot be written"};
    press(ui, "Everything, as JSON");
    CHECK(shows(ui, "It could not be saved there. Choose another place, or make room first."));
    CHECK(shows(ui, "Your record is as it was."));

    person.place = std::optional(ports::SavedAs{"Card/mine.ics", "/invented/mine.ics"});
    press(ui, "Planned sessions, for a calendar");
    CHECK(person.saved.front().name == "firstdew-2026-03-20.ics");
    CHECK(shows(ui, "Card/mine.ics"));
    CHECK(button(ui, "Share it") != nullptr);

    person.place = std::optional(ports::SavedAs{"Card", ""});
    press(ui, "Tables for a spreadsheet, as CSV");
    REQUIRE(person.saved.size() > 1);
    for (const auto& file : person.saved)
        CHECK(QString::fromStdString(file.name).contains(QRegularExpression("^firstdew-2026-03-20-.*csv$")));
    CHECK(shows(ui, "Card"));
    CHECK(button(ui, "Share it") == nullptr);
    CHECK_FALSE(QDir(home.folder.path()).exists("Documents"));
}

TEST_CASE("Whoever cancels the place of a back-up keeps the passphrase that was typed")
{
    const Home home;
    Interface ui({390, 2000}, "light");
    Choosing person;
    ui.context.keep.useChooser(person);
    REQUIRE(ui.show("MovePage"));
    press(ui, "The old one: send from here");
    write(ui, "Passphrase", kPhrase);
    press(ui, "Make the file");
    CHECK(shows(ui, "1. Choose a passphrase"));
    CHECK(button(ui, "Make the file")->isEnabled());
    person.place = std::optional(ports::SavedAs{"Card/mine.pgp", "/invented/mine.pgp"});
    press(ui, "Make the file");
    CHECK(person.saved.front().name == "firstdew-2026-03-20.pgp");
    CHECK(shows(ui, "Card/mine.pgp"));
    CHECK(button(ui, "Send the file") != nullptr);
}

TEST_CASE("The summary is handed over from the app's own folder; where no program takes it, its place is asked for")
{
    struct Taking final : ports::Sharer {
        bool share(const std::string&, const std::string&) override { return true; }
    } taking;
    const Home home;
    Interface ui({390, 2000}, "light");
    Choosing person;
    person.place = std::optional(ports::SavedAs{"Card/page.pdf", "/invented/page.pdf"});
    ui.context.keep.useChooser(person);
    const QString out = ui.folder.path() + "/taken";
    viewmodels::SummaryModel taken(ui.store, taking, ui.opener, out);
    taken.share();
    CHECK(taken.message() == "Handed over.");
    CHECK(QDir(out).entryList(QDir::Files) == QStringList{"firstdew-summary-2026-03-20.pdf"});
    CHECK(person.saved.empty());

    REQUIRE(ui.show("SummaryPage"));
    press(ui, "Share the summary"); // nobody takes it here
    REQUIRE(person.saved.size() == 1);
    CHECK(person.saved.front().name == "firstdew-summary-2026-03-20.pdf");
    CHECK(person.saved.front().content.starts_with("%PDF-"));
    CHECK(shows(ui, "Card/page.pdf"));
    person.place = std::optional<ports::SavedAs>();
    press(ui, "Save it as a file"); // and cancels
    CHECK_FALSE(shows(ui, "Card/page.pdf"));
    CHECK_FALSE(QDir(home.folder.path()).exists("Documents"));
}

TEST_CASE("Nothing on its way out stays when the record is deleted")
{
    const Home home;
    Interface ui({390, 3000}, "light");
    Choosing person;
    ui.context.keep.useChooser(person);
    ui.summary.save();
    REQUIRE(QFile::exists(ui.summary.file()));
    const QString file = ui.summary.file();
    CHECK(ui.context.keep.forgetAll().ok);
    CHECK_FALSE(QFile::exists(file));
    CHECK(person.dropped == 1);
    ui.settled(); // the person's answer comes while there is a person
}

TEST_CASE("Everything that is set once is reached from Plan by one button")
{
    Interface ui({390, 2000}, "light");
    REQUIRE(ui.show("Plan"));
    CHECK_FALSE(shows(ui, "Reminders"));
    press(ui, "Settings");
    for (const char* row : {"Machine and kit", "Reminders", "Voice and tones", "People", "Appearance and language",
                            "Move to another phone", "Back-up, export and delete", "About and cautions"})
        CHECK(button(ui, row) != nullptr);
}
