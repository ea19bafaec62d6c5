#include "AppContext.h"

#include <QVariant>

namespace firstdew::viewmodels {

namespace {

constexpr const char* kProperty = "firstdew";

/// The engine does not delete what the program owns.
template <class T>
T* lent(T& object)
{
    QQmlEngine::setObjectOwnership(&object, QQmlEngine::CppOwnership);
    return &object;
}

} // namespace

void AppContext::giveTo(QQmlEngine& engine) { engine.setProperty(kProperty, QVariant::fromValue<void*>(this)); }

void AppContext::feelCheckIns(ports::Haptics& haptics)
{
    QObject::connect(&today, &TodayModel::checkedIn, &today, [&haptics] { haptics.tick(); });
}

AppContext& AppContext::of(const QQmlEngine& engine)
{
    auto* context = static_cast<AppContext*>(engine.property(kProperty).value<void*>());
    Q_ASSERT_X(context != nullptr, "AppContext", "a page is loaded before the context is given");
    return *context;
}

Announce* Announce::create(QQmlEngine* engine, QJSEngine*) { return lent(AppContext::of(*engine).announce); }
AppLock* AppLock::create(QQmlEngine* engine, QJSEngine*) { return lent(AppContext::of(*engine).lock); }
Store* Store::create(QQmlEngine* engine, QJSEngine*) { return lent(AppContext::of(*engine).store); }
Appearance* Appearance::create(QQmlEngine* engine, QJSEngine*) { return lent(AppContext::of(*engine).appearance); }
BathModel* BathModel::create(QQmlEngine* engine, QJSEngine*) { return lent(AppContext::of(*engine).bath); }
SummaryModel* SummaryModel::create(QQmlEngine* engine, QJSEngine*) { return lent(AppContext::of(*engine).summary); }
ScanModel* ScanModel::create(QQmlEngine* engine, QJSEngine*) { return lent(AppContext::of(*engine).scan); }
TodayModel* TodayModel::create(QQmlEngine* engine, QJSEngine*) { return lent(AppContext::of(*engine).today); }
DiaryModel* DiaryModel::create(QQmlEngine* engine, QJSEngine*) { return lent(AppContext::of(*engine).diary); }
PlanModel* PlanModel::create(QQmlEngine* engine, QJSEngine*) { return lent(AppContext::of(*engine).plan); }
KeepModel* KeepModel::create(QQmlEngine* engine, QJSEngine*) { return lent(AppContext::of(*engine).keep); }
TaughtModel* TaughtModel::create(QQmlEngine* engine, QJSEngine*) { return lent(AppContext::of(*engine).taught); }
CaseloadModel* CaseloadModel::create(QQmlEngine* engine, QJSEngine*) { return lent(AppContext::of(*engine).caseload); }
SheetModel* SheetModel::create(QQmlEngine* engine, QJSEngine*) { return lent(AppContext::of(*engine).sheet); }

} // namespace firstdew::viewmodels
