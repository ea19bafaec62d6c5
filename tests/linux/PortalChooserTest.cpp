#include "linux/PortalChooser.h"
#include "Bus.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

using namespace firstdew;
using firstdew::tests::Bus;

namespace {

/// What the chooser told, and how often.
struct Told {
    int times = 0;
    std::optional<std::string> path;
    ports::FileChooser::Chosen hear()
    {
        return [this](std::optional<std::string> p) {
            ++times;
            path = std::move(p);
        };
    }
};

/// The same for a place to save at.
struct ToldOfSaving {
    int times = 0;
    std::optional<facts::Result<std::optional<ports::SavedAs>>> end;
    ports::FileChooser::Saved hear()
    {
        return [this](facts::Result<std::optional<ports::SavedAs>> e) {
            ++times;
            end.emplace(std::move(e));
        };
    }
    void await(int count) const
    {
        tests::waitFor("the answer", [&] { return times >= count; });
    }
    bool saved() const { return end && *end && **end; }
};

QByteArray contentOf(const QString& name)
{
    QFile file(name);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("not there");
}

QJsonArray asked(const char* title, const char* glob)
{
    return {"choose", title, QJsonArray{QJsonArray{glob, QJsonArray{QJsonArray{0, glob}}}}, true};
}

} // namespace

TEST_CASE("the portal's chooser is asked for files of that ending, and its answer is the file's path")
{
    Bus bus({"org.freedesktop.portal.Desktop"});
    const QTemporaryDir folder;
    QFile file(folder.filePath(QString::fromUtf8("back-up ü.pgp")));
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.close();
    linuxside::PortalChooser chooser(bus.connection());
    Told told;
    // The stand-in answers with the file that the title names.
    REQUIRE(chooser.choose(file.fileName().toStdString(), "pgp", told.hear()));
    CHECK(bus.said() == asked(file.fileName().toUtf8(), "*.pgp"));
    tests::waitFor("the answer", [&] { return told.times > 0; });
    CHECK(told.path == file.fileName().toStdString());

    REQUIRE(chooser.choose("cancel", "json", told.hear()));
    CHECK(bus.said() == asked("cancel", "*.json"));
    tests::waitFor("the second answer", [&] { return told.times > 1; });
    CHECK_FALSE(told.path);

    REQUIRE(chooser.choose("/nowhere/at-all.json", "json", told.hear()));
    tests::waitFor("the third answer", [&] { return told.times > 2; });
    CHECK_FALSE(told.path); // what cannot be read was not chosen
    (void)bus.said();

    REQUIRE(chooser.choose("cancel", "json png", told.hear()));
    const QJsonArray patterns{QJsonArray{0, "*.json"}, QJsonArray{0, "*.png"}};
    const QJsonArray filter{"*.json *.png", patterns};
    CHECK(bus.said() == QJsonArray{"choose", "cancel", QJsonArray{QJsonValue(filter)}, true});
}

TEST_CASE("the portal's chooser is asked for a folder")
{
    Bus bus({"org.freedesktop.portal.Desktop"});
    const QTemporaryDir folder;
    linuxside::PortalChooser chooser(bus.connection());
    Told told;
    REQUIRE(chooser.chooseFolder(folder.path().toStdString(), told.hear()));
    CHECK(bus.said() == QJsonArray{"choose", folder.path(), "a folder", true});
    tests::waitFor("the answer", [&] { return told.times > 0; });
    CHECK(told.path == folder.path().toStdString());
}

TEST_CASE("a second question drops the first")
{
    Bus bus({"org.freedesktop.portal.Desktop"});
    linuxside::PortalChooser chooser(bus.connection());
    Told first;
    Told second;
    REQUIRE(chooser.choose("wait", "pgp", first.hear())); // never answered by the stand-in
    REQUIRE(chooser.choose("cancel", "pgp", second.hear()));
    tests::waitFor("the answer", [&] { return second.times > 0; });
    CHECK(first.times == 0);
}

TEST_CASE("without a portal there is no chooser, and nothing is told")
{
    const Bus bus;
    linuxside::PortalChooser chooser(bus.connection());
    Told told;
    CHECK_FALSE(chooser.choose("a title", "pgp", told.hear()));
    tests::program().processEvents();
    CHECK(told.times == 0);
}

TEST_CASE("a file is saved under the name that the person chose, for its owner alone, and in place of the one there")
{
    Bus bus({"org.freedesktop.portal.Desktop"});
    const QTemporaryDir folder;
    const QString at = folder.filePath(QString::fromUtf8("mine ü.pgp"));
    linuxside::PortalChooser chooser(bus.connection());
    ToldOfSaving told;
    int count = 0;
    for (const std::string content : {"sealed", "sealed anew"}) {
        REQUIRE(chooser.save(at.toStdString(), {{"firstdew.pgp", content}}, told.hear()));
        CHECK(bus.said() == QJsonArray{"save", at, "firstdew.pgp", true});
        told.await(++count);
        REQUIRE(told.saved());
        CHECK((*told.end)->value().where == at.toStdString());
        CHECK((*told.end)->value().file == at.toStdString());
        CHECK(contentOf(at) == content.c_str());
        CHECK(QFileInfo(at).permissions() ==
              (QFile::ReadOwner | QFile::WriteOwner | QFile::ReadUser | QFile::WriteUser));
        CHECK(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden).size() == 1);
    }
}

TEST_CASE("whoever cancels saves nothing, and a place that cannot be written is told with nothing left half-written")
{
    Bus bus({"org.freedesktop.portal.Desktop"});
    const QTemporaryDir folder;
    linuxside::PortalChooser chooser(bus.connection());
    ToldOfSaving told;
    REQUIRE(chooser.save("cancel", {{"firstdew.pgp", "sealed"}}, told.hear()));
    told.await(1);
    CHECK(*told.end);
    CHECK_FALSE(told.saved());

    const QString nowhere = folder.filePath("not-there/mine.pgp");
    REQUIRE(chooser.save(nowhere.toStdString(), {{"firstdew.pgp", "sealed"}}, told.hear()));
    told.await(2);
    REQUIRE_FALSE(*told.end);
    CHECK(told.end->error().code == "save-failed");
    CHECK(told.end->error().input == nowhere.toStdString());

    // A folder stands where the second of two files would go: the first is taken away again.
    REQUIRE(QDir(folder.path()).mkdir("b.csv"));
    REQUIRE(QFile::setPermissions(folder.path(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner));
    REQUIRE(chooser.save(folder.path().toStdString(), {{"a.csv", "1"}, {"b.csv", "2"}}, told.hear()));
    told.await(3);
    REQUIRE_FALSE(*told.end);
    CHECK(QDir(folder.path()).entryList(QDir::AllEntries | QDir::NoDotAndDotDot) == QStringList{"b.csv"});
}

TEST_CASE("several files are saved into the folder that the person chose, and replace nothing there")
{
    Bus bus({"org.freedesktop.portal.Desktop"});
    const QTemporaryDir folder;
    QFile there(folder.filePath("a.csv"));
    REQUIRE(there.open(QIODevice::WriteOnly));
    there.write("of the person");
    there.close();
    linuxside::PortalChooser chooser(bus.connection());
    ToldOfSaving told;
    REQUIRE(chooser.save(folder.path().toStdString(), {{"c.csv", "1"}, {"b.csv", "2"}}, told.hear()));
    CHECK(bus.said() == QJsonArray{"save", folder.path(), QJsonArray{"c.csv", "b.csv"}, true});
    told.await(1);
    REQUIRE(told.saved());
    CHECK((*told.end)->value().where == folder.path().toStdString());
    CHECK((*told.end)->value().file.empty());
    CHECK(contentOf(folder.filePath("c.csv")) == "1");
    CHECK(contentOf(folder.filePath("b.csv")) == "2");

    REQUIRE(chooser.save(folder.path().toStdString(), {{"d.csv", "1"}, {"a.csv", "2"}}, told.hear()));
    told.await(2);
    REQUIRE_FALSE(*told.end);
    CHECK(told.end->error().code == "file-exists");
    CHECK(contentOf(folder.filePath("a.csv")) == "of the person");
    CHECK_FALSE(QFile::exists(folder.filePath("d.csv")));
}

TEST_CASE("a place to save at is asked for anew by a second question, and by none without a portal")
{
    Bus bus({"org.freedesktop.portal.Desktop"});
    linuxside::PortalChooser chooser(bus.connection());
    ToldOfSaving first;
    Told second;
    REQUIRE(chooser.save("wait", {{"firstdew.pgp", "sealed"}}, first.hear()));
    REQUIRE(chooser.choose("cancel", "pgp", second.hear()));
    tests::waitFor("the answer", [&] { return second.times > 0; });
    CHECK(first.times == 0);
    const Bus empty;
    linuxside::PortalChooser none(empty.connection());
    CHECK_FALSE(none.save("a title", {{"firstdew.pgp", "sealed"}}, first.hear()));
    tests::program().processEvents();
    CHECK(first.times == 0);
}
