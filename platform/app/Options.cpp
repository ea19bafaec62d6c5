#include "Options.h"

#include "words/Names.h"

#include <QCommandLineParser>
#include <QDir>
#include <QStandardPaths>
#include <QTextStream>
#include <algorithm>

namespace firstdew::app {

using namespace facts;

namespace {

Error usage(const char* option, const QString& message) { return {"usage", option, message.toStdString()}; }

QString ownStore()
{
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    QDir().mkpath(folder);
    return folder + QStringLiteral("/record.db");
}

void declareOptions(QCommandLineParser& parser)
{
    parser.addOptions({{"store", "the record to open", "file"},
                       {"page", "place to start at: today, bath, diary or plan", "place"},
                       {"size", "size of the window, e.g. 390x844", "WxH"},
                       {"theme", "light or dark", "theme"},
                       {"text-scale", "size of text, 0.85 to 2", "factor"},
                       {"language", words::languages().join(", "), "code"},
                       {"screenshot", "draw the page into a picture and leave", "file"},
                       {"self-test", "load every page and leave"},
                       {"pictures", "with --self-test: leave a picture of every page in this folder", "folder"},
                       {"remind", "show the reminders that are due and leave, without a window"},
                       {"watch", "with --remind: stay and check each minute"},
                       {"test-now", "for tests: the local time to start from", "YYYY-MM-DDTHH:MM"},
                       {"test-speed", "for tests: speed of the session clock", "factor"},
                       {"test-insets", "for tests: pixels to keep free at each side", "LEFT,TOP,RIGHT,BOTTOM"},
                       {"test-first-frame", "for tests: print when the first frame with the check-in was shown"}});
}

std::optional<QMarginsF> insetsFrom(const QString& written)
{
    const QStringList sides = written.split(QLatin1Char(','));
    bool good = sides.size() == 4;
    const auto side = [&](int i) {
        bool number = false;
        const double value = good ? sides.at(i).toDouble(&number) : 0;
        good = good && number && value >= 0;
        return value;
    };
    const QMarginsF insets(side(0), side(1), side(2), side(3));
    return good ? std::optional(insets) : std::nullopt;
}

} // namespace

Result<Options> optionsFrom(const QStringList& arguments, bool testing)
{
    QCommandLineParser parser;
    declareOptions(parser);
    if (!parser.parse(QStringList{QStringLiteral("firstdew")} + arguments))
        return usage("command line", parser.errorText());
    if (!parser.positionalArguments().isEmpty())
        return usage("command line",
                     QStringLiteral("'%1' is not expected").arg(parser.positionalArguments().constFirst()));
    const QStringList forTests{"test-now", "test-speed", "test-insets", "test-first-frame"};
    if (!testing && std::ranges::any_of(forTests, [&](const QString& option) { return parser.isSet(option); }))
        return usage("--test-now, --test-speed, --test-insets, --test-first-frame",
                     "only for tests: set FIRSTDEW_TEST=1");

    Options o;
    o.store = parser.isSet("store") ? parser.value("store") : ownStore();
    o.ownStore = !parser.isSet("store");
    o.remind = parser.isSet("remind");
    o.watch = parser.isSet("watch");
    if (o.watch && !o.remind)
        return usage("--watch", "goes with --remind");
    o.pageAsked = parser.isSet("page");
    o.testFirstFrame = parser.isSet("test-first-frame");
    o.selfTest = parser.isSet("self-test");
    o.pictures = parser.value("pictures");
    o.screenshot = parser.value("screenshot");
    const auto oneOf = [&](const char* name, QString& into, const QStringList& allowed) {
        if (parser.isSet(name))
            into = parser.value(name);
        return !parser.isSet(name) || allowed.contains(into);
    };
    if (!oneOf("page", o.page, {"today", "bath", "diary", "plan"}))
        return usage("--page", QStringLiteral("'%1' is no place; write today, bath, diary or plan").arg(o.page));
    if (!oneOf("theme", o.theme, {"light", "dark"}))
        return usage("--theme", QStringLiteral("'%1' is no theme; write light or dark").arg(o.theme));
    if (!oneOf("language", o.language, words::languages()))
        return usage("--language",
                     QStringLiteral("'%1' is not spoken; write %2").arg(o.language, words::languages().join(", ")));
    if (parser.isSet("size")) {
        const QStringList sides = parser.value("size").split(QLatin1Char('x'));
        const auto side = [&](int i) { return sides.size() == 2 ? sides.at(i).toInt() : 0; };
        o.size = {side(0), side(1)};
        if (std::min(side(0), side(1)) < 100 || std::max(side(0), side(1)) > 9999)
            return usage("--size", QStringLiteral("'%1' is no size; write e.g. 390x844").arg(parser.value("size")));
    }
    bool ok = true;
    if (parser.isSet("text-scale"))
        o.textScale = parser.value("text-scale").toDouble(&ok);
    if (!ok || (parser.isSet("text-scale") && (o.textScale < 0.85 || o.textScale > 2)))
        return usage("--text-scale", "write a number from 0.85 to 2");
    if (parser.isSet("test-speed"))
        o.testSpeed = parser.value("test-speed").toDouble(&ok);
    if (!ok || o.testSpeed <= 0)
        return usage("--test-speed", "write a number above 0");
    if (parser.isSet("test-insets")) {
        o.testInsets = insetsFrom(parser.value("test-insets"));
        if (!o.testInsets)
            return usage("--test-insets", "write LEFT,TOP,RIGHT,BOTTOM, e.g. 0,47,0,34");
    }
    if (parser.isSet("test-now")) {
        o.testNow = LocalTime::parse(parser.value("test-now").toStdString());
        if (!o.testNow)
            return usage("--test-now", "write YYYY-MM-DDTHH:MM");
    }
    return o;
}

bool testing() { return qEnvironmentVariable("FIRSTDEW_TEST") == QLatin1String("1"); }

std::optional<Options> optionsOrSay(const QStringList& arguments)
{
    auto options = optionsFrom(arguments, testing());
    if (options)
        return std::move(options.value());
    QTextStream(stderr) << "firstdew: " << options.error().input.c_str() << ": " << options.error().message.c_str()
                        << '\n';
    return std::nullopt;
}

} // namespace firstdew::app
