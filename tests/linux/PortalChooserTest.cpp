#include "linux/PortalChooser.h"
#include "Bus.h"

#include <QFile>

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
