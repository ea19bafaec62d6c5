#include "Application.h"
#include "charts/MonthPainter.h"
#include "charts/SpellColumnsPainter.h"
#include "charts/WeeksPainter.h"
#include "words/Names.h"

#include <catch2/catch.hpp>

#include <QFontMetricsF>
#include <QImage>
#include <QPainter>
#include <QScopeGuard>

#include <functional>

using namespace firstdew::charts;
using firstdew::tests::needApplication;

namespace {

const QColor kInk(Qt::black);
const QColor kFaint(0xdddddd);
const QColor kLine(0x0000ff);
const QColor kSession(0xff0000);
const QColor kLight(0xaaaaff);
const LocalDate kDay = *LocalDate::parse("2026-03-02"); // a Monday

ChartLook look(bool mirrored = false)
{
    QFont font("Inter");
    font.setPixelSize(12);
    return {kInk, kFaint, kLine, kSession, kLight, font, 1, mirrored};
}

QImage drawn(QSize size, const std::function<void(QPainter&, const QRectF&)>& paint)
{
    needApplication();
    QImage picture(size, QImage::Format_RGB32);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    paint(painter, QRectF(QPointF(0, 0), size));
    return picture;
}

int count(const QImage& picture, const QColor& colour, const QRect& within)
{
    int out = 0;
    const QRect r = within.intersected(picture.rect());
    for (int y = r.top(); y <= r.bottom(); ++y)
        for (int x = r.left(); x <= r.right(); ++x)
            out += picture.pixelColor(x, y).rgb() == colour.rgb() ? 1 : 0;
    return out;
}

/// How high the colour stands in the column of pixels at `x`.
int heightAt(const QImage& picture, const QColor& colour, int x)
{
    return count(picture, colour, QRect(x, 0, 1, picture.height()));
}

QImage spells(const std::vector<SpellColumn>& all, bool mirrored = false)
{
    return drawn({300, 160}, [&](QPainter& p, const QRectF& area) { paintSpellColumns(p, area, all, look(mirrored)); });
}

} // namespace

TEST_CASE("A column is as high as its dry days, the oldest first in the direction of reading")
{
    const std::vector<SpellColumn> all{{kDay, 5, 6, false}, {kDay + 10, 10, 11, false}, {kDay + 30, 20, {}, true}};
    const QImage picture = spells(all);
    const int five = heightAt(picture, kLine, 50);
    const int ten = heightAt(picture, kLine, 150);
    const int twenty = heightAt(picture, kSession, 250); // the present one stands out, with a tip
    CHECK(five > 15);
    CHECK(ten == Approx(2 * five).margin(2));
    CHECK(twenty > 4 * five);
    const QImage turned = spells(all, true);
    CHECK(heightAt(turned, kLine, 250) == Approx(five).margin(1));
    CHECK(heightAt(turned, kSession, 50) == Approx(twenty).margin(1));
}

TEST_CASE("A session that brought no dry day is seen, and no spell draws nothing")
{
    const QImage picture = spells({{kDay, 0, 1, false}, {kDay + 10, 10, 11, false}});
    CHECK(heightAt(picture, kLine, 75) > 0);
    CHECK(heightAt(picture, kLine, 75) < 10);
    CHECK(count(spells({}), Qt::white, QRect(0, 0, 300, 160)) == 300 * 160);
    CHECK(columnsIn(300, look()) == 7);
    CHECK(columnsIn(60, look()) < 4);
    CHECK(columnsIn(0, look()) == 1);
}

TEST_CASE("Ranges and open ends are written from the left, however the page is read")
{
    const std::vector<SpellColumn> all{{kDay, 5, {}, false}, {kDay + 10, 10, 14, false}, {kDay + 30, 20, {}, true}};
    const auto numbers = [&](Qt::LayoutDirection direction) {
        const QImage picture = drawn({300, 160}, [&](QPainter& p, const QRectF& area) {
            p.setLayoutDirection(direction);
            paintSpellColumns(p, area, all, look());
        });
        return picture.copy(0, 0, 300, 140); // without the days below
    };
    CHECK(numbers(Qt::RightToLeft) == numbers(Qt::LeftToRight));
}

TEST_CASE("The calendar draws what was noted in the cell of its day, and finds the day under a finger")
{
    needApplication();
    MonthData month;
    month.first = kDay - 7;
    month.today = kDay + 11;
    month.weekdays = {"M", "T", "W", "T", "F", "S", "S"};
    month.levels = {{kDay, Level::Dry}, {kDay + 1, Level::Clammy}, {kDay + 2, Level::Wet}, {kDay + 3, Level::Dripping}};
    month.sessions = {kDay + 1};
    for (const bool mirrored : {false, true}) {
        const ChartLook seen = look(mirrored);
        const QSize size(350, static_cast<int>(monthHeight(seen)) + 1);
        const QRectF area(QPointF(0, 0), size);
        const QImage picture =
            drawn(size, [&](QPainter& p, const QRectF& where) { paintMonth(p, where, month, seen); });
        const auto cell = [&](int day) { // from the second Monday
            const int column = mirrored ? 6 - day : day;
            const double row = (area.height() - QFontMetricsF(seen.font).height()) / 5;
            return QRect(column * 50, static_cast<int>(QFontMetricsF(seen.font).height() + row), 50,
                         static_cast<int>(row));
        };
        const auto blue = [&](int day) { return count(picture, kLine, cell(day)); };
        CHECK(blue(0) < blue(1)); // a ring
        CHECK(blue(1) < blue(2));
        CHECK(blue(2) < blue(3));
        CHECK(blue(4) == 0); // no check-in
        CHECK(count(picture, kSession, cell(1)) > 20);
        CHECK(count(picture, kSession, cell(0)) == 0);
        for (int day = 0; day < 5; ++day)
            CHECK(dayAt(area, month, seen, QRectF(cell(day)).center()) == kDay + day);
        CHECK_FALSE(dayAt(area, month, seen, QPointF(25, 2))); // the names of the days
        CHECK_FALSE(dayAt(area, month, seen, QRectF(cell(5)).center() + QPointF(0, cell(0).height()))); // to come
    }
}

TEST_CASE("The bars of weeks are as high as their damp days; a week not known has none")
{
    WeeksData data;
    data.from = kDay;
    data.to = kDay + 27;
    data.weeks = {{kDay, 7.0, 7}, {kDay + 7, 3.5, 0}, {kDay + 14, {}, 0}, {kDay + 21, 0.0, 0}};
    data.sessions = {kDay + 10};
    const QImage picture =
        drawn({400, 200}, [&](QPainter& p, const QRectF& area) { paintWeeks(p, area, data, look()); });
    const auto tall = [&](int week) {
        const int x = 16 + 96 * week + 40;
        return heightAt(picture, kLine, x) + heightAt(picture, kLight, x);
    };
    CHECK(tall(0) > 100);
    CHECK(tall(1) == Approx(tall(0) / 2.0).margin(3));
    CHECK(tall(2) == 0);
    CHECK(tall(3) > 0); // dry, and known
    CHECK(tall(3) < 4);
    CHECK(heightAt(picture, kLight, 16 + 96 + 40) > 30); // clammy days are light, wet ones dark
    CHECK(heightAt(picture, kLight, 16 + 40) == 0);
    CHECK(count(picture, kSession, picture.rect()) > 0);
}

TEST_CASE("Weeks too thin to tell apart stand together with their mean")
{
    WeeksData data;
    data.from = kDay;
    data.to = kDay + 7 * 520 - 1;
    for (int i = 0; i < 520; ++i)
        data.weeks.push_back({kDay + 7 * i, i % 2 == 0 ? 7.0 : 0.0, 0});
    const QImage picture =
        drawn({300, 200}, [&](QPainter& p, const QRectF& area) { paintWeeks(p, area, data, look()); });
    const int plot = 200 - 12 - 14 - static_cast<int>(1.5 * QFontMetricsF(look().font).height());
    for (int x = 60; x < 280; x += 7)
        if (const int high = heightAt(picture, kLight, x); high > 0)
            CHECK(high == Approx(plot / 2.0).margin(0.2 * plot));
}

TEST_CASE("Months and years stand on one line, whichever typeface has their letters")
{
    needApplication();
    const QLocale before;
    const auto restored = qScopeGuard([&] { QLocale::setDefault(before); });
    QLocale::setDefault(firstdew::words::localeFor(QStringLiteral("ar")));
    firstdew::print::loadTypefacesFor(firstdew::words::languageName(QStringLiteral("ar")));
    QFont font;
    font.setFamilies({QStringLiteral("Inter"), QStringLiteral("Noto Sans Arabic")});
    font.setPixelSize(24);
    ChartLook large = look();
    large.font = font;
    const LocalDate from = *LocalDate::parse("2025-12-01");
    const QRectF area(0, 0, 900, 200);
    const TimeFrame frame(area, from, kDay, {}, 0, 100, large);
    const QImage picture =
        drawn(area.size().toSize(), [&](QPainter& p, const QRectF&) { frame.paintDates(p, 0, large); });
    const auto baseline = [&](const QString& text, LocalDate day) {
        const QRectF ink = QFontMetricsF(font).tightBoundingRect(text);
        const int left = static_cast<int>(frame.x(day) - ink.width() / 2);
        int lowest = 0;
        for (int y = 0; y < picture.height(); ++y)
            for (int x = left; x < left + static_cast<int>(ink.width()); ++x)
                if (qGray(picture.pixel(x, y)) < 128)
                    lowest = y;
        REQUIRE(lowest > 100);
        return lowest + 1 - ink.bottom();
    };
    const double year = baseline(QStringLiteral("2026"), *LocalDate::parse("2026-01-01"));
    const LocalDate february = *LocalDate::parse("2026-02-01");
    CHECK(baseline(QLocale().standaloneMonthName(2, QLocale::ShortFormat), february) == Approx(year).margin(1.5));
}
