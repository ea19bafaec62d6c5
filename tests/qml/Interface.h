#pragma once

#include "AppContext.h"
#include "Application.h"
#include "FakeLock.h"
#include "Pages.h"
#include "SystemClock.h"
#include "controls/Router.h"
#include "diary/AppLock.h"
#include "ports/Absent.h"
#include "words/Names.h"

#include <catch2/catch.hpp>

#include <QGuiApplication>
#include <QImage>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTranslator>

#include <functional>
#include <string>

namespace firstdew::tests {

using namespace facts;

/// A voice that is heard until it says otherwise.
struct HeardVoice final : ports::Voice {
    std::function<void(bool)> tellSilence;
    void onSilence(std::function<void(bool)> tell) override { tellSilence = std::move(tell); }
    void say(const std::string&) override {}
    void tone(const std::string&) override {}
    void alarm(const std::string&) override {}
    void hush() override {}
};

/// With a space between a number and its unit, where the app has one that does not break.
inline QString plain(QString text) { return text.replace(QChar(QChar::Nbsp), QLatin1Char(' ')); }

inline void visit(QQuickItem* item, const std::function<void(QQuickItem*)>& see)
{
    if (!item->isVisible() || item->opacity() == 0)
        return;
    see(item);
    for (QQuickItem* child : item->childItems())
        visit(child, see);
}

/// A camera that sees what a test shows it.
struct FakeCamera final : ports::CodeCamera {
    bool there = false;
    std::function<void(const Picture&)> seen;
    std::function<void()> failed;

    [[nodiscard]] bool present() const override { return there; }
    void start(std::function<void(const Picture&)> see, std::function<void()> fail) override
    {
        seen = std::move(see);
        failed = std::move(fail);
    }
    void stop() override { seen = nullptr; }
    void show(const QImage& image) const
    {
        const QImage grey = image.convertToFormat(QImage::Format_Grayscale8);
        QByteArray rows;
        for (int row = 0; row < grey.height(); ++row)
            rows.append(reinterpret_cast<const char*>(grey.constScanLine(row)), grey.width());
        if (const auto now = seen)
            now({reinterpret_cast<const unsigned char*>(rows.constData()), grey.width(), grey.height()});
    }
};

/// The interface over an invented record, in a window of that size.
struct Interface {
    explicit Interface(QSize size, const QString& theme, double textScale = 1,
                       Qt::LayoutDirection direction = Qt::LeftToRight)
        : Interface(size, theme, textScale, direction, {})
    {
    }

    /// Over a file that `made` made.
    Interface(QSize size, const QString& theme, const std::function<void(const QString&)>& made)
        : Interface(size, theme, 1, Qt::LeftToRight, made)
    {
    }

    Interface(QSize size, const QString& theme, double textScale, Qt::LayoutDirection direction,
              const std::function<void(const QString&)>& made)
        : file((made ? made(folder.path() + "/record.db") : void(), folder.path() + "/record.db")),
          clock(LocalTime::parse("2026-03-20T19:00"), sessionSpeed), store(clock, file.toStdString()),
          appearance(store, {facts::fromToken<diary::Theme>(theme.toStdString()), "en", "today", "test", textScale,
                             size.width(), size.height()})
    {
        if (!made)
            fill();
        QGuiApplication::setLayoutDirection(direction);
        if (deviceLock != nullptr)
            context.lock.use(*deviceLock);
        context.giveTo(engine);
        engine.addImportPath("qrc:/");
        engine.load(QUrl("qrc:/Firstdew/AppWindow.qml"));
        REQUIRE_FALSE(engine.rootObjects().isEmpty());
        window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
        REQUIRE(window != nullptr);
    }

    /// What pages have left to be deleted goes while engine and theme are there.
    ~Interface() { QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); }
    Interface(const Interface&) = delete;
    Interface& operator=(const Interface&) = delete;

    void fill() { fillFor("Alma"); }

    void fillFor(const char* name)
    {
        store.append(Person{name, LocalDate::parse("1990-04-23"), {}, {}, {}});
        store.append(Machine{"Invented", true, true, PolaritySwap::Leads, true, PowerSource::Cells, {}});
        store.append(SiteUse{Site::Hands, true});
        store.append(SiteUse{Site::Feet, true});
        store.append(Session{Site::Hands, Waveform::Direct, Milliamps{14}, Milliamps{12}, true, {}, {}, {}, "", "", ""},
                     LocalTime::parse("2026-03-05T18:00"));
        store.append(CheckIn{DiarySite::Hands, Level::Dry, {}}, LocalTime::parse("2026-03-18T20:00"));
        store.append(CheckIn{DiarySite::Hands, Level::Clammy, {}}, LocalTime::parse("2026-03-19T20:00"));
        store.append(CheckIn{DiarySite::Feet, Level::Clammy, {Circumstance::Heat}},
                     LocalTime::parse("2026-03-20T08:00"));
    }

    controls::Router* router()
    {
        return engine.singletonInstance<controls::Router*>(qmlTypeId("Firstdew", 1, 0, "Router"));
    }

    QImage settled()
    {
        QImage last;
        for (int i = 0; i < 40; ++i) {
            QCoreApplication::processEvents();
            QImage now = window->grabWindow();
            if (i >= 4 && now == last)
                break;
            last = std::move(now);
        }
        return last;
    }

    static Screening answered(SetOf<ScreeningRow> yes)
    {
        Screening s;
        for (const auto row : allOf<ScreeningRow>())
            s.asked.insert(row);
        s.yes = yes;
        return s;
    }

    /// Leads a bath as far as that step, by what the pages themselves call.
    bool showBath(const QString& step)
    {
        bath.leavePractice();
        if (bath.busy())
            bath.stop();
        if (bath.page() != ui::BathPage::Choose)
            bath.leave();
        const bool shown = app::showPage(*window, "Bath");
        if (step == "as-last")
            return shown && showAsLast();
        const bool under = step.startsWith("under");
        bath.chooseSite(under ? ui::Site::Hands : step == "armpits" ? ui::Site::Armpits : ui::Site::Feet);
        bath.chooseWay(under ? ui::WayOfWorking::HandsUnder : ui::WayOfWorking::FreeHand);
        if (step.startsWith("practice"))
            return shown && showPractice(step);
        bath.goOn();
        if (step == "screening")
            return shown && bath.page() == ui::BathPage::Screening;
        if (step == "blocked") {
            store.append(answered({ScreeningRow::Pregnancy}));
            bath.answersDone();
            return bath.page() == ui::BathPage::Blocked;
        }
        if (bath.page() == ui::BathPage::Blocked)
            bath.cleared("Somebody invented");
        if (bath.page() == ui::BathPage::Screening) {
            store.append(answered({}));
            bath.answersDone();
        }
        bath.setSmallCuts(ui::SmallCuts::No);
        bath.setAntiperspirant(ui::LastAntiperspirant::No);
        bath.setShaved(ui::LastShave::No);
        if (step == "question")
            return bath.page() == ui::BathPage::Prepare;
        if (step == "line")
            return leaf(4);
        for (const auto& line : bath.preparation())
            bath.tick(line.item);
        if (step == "prepare")
            return leaf(3 + static_cast<int>(bath.preparation().size()));
        bath.start();
        if (step == "under-dry")
            return bath.page() == ui::BathPage::Run;
        bath.primary(); // the waveform is confirmed
        if (!under && step != "raise")
            bath.primary();
        if (step == "alarm")
            bath.reading(40);
        if (step == "after")
            bath.stop();
        return bath.page() == (step == "after" ? ui::BathPage::After : ui::BathPage::Run);
    }

    /// Practice for the feet, as far as that step.
    bool showPractice(const QString& step)
    {
        bath.practise();
        if (step == "practice")
            return bath.page() == ui::BathPage::PracticeStart;
        bath.beginPractice();
        if (step == "practice-list")
            return bath.page() == ui::BathPage::Run;
        for (int i = 0; i < 3; ++i)
            bath.primary();
        if (step == "practice-over") {
            bath.stop();
            return bath.page() == ui::BathPage::PracticeOver;
        }
        return bath.running().kind == ui::StepKind::Hold;
    }

    /// The card of somebody who has treated there for a while.
    bool showAsLast()
    {
        for (const char* day : {"2026-03-01", "2026-03-08", "2026-03-15"}) {
            Session s;
            s.site = Site::Armpits;
            s.waveform = Waveform::Pulsed;
            s.comfortable = Milliamps{6};
            s.comfort = Comfort::Comfortable;
            store.append(s, LocalTime::parse(std::string(day) + "T18:00"));
        }
        bath.askFor(ui::Site::Armpits);
        return bath.page() == ui::BathPage::Choose && bath.shortWay();
    }

    /// Turns to that page of the preparation.
    bool leaf(int at)
    {
        settled();
        QQuickItem* found = nullptr;
        visit(window->contentItem(), [&](QQuickItem* item) {
            if (QString::fromLatin1(item->metaObject()->className()).startsWith("BathPrepare_QML"))
                found = item;
        });
        return found != nullptr && found->setProperty("at", at);
    }

    /// The page that covers everything: asked through the app, after a wrong answer, or in a dialog of the system.
    bool showLock(const QString& step)
    {
        device.through = step != "dialog";
        context.lock.use(device);
        store.recordForAll(diary::appLockPreference(true));
        settled();
        if (step == "wrong")
            device.reply("not that");
        return context.lock.locked();
    }

    bool show(const QString& page)
    {
        if (store.lockWanted())
            store.recordForAll(diary::appLockPreference(false));
        if (page.startsWith("Lock:"))
            return showLock(page.mid(5));
        if (page.startsWith("Bath:"))
            return showBath(page.mid(5));
        return app::showPage(*window, page);
    }

    bool application = (needApplication(), true);
    QTemporaryDir folder;
    QString file;
    /// 0: the clock of sessions stands. On a busy machine seconds go by between two lines of a test.
    inline static double sessionSpeed = 1;
    /// What asks for the owner; without it the device has no lock.
    inline static ports::OwnerCheck* deviceLock = nullptr;
    app::SystemClock clock;
    viewmodels::Store store;
    viewmodels::Appearance appearance;
    HeardVoice voice;
    ports::AbsentWakeGuard wake;
    ports::AbsentHaptics haptics;
    ports::AbsentSessionNotice notice;
    ports::AbsentSharer sharer;
    ports::AbsentOpener opener;
    FakeLock device; ///< of showLock()
    viewmodels::BathModel bath{store, {voice, wake, haptics, notice}};
    FakeCamera camera;
    viewmodels::ScanModel scan{camera};
    viewmodels::SummaryModel summary{store, sharer, opener, folder.path() + "/outgoing"};
    viewmodels::AppContext context{store, appearance, bath, summary, scan};
    QQmlApplicationEngine engine;
    QQuickWindow* window = nullptr;
};

inline QStringList pages()
{
    QStringList out = app::pageNames();
    for (const char* step : {"screening", "blocked", "question", "line", "prepare", "run", "alarm", "under", "after",
                             "as-last", "practice", "practice-list", "practice-hold", "practice-over"})
        out << QString("Bath:") + step;
    for (const char* step : {"asked", "wrong", "dialog"})
        out << QString("Lock:") + step;
    return out;
}

inline QRectF onScreen(QQuickItem* item) { return item->mapRectToScene(QRectF(0, 0, item->width(), item->height())); }

inline bool isFace(QQuickItem* item) { return item->inherits("firstdew::controls::ButtonFace"); }

/// Everything speaks that language while this lives, and English afterwards.
class InLanguage {
public:
    explicit InLanguage(const QString& language)
    {
        REQUIRE(m_translator.load(":/i18n/firstdew_" + language));
        QCoreApplication::installTranslator(&m_translator);
        QLocale::setDefault(words::localeFor(language));
    }
    ~InLanguage()
    {
        QCoreApplication::removeTranslator(&m_translator);
        QLocale::setDefault(words::localeFor("en"));
    }
    Q_DISABLE_COPY_MOVE(InLanguage)

private:
    QTranslator m_translator;
};

/// An item that shows words: a text, or the face of a button.
inline bool isText(QQuickItem* item)
{
    return (item->inherits("QQuickText") || (isFace(item) && !item->property("wordless").toBool())) &&
           !item->property("text").toString().isEmpty();
}

inline bool wraps(QQuickItem* item) { return isFace(item) || item->property("wrapMode").toInt() != 0; }

/// The width that the words have.
inline double roomOf(QQuickItem* item) { return isFace(item) ? item->property("room").toDouble() : item->width(); }

inline bool isButton(QQuickItem* item) { return item->inherits("QQuickAbstractButton"); }

inline std::string nameOf(QQuickItem* item)
{
    return (item->property("text").toString() + " (" + item->metaObject()->className() + ")").toStdString();
}

} // namespace firstdew::tests
