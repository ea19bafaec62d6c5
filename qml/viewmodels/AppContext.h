#pragma once

#include "Announce.h"
#include "AppLock.h"
#include "Appearance.h"
#include "BathModel.h"
#include "CaseloadModel.h"
#include "DiaryModel.h"
#include "KeepModel.h"
#include "PlanModel.h"
#include "ScanModel.h"
#include "SheetModel.h"
#include "Store.h"
#include "SummaryModel.h"
#include "TaughtModel.h"
#include "TodayModel.h"

#include <QQmlEngine>

namespace firstdew::viewmodels {

/// What the pages show and do. The program makes it and gives it to an engine before that loads a page; the singletons
/// of the pages are its members.
struct AppContext {
    AppContext(Store& theStore, Appearance& theAppearance, BathModel& theBath, SummaryModel& theSummary,
               ScanModel& theScan)
        : store(theStore), appearance(theAppearance), bath(theBath), summary(theSummary), scan(theScan)
    {
        summary.outgoing().useSaver([this](const QString& file, auto told) { keep.saveCopy(file, std::move(told)); });
        QObject::connect(&keep, &KeepModel::forgotten, &summary, &SummaryModel::dropCopy);
    }
    ~AppContext() { summary.outgoing().useSaver({}); }
    AppContext(const AppContext&) = delete;
    AppContext& operator=(const AppContext&) = delete;

    Store& store;
    Appearance& appearance;
    BathModel& bath;
    SummaryModel& summary;
    ScanModel& scan;
    Announce announce{store, bath};
    AppLock lock{store, bath};
    TodayModel today{store};
    DiaryModel diary{store};
    PlanModel plan{store};
    KeepModel keep{store};
    TaughtModel taught{store};
    CaseloadModel caseload{store, summary.outgoing()};
    SheetModel sheet{store, caseload, summary.outgoing()};

    /// A check-in is felt as one light tick.
    void feelCheckIns(ports::Haptics& haptics);
    void giveTo(QQmlEngine& engine);
    [[nodiscard]] static AppContext& of(const QQmlEngine& engine);
};

} // namespace firstdew::viewmodels
