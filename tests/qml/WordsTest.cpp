#include "Interface.h"
#include "Phrases.h"
#include "charts/DampnessPainter.h"
#include "words/BathWords.h"
#include "words/Errors.h"
#include "words/ScoreWords.h"
#include "words/Sentences.h"

#include <catch2/catch.hpp>

#include <QImage>
#include <QPainter>
#include <cmath>

using namespace firstdew;
using namespace firstdew::facts;

namespace {

charts::DampnessData twoWeeks()
{
    charts::DampnessData data;
    data.from = *LocalDate::parse("2026-03-01");
    data.to = *LocalDate::parse("2026-03-14");
    data.levels = {{data.from, Level::Dry}, {data.from + 1, Level::Clammy}};
    data.levelNames = {"Dry", "Clammy", "Wet", "Dripping"};
    return data;
}

QImage drawn(const charts::DampnessData& data)
{
    QImage picture(300, 160, QImage::Format_RGB32);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    charts::paintDampness(painter, picture.rect(), data,
                          {Qt::black, Qt::gray, Qt::blue, Qt::red, Qt::blue, {}, 1, false});
    return picture;
}

} // namespace

TEST_CASE("Every language writes the digits that machines and meters show")
{
    for (const QString& language : words::languages()) {
        const QLocale locale = words::localeFor(language);
        INFO(language.toStdString());
        CHECK(locale.zeroDigit() == "0");
        CHECK(locale.name().left(2) == language);
        CHECK(locale.toString(10).contains("10"));
    }
    CHECK(words::localeFor("ar").textDirection() == Qt::RightToLeft);
}

TEST_CASE("Times of the day are counted as the person's clock counts them, in every language")
{
    const auto at = [](const char* locale, words::Hours hours, int hour) {
        const QLocale before;
        QLocale::setDefault(QLocale(QString::fromLatin1(locale)));
        words::countHours(hours);
        const QString text = words::clockTime(QTime(hour, 30));
        words::countHours(words::Hours::AsLocale);
        QLocale::setDefault(before);
        return text;
    };
    using words::Hours;
    CHECK(at("en_US", Hours::Twelve, 19) == "7:30 PM");
    CHECK(at("en_US", Hours::Twelve, 0) == "12:30 AM");
    CHECK(at("en_US", Hours::TwentyFour, 19) == "19:30");
    CHECK(at("en_US", Hours::TwentyFour, 0) == "00:30");
    CHECK(at("de_DE", Hours::TwentyFour, 19) == "19:30");
    CHECK(at("de_DE", Hours::Twelve, 19) == "7:30 PM");
    CHECK(at("ar_AE", Hours::Twelve, 19) == QString::fromUtf8("7:30 م"));
    CHECK(at("ar_AE", Hours::Twelve, 7) == QString::fromUtf8("7:30 ص"));
    CHECK(at("ar_AE", Hours::TwentyFour, 7) == "07:30");

    CHECK(words::countsToTwelve(QLocale("en_US")));
    CHECK(words::countsToTwelve(QLocale("ar_EG")));
    CHECK_FALSE(words::countsToTwelve(QLocale("en_GB")));
    CHECK_FALSE(words::countsToTwelve(QLocale("de_DE")));
    CHECK_FALSE(words::countsToTwelve(QLocale("es_ES")));

    const QLocale before;
    QLocale::setDefault(QLocale("en_US"));
    words::countHours(Hours::Twelve);
    CHECK(words::endsName(0).contains("M")); // the notice of a session too
    words::countHours(Hours::AsLocale);
    QLocale::setDefault(before);
}

TEST_CASE("A number typed is read whichever digits and sign of the decimal the keyboard has")
{
    using viewmodels::Phrases;
    CHECK(Phrases::numberIn("12.5") == 12.5);
    CHECK(Phrases::numberIn(" 12,5 ") == 12.5);
    CHECK(Phrases::numberIn(QString::fromUtf8("١٢٫٥")) == 12.5);
    CHECK(std::isnan(Phrases::numberIn("")));
    CHECK(std::isnan(Phrases::numberIn("twelve")));
}

TEST_CASE("A day is tapped where it is drawn, whichever way time runs")
{
    tests::needApplication();
    const QRectF area(0, 0, 300, 160);
    const auto data = twoWeeks();
    charts::ChartLook look{Qt::black, Qt::gray, Qt::blue, Qt::red, Qt::blue, {}, 1, false};
    CHECK(charts::dayAt(area, data, look, {290, 80}) == data.to);
    CHECK_FALSE(charts::dayAt(area, data, look, {2, 80}));
    look.mirrored = true;
    CHECK(charts::dayAt(area, data, look, {10, 80}) == data.to);
    CHECK_FALSE(charts::dayAt(area, data, look, {298, 80}));
}

TEST_CASE("A weighing stands in the chart")
{
    tests::needApplication();
    auto data = twoWeeks();
    const QImage without = drawn(data);
    data.weighings = {{data.from + 5, 40.0}};
    CHECK(drawn(data) != without);
    data.weighings = {{data.to + 5, 40.0}};
    const QImage later = drawn(data);
    data.weighings = {{data.to + 6, 41.0}};
    CHECK(drawn(data) == later);
}

TEST_CASE("What is refused is said in the person's words, with what is safe instead")
{
    CHECK(words::errorSentence({"session-today", "site", "x"}).contains("tomorrow"));
    CHECK(words::errorSentence({"screening-stops", "pregnancy", "x"}).contains("machine off"));
    CHECK(words::errorSentence({"something-else", "", "as core says"}) == "as core says");
}

TEST_CASE("Every health question about a child names the child, and none says you")
{
    tests::needApplication();
    for (const auto row : allOf<ScreeningRow>()) {
        const QString question = words::screeningQuestionAbout(row, "Bo");
        CHECK(question.contains("Bo"));
        CHECK(question.endsWith("?"));
        CHECK_FALSE(question.contains("you", Qt::CaseInsensitive));
        CHECK(words::screeningQuestionAbout(row, "").contains("the child"));
    }
}

TEST_CASE("Page and paper tell the score that core gives, a sentence for each of its lines")
{
    tests::needApplication();
    outlook::Score score;
    score.verdict = outlook::ScoreVerdict::Fits;
    score.days = 60;
    score.lines = {{outlook::Odds::Hardly, 41, 0}, {outlook::Odds::OneInFive, 19, 4}};
    const QStringList lines = words::scoreLines(score);
    REQUIRE(lines.size() == 2);
    CHECK(lines[0].startsWith("When the chance for the next day was less than 1 in 20, dampness came on 0 of 41 day"));
    CHECK(lines[1].startsWith("When the chance for the next day was about 1 in 5, dampness came on 4 of 19 day"));
    CHECK(words::scoreVerdict(score) == "So far the forecasts fit.");
    score.verdict = outlook::ScoreVerdict::Widened;
    CHECK(words::scoreVerdict(score).contains("leaves more room"));
    score = {outlook::ScoreVerdict::TooFew, 13, 7, 1, {}};
    CHECK(words::scoreLines(score).isEmpty());
    CHECK(words::scoreVerdict(score).startsWith("After 7 more check-in"));
    CHECK(words::oddsText(outlook::Odds::Nearly) == "more than 19 in 20");
}

TEST_CASE("Dates have the order of the locale, in every language and in the regions of English")
{
    const auto in = [](const char* locale) {
        const QLocale before;
        QLocale::setDefault(QLocale(QString::fromLatin1(locale)));
        const auto day = *facts::LocalDate::parse("2026-03-02");
        const QStringList all{words::dayAndMonth(day, day), words::fullDay(day), words::shortDay(day),
                              words::dayOfYear(day)};
        QLocale::setDefault(before);
        return all.join(" | ").toStdString();
    };
    CHECK(in("en_GB") == "2 March | Monday, 2 March | 2 Mar | 2 March 2026");
    CHECK(in("en_AU") == "2 March | Monday, 2 March | 2 Mar | 2 March 2026");
    CHECK(in("en_US") == "March 2 | Monday, March 2 | Mar 2 | March 2, 2026");
    CHECK(in("en_CA") == "March 2 | Monday, March 2 | Mar 2 | March 2, 2026");
}

TEST_CASE(
    "Days of the week begin with the locale's first, and numbers have its decimal sign, in every language and region")
{
    struct Region {
        const char* locale;
        ui::Weekday::Value first;
        const char* number;
    };
    tests::Interface ui({390, 844}, "light");
    const QLocale before;
    for (const Region& r : {Region{"en_GB", ui::Weekday::Mon, "12.5"}, Region{"en_US", ui::Weekday::Sun, "12.5"},
                            Region{"de_DE", ui::Weekday::Mon, "12,5"}, Region{"es_ES", ui::Weekday::Mon, "12,5"},
                            Region{"es_MX", ui::Weekday::Sun, "12.5"}, Region{"ar_AE", ui::Weekday::Sat, "12.5"}}) {
        QLocale::setDefault(QLocale(QString::fromLatin1(r.locale)));
        INFO(r.locale);
        const auto days = ui.appearance.phrases()->weekdays();
        CHECK(days.size() == 7);
        CHECK(days.constFirst() == r.first);
        CHECK(words::number(12.5, 1) == QString::fromLatin1(r.number));
        CHECK(viewmodels::Phrases::numberIn(words::number(12.5, 1)) == 12.5);
        QLocale::setDefault(before);
    }
}
