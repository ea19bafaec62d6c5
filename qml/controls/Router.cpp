#include "Router.h"

#include <QKeyEvent>
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

void Router::openDone(ui::Site::Value treated, int day, const QString& entry)
{
    m_treated = treated;
    m_day = day;
    m_entry = entry;
    emit subjectChanged();
    emit page(ui::Part::DonePagePart);
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

void Router::openTaught(ui::Site::Value treated)
{
    m_treated = treated;
    emit subjectChanged();
    emit page(ui::Part::TaughtPagePart);
}

void Router::openTechnique(ui::Site::Value treated)
{
    m_treated = treated;
    emit subjectChanged();
    emit page(ui::Part::TechniquePagePart);
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

void Router::watch(QObject* window) { window->installEventFilter(this); }

void Router::opened(QObject* sheet)
{
    m_sheets.removeAll(sheet);
    m_sheets.append(sheet);
    emit sheetsChanged();
    emit rises(sheet);
}

void Router::closed(QObject* sheet)
{
    if (m_sheets.removeAll(sheet) > 0)
        emit sheetsChanged();
}

bool Router::closeTopSheet() { return !m_sheets.isEmpty() && QMetaObject::invokeMethod(m_sheets.constLast(), "close"); }

bool Router::eventFilter(QObject* window, QEvent* event)
{
    if (event->type() != QEvent::KeyPress)
        return false;
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key != Qt::Key_Escape && key != Qt::Key_Back)
        return false;
    QVariant handled;
    QMetaObject::invokeMethod(window, "goBack", Q_RETURN_ARG(QVariant, handled));
    event->setAccepted(handled.toBool());
    return handled.toBool();
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
