#include "linux/PamOwnerCheck.h"

#include <catch2/catch.hpp>

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QTemporaryDir>

#include <cstdlib>
#include <fstream>
#include <functional>
#include <optional>
#include <pwd.h>
#include <unistd.h>
#include <vector>

// The real libpam with a module that knows one invented password (libpam-wrapper's pam_matrix), for the account that
// runs the test. No right of anybody else is needed.
namespace {

using firstdew::linuxside::PamOwnerCheck;
using Verdict = PamOwnerCheck::Verdict;

constexpr const char* kRight = "dew at six";

void needApplication()
{
    static int count = 1;
    static char name[] = "test_pam";
    static char* arguments[] = {name, nullptr};
    static const auto* program = new QCoreApplication(count, arguments);
    REQUIRE(program != nullptr);
}

bool waitFor(const std::function<bool()>& happened)
{
    QElapsedTimer since;
    since.start();
    while (!happened() && since.elapsed() < 60'000) // a wrong password is answered late on purpose
        QCoreApplication::processEvents(QEventLoop::AllEvents, 50);
    return happened();
}

/// A folder of PAM services, with one that knows `user`.
struct Services {
    explicit Services(const std::string& user)
    {
        const std::string passwords = folder.path().toStdString() + "/passwords";
        std::ofstream(passwords) << user << ':' << kRight << ":firstdew\n";
        write("firstdew",
              "auth required pam_echo.so Look at the reader\nauth required " PAM_MATRIX " passdb=" + passwords + "\n");
    }
    void write(const char* service, const std::string& lines) const
    {
        std::ofstream(folder.path().toStdString() + '/' + service) << lines;
    }
    QTemporaryDir folder;
};

std::string ownName() { return ::getpwuid(::getuid())->pw_name; }

/// What the system said, and what came of it.
struct Heard {
    std::vector<std::string> prompts;
    std::vector<std::string> told;
    std::optional<Verdict> verdict;
    bool hidden = false;

    PamOwnerCheck::Asking asking()
    {
        return {[this](const std::string& words, bool secret) { prompts.push_back(words), hidden = secret; },
                [this](const std::string& words) { told.push_back(words); }, [this](Verdict v) { verdict = v; }};
    }
};

} // namespace

TEST_CASE("PAM confirms the owner by the right password and refuses a wrong one")
{
    needApplication();
    const Services services(ownName());
    PamOwnerCheck check("firstdew", services.folder.path().toStdString());
    REQUIRE(check.available());
    for (const bool right : {false, true, false}) {
        Heard heard;
        check.ask("", heard.asking());
        CHECK(heard.prompts.empty()); // nothing before ask() returned
        REQUIRE(waitFor([&] { return !heard.prompts.empty(); }));
        CHECK(heard.hidden);
        CHECK_FALSE(heard.prompts.front().empty());
        CHECK_FALSE(heard.verdict);
        check.reply(right ? kRight : "dew at seven");
        REQUIRE(waitFor([&] { return heard.verdict.has_value(); }));
        CHECK(*heard.verdict == (right ? Verdict::Confirmed : Verdict::Refused));
    }
}

TEST_CASE("What PAM tells the person is passed on before it asks")
{
    needApplication();
    const Services services(ownName());
    PamOwnerCheck check("firstdew", services.folder.path().toStdString());
    Heard heard;
    check.ask("", heard.asking());
    REQUIRE(waitFor([&] { return !heard.prompts.empty(); }));
    CHECK(heard.told == std::vector<std::string>{"Look at the reader"});
}

TEST_CASE("An account that PAM does not know, and a service that is not installed, cannot be asked for")
{
    needApplication();
    const Services services("somebody-else");
    PamOwnerCheck check("firstdew", services.folder.path().toStdString());
    Heard heard;
    check.ask("", heard.asking());
    if (waitFor([&] { return heard.verdict || !heard.prompts.empty(); }) && !heard.verdict)
        check.reply(kRight);
    REQUIRE(waitFor([&] { return heard.verdict.has_value(); }));
    CHECK(*heard.verdict != Verdict::Confirmed); // the right password of another account

    PamOwnerCheck none("not-installed", services.folder.path().toStdString());
    CHECK_FALSE(none.available());
    Heard nothing;
    none.ask("", nothing.asking());
    REQUIRE(waitFor([&] { return nothing.verdict.has_value(); }));
    CHECK(*nothing.verdict == Verdict::Unable);
    CHECK(nothing.prompts.empty());
}

TEST_CASE("Whoever PAM lets in as somebody else is refused")
{
    needApplication();
    const Services services(ownName());
    services.write("as-asked", "auth required pam_permit.so\n");
    services.write("as-another", "auth required " PAM_SET_ITEMS "\nauth required pam_permit.so\n");
    for (const bool another : {false, true}) {
        ::setenv("PAM_USER", "somebody-else", 1); // what the second service sets
        PamOwnerCheck check(another ? "as-another" : "as-asked", services.folder.path().toStdString());
        Heard heard;
        check.ask("", heard.asking());
        REQUIRE(waitFor([&] { return heard.verdict.has_value(); }));
        CHECK(*heard.verdict == (another ? Verdict::Refused : Verdict::Confirmed));
        ::unsetenv("PAM_USER");
    }
}

TEST_CASE("A conversation that is left says nothing more, and whoever asks again is answered")
{
    needApplication();
    const Services services(ownName());
    PamOwnerCheck check("firstdew", services.folder.path().toStdString());
    Heard left;
    check.ask("", left.asking());
    REQUIRE(waitFor([&] { return !left.prompts.empty(); }));
    Heard heard;
    check.ask("", heard.asking()); // drops the first
    REQUIRE(waitFor([&] { return !heard.prompts.empty(); }));
    check.reply(kRight);
    REQUIRE(waitFor([&] { return heard.verdict.has_value(); }));
    CHECK(*heard.verdict == Verdict::Confirmed);
    CHECK_FALSE(left.verdict);

    Heard dropped;
    check.ask("", dropped.asking());
    REQUIRE(waitFor([&] { return !dropped.prompts.empty(); }));
    check.drop();
    check.reply(kRight);
    QCoreApplication::processEvents();
    CHECK_FALSE(dropped.verdict);
    {
        PamOwnerCheck gone("firstdew", services.folder.path().toStdString());
        Heard nobody;
        gone.ask("", nobody.asking());
    } // its thread ends by itself
}
