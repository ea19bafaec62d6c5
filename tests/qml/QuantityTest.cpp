#include "words/Quantity.h"
#include "Interface.h"
#include "words/BathWords.h"
#include "words/Drawings.h"
#include "words/SheetWords.h"

#include <QRegularExpression>
#include <QTranslator>

using namespace firstdew;
using namespace firstdew::facts;
using words::Unit;

namespace {

constexpr std::array kUnits{Unit::Milliamps,  Unit::MilliampMinutes, Unit::Minutes,           Unit::Seconds,
                            Unit::Milligrams, Unit::Millilitres,     Unit::SquareCentimetres, Unit::Percent};

/// Whether a line could end between a number and its unit.
bool parts(const QString& text)
{
    static const QRegularExpression loose(
        QString::fromUtf8("\\d[\u2066-\u2069\u200e\u200f]* (mA|mg|ml|cm²|min|s|%|ملغ|مل|سم²|د|ث)(?![\\w%])"),
        QRegularExpression::UseUnicodePropertiesOption);
    return loose.match(text).hasMatch();
}

/// The program in one language, until the end of the block.
struct Speaking {
    explicit Speaking(const QString& language)
    {
        if (translator.load(":/i18n/firstdew_" + language))
            QCoreApplication::installTranslator(&translator);
        QLocale::setDefault(words::localeFor(language));
    }
    ~Speaking()
    {
        QCoreApplication::removeTranslator(&translator);
        QLocale::setDefault(before);
    }
    Speaking(const Speaking&) = delete;
    Speaking& operator=(const Speaking&) = delete;

    QLocale before;
    QTranslator translator;
};

/// Every sentence of words that holds a quantity.
QStringList sentences()
{
    using protocol::AreaFrom;
    protocol::ScriptRequest feet;
    feet.site = Site::Feet;
    feet.limit = Milliamps{20};
    const auto script = protocol::scriptFor(feet);
    REQUIRE(script);
    bath::State state;
    state.script = *script;
    protocol::LimitQuery query;
    query.contact = SquareCentimetres{152.4};
    protocol::CurrentAdvice advice;
    advice.target = Milliamps{15};
    protocol::LimitAnswer limit;
    limit.allowed = true;
    limit.limit = Milliamps{20};
    QStringList out{words::milliamps(16.5),
                    words::minutes(10),
                    words::percent(0.2),
                    words::lengthSentence(*script),
                    words::leftInAll(state),
                    words::leftInStep(state),
                    words::watchSentence(Milliamps{4.8}),
                    words::adviceSentence(advice, Milliamps{12}),
                    words::limitSentence(limit, "nurse"),
                    words::prepText(protocol::PrepItem::WarmWater, Site::Feet),
                    words::drawingText(protocol::Drawing::WaterLevel),
                    words::squareCentimetres(SquareCentimetres{24})};
    for (const auto from : {AreaFrom::Body, AreaFrom::MachinePad, AreaFrom::SheetPad, AreaFrom::UnknownPad})
        out << words::areaSentence(query, from);
    for (const Unit unit : kUnits)
        out << words::quantity(1234.5, unit, 1);
    return out;
}

} // namespace

TEST_CASE("A number keeps its unit at the end of a line, in every language")
{
    tests::needApplication();
    CHECK(parts("about 350 ml in each tray"));
    CHECK(parts(QString::fromUtf8("\u206616.5 mA\u2069")));
    CHECK_FALSE(parts(QString::fromUtf8("16.5\u00a0mA, 10 minutes, 20%")));
    for (const QString& language : words::languages()) {
        const Speaking speaking(language);
        for (const QString& text : sentences()) {
            INFO(language.toStdString() << ": " << text.toStdString());
            CHECK(text.contains(QRegularExpression("\\d")));
            CHECK_FALSE(parts(text));
        }
        CHECK(words::milliamps(15).contains(QString::fromUtf8("15\u00a0mA")));
    }
}

TEST_CASE("No page and no step of a session shows a number that could part from its unit")
{
    tests::Interface ui({390, 844}, "light");
    int quantities = 0;
    for (const QString& page : tests::pages()) {
        REQUIRE(ui.show(page));
        ui.settled();
        tests::visit(ui.window->contentItem(), [&](QQuickItem* item) {
            if (!tests::isText(item))
                return;
            const QString text = item->property("text").toString();
            INFO(page.toStdString() << ": " << text.toStdString());
            CHECK_FALSE(parts(text));
            quantities += text.contains(QString::fromUtf8("\u00a0mA")) ? 1 : 0;
        });
    }
    CHECK(quantities > 10);
}

TEST_CASE("Per cent has a space in German and Spanish, and none in English and Arabic")
{
    tests::needApplication();
    const auto in = [](const char* language) {
        const Speaking speaking(language);
        return words::percent(0.2);
    };
    CHECK(in("en") == "20%");
    CHECK(in("ar") == "20%");
    CHECK(in("de") == QString::fromUtf8("20\u00a0%"));
    CHECK(in("es") == QString::fromUtf8("20\u00a0%"));
}

TEST_CASE("The last step says what comes out of the water or off the skin")
{
    tests::needApplication();
    protocol::Step step;
    step.kind = protocol::StepKind::Finish;
    const auto named = [&](protocol::Prompt prompt) {
        step.prompt = prompt;
        CHECK(words::verbName(step) == words::stepName(step));
        return words::stepName(step);
    };
    CHECK(named(protocol::Prompt::LiftOut) == "Lift out");
    CHECK(named(protocol::Prompt::TakePadsOff) == "Pads off");
    CHECK(named(protocol::Prompt::DryAll) == "Dry off");
}
