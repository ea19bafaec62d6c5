#include "Router.h"

#include <QMetaEnum>

namespace firstdew::controls {

void Router::startBath(ui::Site::Value site)
{
    m_sessionSite = site;
    m_sessionAsked = true;
    emit sessionAskedChanged();
    emit place(ui::Place::Session);
}

void Router::openDay(int day)
{
    m_day = day;
    emit subjectChanged();
    emit page(ui::Part::DayPagePart);
}

void Router::openWhy(ui::DiarySite::Value site)
{
    m_site = site;
    emit subjectChanged();
    emit page(ui::Part::WhyPagePart);
}

void Router::openCourse(ui::Site::Value treated)
{
    m_treated = treated;
    emit subjectChanged();
    emit page(ui::Part::CoursePlanPart);
}

void Router::openDaySheet(int day)
{
    m_day = day;
    emit subjectChanged();
    emit sheet(ui::Part::DaySheetPart);
}

void Router::openNotNow(ui::DiarySite::Value site)
{
    m_site = site;
    emit subjectChanged();
    emit sheet(ui::Part::NotNowSheetPart);
}

QUrl Router::documentOf(ui::Part::Value part) const
{
    const auto i = static_cast<std::size_t>(part);
    return i < ui::kPartDocuments.size() ? QUrl(QStringLiteral("qrc:/Firstdew/") + ui::kPartDocuments[i]) : QUrl();
}

ui::Part::Value Router::partNamed(const QString& name) const
{
    bool known = false;
    const int value =
        QMetaEnum::fromType<ui::Part::Value>().keyToValue((name + QLatin1String("Part")).toUtf8().constData(), &known);
    return known ? static_cast<ui::Part::Value>(value) : ui::Part::Nothing;
}

} // namespace firstdew::controls
