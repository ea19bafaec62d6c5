#pragma once

#include "CaseValues.h"
#include "KeepValues.h"
#include "PlanValues.h"
#include "SessionValues.h"
#include "TodayValues.h"

#include <QObject>

namespace firstdew::viewmodels {

/// What a line shows whose place in a list is gone.
class Empty : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(firstdew::ui::SiteToday siteToday MEMBER siteToday CONSTANT)
    Q_PROPERTY(firstdew::ui::SiteAhead siteAhead MEMBER siteAhead CONSTANT)
    Q_PROPERTY(firstdew::ui::DayBehind dayBehind MEMBER dayBehind CONSTANT)
    Q_PROPERTY(firstdew::ui::SiteLevel siteLevel MEMBER siteLevel CONSTANT)
    Q_PROPERTY(firstdew::ui::SitePlan sitePlan MEMBER sitePlan CONSTANT)
    Q_PROPERTY(firstdew::ui::CourseLine courseLine MEMBER courseLine CONSTANT)
    Q_PROPERTY(firstdew::ui::HealthQuestion healthQuestion MEMBER healthQuestion CONSTANT)
    Q_PROPERTY(firstdew::ui::FileResult fileResult MEMBER fileResult CONSTANT)
    Q_PROPERTY(firstdew::ui::SheetRead sheetRead MEMBER sheetRead CONSTANT)
    Q_PROPERTY(firstdew::ui::RecordTally recordTally MEMBER recordTally CONSTANT)
    Q_PROPERTY(firstdew::ui::SiteChoice siteChoice MEMBER siteChoice CONSTANT)
    Q_PROPERTY(firstdew::ui::WaveformChoice waveformChoice MEMBER waveformChoice CONSTANT)
    Q_PROPERTY(firstdew::ui::WayChoice wayChoice MEMBER wayChoice CONSTANT)
    Q_PROPERTY(firstdew::ui::PrepLine prepLine MEMBER prepLine CONSTANT)
    Q_PROPERTY(firstdew::ui::CaseLine caseLine MEMBER caseLine CONSTANT)

public:
    explicit Empty(QObject* parent = nullptr) : QObject(parent) {}

private:
    ui::SiteToday siteToday;
    ui::SiteAhead siteAhead;
    ui::DayBehind dayBehind;
    ui::SiteLevel siteLevel;
    ui::SitePlan sitePlan;
    ui::CourseLine courseLine;
    ui::HealthQuestion healthQuestion;
    ui::FileResult fileResult;
    ui::SheetRead sheetRead;
    ui::RecordTally recordTally;
    ui::SiteChoice siteChoice;
    ui::WaveformChoice waveformChoice;
    ui::WayChoice wayChoice;
    ui::PrepLine prepLine;
    ui::CaseLine caseLine;
};

} // namespace firstdew::viewmodels
