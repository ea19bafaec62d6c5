#include "linux/DesktopSharer.h"
#include "Bus.h"

#include <QFile>

using namespace firstdew;
using firstdew::tests::Bus;

namespace {

/// A folder with a file to show, and an xdg-open that writes down what it was given.
struct Folder {
    QTemporaryDir own;
    QByteArray path = qgetenv("PATH");
    QString opened = own.filePath("opened");

    Folder()
    {
        write("summary ü.txt", "a page\n");
        const QString opener =
            write("xdg-open", "#!/bin/sh\nprintf '%s' \"$1\" >'" + opened.toUtf8() + ".part' && mv '" +
                                  opened.toUtf8() + ".part' '" + opened.toUtf8() + "'\n");
        REQUIRE(QFile::setPermissions(opener, QFile::ReadOwner | QFile::ExeOwner));
        qputenv("PATH", own.path().toUtf8() + ":" + path);
    }
    ~Folder() { qputenv("PATH", path); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    QString write(const char* name, const QByteArray& text) const
    {
        QFile file(own.filePath(QString::fromUtf8(name)));
        REQUIRE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return file.fileName();
    }
    std::string file() const { return own.filePath(QString::fromUtf8("summary ü.txt")).toStdString(); }
    std::string given() const
    {
        tests::waitFor("the opener", [&] { return QFile::exists(opened); });
        QFile file(opened);
        REQUIRE(file.open(QIODevice::ReadOnly));
        return file.readAll().toStdString();
    }
};

} // namespace

TEST_CASE("the portal gets the file itself, and asks which program where it is shared")
{
    Bus bus({"org.freedesktop.portal.Desktop"});
    const Folder folder;
    CHECK(linuxside::DesktopSharer(bus.connection()).share(folder.file(), "text/plain"));
    CHECK(bus.said() == QJsonArray{"open", "a page\n", true});
    CHECK(linuxside::DesktopOpener(bus.connection()).open(folder.file()));
    CHECK(bus.said() == QJsonArray{"open", "a page\n", false});
    CHECK_FALSE(QFile::exists(folder.opened));
    CHECK(linuxside::DesktopOpener(bus.connection())
              .open(folder.own.path().toStdString())); // the portal's call is for files
    CHECK(folder.given() == folder.own.path().toStdString());
    CHECK(linuxside::DesktopOpener(bus.connection()).open(folder.file()));
    CHECK(bus.said() == QJsonArray{"open", "a page\n", false});
}

TEST_CASE("without a portal the system's opener gets the name")
{
    const Bus bus;
    const Folder folder;
    CHECK(linuxside::DesktopSharer(bus.connection()).share(folder.file(), "text/plain"));
    CHECK(folder.given() == folder.file());
}

TEST_CASE("what is not there is not opened, nor is anything where nothing opens it")
{
    const Bus bus;
    const Folder folder;
    CHECK_FALSE(linuxside::DesktopOpener(bus.connection()).open("/nowhere/summary.pdf"));
    qputenv("PATH", "/nowhere");
    CHECK_FALSE(linuxside::DesktopSharer(bus.connection()).share(folder.file(), "text/plain"));
}
