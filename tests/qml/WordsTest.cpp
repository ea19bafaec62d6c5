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
        CHECK(locale.language() == QLocale(language).language());
        CHECK(locale.toString(10).contains("10"));
    }
    CHECK(words::localeFor("ar").textDirection() == Qt::RightToLeft);
    CHECK(words::localeFor("pt_BR").toString(QDate(2026, 3, 2), "d 'de' MMMM") == QString("2 de março"));
}

TEST_CASE("A phone set to another region's form of a language gets that language; one of no known language English")
{
    CHECK(words::languageLike(QLocale("pt_BR")) == "pt_BR");
    CHECK(words::languageLike(QLocale("pt_PT")) == "pt_BR");
    CHECK(words::languageLike(QLocale("de_CH")) == "de");
    CHECK(words::languageLike(QLocale("fi_FI")) == "en");
    CHECK(words::languageLike(QLocale::c()) == "en");
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
    CHECK(words::errorSentence({"not-now", "raised", "as core says"}).contains("lower the current to zero"));
}

TEST_CASE("An error that has no sentence of its own is not told in core's English")
{
    for (const char* code : {"something-else", "store-failed", "back-up-failed", "pdf-failed", "lighter-after",
                             "session-ended", "not-now", "out-of-range", "care-sheet-newer", "csv-invalid"}) {
        INFO(code);
        const QString text = words::errorSentence({code, "input", "as core says"});
        CHECK_FALSE(text.isEmpty());
        CHECK_FALSE(text.contains("core"));
        CHECK_FALSE(text.contains(code));
    }
    CHECK(words::errorSentence({"something-else", "", ""}).contains("Try again"));
}

TEST_CASE("The first day of the week is the phone's, where the phone speaks the language that is shown")
{
    const auto first = [](const char* shown, const char* phone) {
        return words::firstWeekday(QLocale(QString::fromLatin1(shown)), QLocale(QString::fromLatin1(phone)));
    };
    CHECK(first("ar_AE", "ar_EG") == Qt::Saturday);
    CHECK(first("ar_AE", "ar_MA") == QLocale("ar_MA").firstDayOfWeek());
    CHECK(first("en_GB", "en_US") == Qt::Sunday);
    CHECK(first("de_DE", "en_US") == Qt::Monday);
    CHECK(first("fr_FR", "fr_FR") == Qt::Monday);
    CHECK(first("fr_FR", "fr_CA") == Qt::Sunday);
    CHECK(first("pt_BR", "pt_BR") == Qt::Sunday);
}

TEST_CASE("The time from which the skin is ready is told as the person's clock counts")
{
    const QLocale before;
    QLocale::setDefault(QLocale("en_US"));
    const protocol::PrepWait wait{protocol::PrepItem::NoAntiperspirant, *LocalTime::parse("2026-03-21T19:30")};
    const LocalDate today = *LocalDate::parse("2026-03-20");
    words::countHours(words::Hours::Twelve);
    CHECK(words::waitSentence(wait, Site::Armpits, today) ==
          "Ready tomorrow from 7:30 PM. Armpits: no antiperspirant with aluminium for 24 hours");
    words::countHours(words::Hours::TwentyFour);
    CHECK(words::waitSentence(wait, Site::Armpits, today).contains("from 19:30."));
    words::countHours(words::Hours::AsLocale);
    QLocale::setDefault(before);
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

TEST_CASE("A shortening is told with its days, and what follows from it")
{
    tests::needApplication();
    const auto day = *facts::LocalDate::parse("2026-03-02");
    outlook::Forecast forecast;
    CHECK(words::shorterLines(forecast, day).isEmpty());
    forecast.days = {{day, 0, {}}};
    forecast.change = outlook::Changed{day + -40, day + -3, 7.2, 12.4};
    const QStringList lines = words::shorterLines(forecast, day);
    REQUIRE(lines.size() == 2);
    CHECK(lines[0].startsWith("Usually dry for 7 day(s) since about "));
    CHECK(lines[0].endsWith("; before that, for 12."));
    CHECK(lines[1].contains("tell your nurse or doctor"));
    forecast.change->medianBefore.reset();
    CHECK(words::shorterLines(forecast, day).isEmpty());
}

TEST_CASE("Dates have the order of the locale, in every language and in the regions of English")
{
    const auto in = [](const char* locale, const char* when = "2026-03-02") {
        const QLocale before;
        QLocale::setDefault(QLocale(QString::fromLatin1(locale)));
        const auto day = *facts::LocalDate::parse(when);
        const QStringList all{words::dayAndMonth(day, day), words::fullDay(day), words::shortDay(day),
                              words::shortDayOfYear(day), words::dayOfYear(day)};
        QLocale::setDefault(before);
        return all.join(" | ").toStdString();
    };
    CHECK(in("en_GB") == "2 March | Monday, 2 March | 2 Mar | 2 Mar 2026 | 2 March 2026");
    CHECK(in("en_AU") == "2 March | Monday, 2 March | 2 Mar | 2 Mar 2026 | 2 March 2026");
    CHECK(in("en_US") == "March 2 | Monday, March 2 | Mar 2 | Mar 2, 2026 | March 2, 2026");
    CHECK(in("en_CA") == "March 2 | Monday, March 2 | Mar 2 | Mar 2, 2026 | March 2, 2026");
    // The first of a month has a form of its own in French, and in no other language.
    for (const char* french : {"fr_FR", "fr_CA"}) {
        CHECK(in(french, "2026-03-01") == "1er mars | Dimanche, 1er mars | 1er mars | 1er mars 2026 | 1er mars 2026");
        CHECK(in(french, "2026-03-11") == "11 mars | Mercredi, 11 mars | 11 mars | 11 mars 2026 | 11 mars 2026");
    }
    CHECK(in("en_GB", "2026-03-01") == "1 March | Sunday, 1 March | 1 Mar | 1 Mar 2026 | 1 March 2026");
    CHECK(in("en_US", "2026-03-01") == "March 1 | Sunday, March 1 | Mar 1 | Mar 1, 2026 | March 1, 2026");
    CHECK(in("pt_BR", "2026-03-01").starts_with("1 março | Domingo, 1 março"));
}

TEST_CASE("A name that goes on a sentence has a small letter in French, Spanish and Portuguese")
{
    const auto in = [](const char* locale, const QString& name) {
        const QLocale before;
        QLocale::setDefault(QLocale(QString::fromLatin1(locale)));
        const QString text = words::within(name);
        QLocale::setDefault(before);
        return text;
    };
    for (const char* small : {"fr_FR", "fr_CA", "es_MX", "pt_BR"}) {
        INFO(small);
        CHECK(in(small, "Efficace") == "efficace");
        CHECK(in(small, QString::fromUtf8("Épuisé")) == QString::fromUtf8("épuisé"));
        CHECK(in(small, "HDSS 4") == "HDSS 4");
        CHECK(in(small, words::asWritten("Ana")) == words::asWritten("Ana"));
        CHECK(in(small, "").isEmpty());
    }
    for (const char* as : {"en_GB", "de_DE", "ar_AE"})
        CHECK(in(as, "Efficace") == "Efficace");
    const QLocale before;
    QLocale::setDefault(QLocale("fr_FR"));
    CHECK(words::pair("Mains", "Moite") == "Mains: moite");
    CHECK(words::siteNames({Site::Hands, Site::Feet}) == "Both hands, both feet");
    QLocale::setDefault(before);
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
                            Region{"es_MX", ui::Weekday::Sun, "12.5"}, Region{"fr_FR", ui::Weekday::Mon, "12,5"},
                            Region{"pt_BR", ui::Weekday::Sun, "12,5"}, Region{"ar_DZ", ui::Weekday::Sat, "12,5"}}) {
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
