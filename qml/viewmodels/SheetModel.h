#pragma once

#include "Enums.h"
#include "KeepValues.h"
#include "Outgoing.h"
#include "PageSource.h"
#include "SheetValues.h"
#include "Store.h"
// The meta-object compiler of Qt 6.4 cannot read the standard library's concepts.
#ifndef Q_MOC_RUN
#include "facts/Payloads.h"
#include "print/Handout.h"
#include "protocol/SheetEffect.h"
#endif

#include <string>
#include <vector>

namespace firstdew::viewmodels {

class CaseloadModel;

/// A care sheet while it is filled in, by taps but for names. Its page is the hand-out. Whatever is wrong with it is
/// what reading it would refuse.
class SheetModel : public firstdew::viewmodels::PageSource {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// Whom it is for: on the hand-out, not in the sheet.
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed)
    Q_PROPERTY(firstdew::ui::AgeGroup::Value age READ age WRITE setAge NOTIFY changed)
    Q_PROPERTY(QList<firstdew::ui::Site::Value> sites READ sites WRITE setSites NOTIFY changed)
    /// A value of Waveform or CourseTemplate; -1 where the sheet leaves it open.
    Q_PROPERTY(int waveform READ waveform WRITE setWaveform NOTIFY changed)
    Q_PROPERTY(int plan READ plan WRITE setPlan NOTIFY changed)
    /// The days of a prescribed course, and the last day that is offered.
    Q_PROPERTY(QList<int> days READ days NOTIFY changed)
    Q_PROPERTY(int lastDay READ lastDay NOTIFY changed)
    /// Days since 1970-01-01; 0: none.
    Q_PROPERTY(int given READ given NOTIFY changed)
    Q_PROPERTY(int start READ start WRITE setStart NOTIFY changed)
    Q_PROPERTY(int review READ review WRITE setReview NOTIFY changed)
    Q_PROPERTY(firstdew::ui::SheetLine who READ who NOTIFY changed)
    Q_PROPERTY(firstdew::ui::SheetLine contact READ contact NOTIFY changed)
    Q_PROPERTY(firstdew::ui::SheetLine notes READ notes NOTIFY changed)
    Q_PROPERTY(firstdew::ui::SheetLine atNoResponse READ atNoResponse NOTIFY changed)
    Q_PROPERTY(firstdew::ui::SheetLine direct READ direct NOTIFY changed)
    Q_PROPERTY(firstdew::ui::SheetLine pulsed READ pulsed NOTIFY changed)
    /// The level agreed to begin with at home, in the sheet's waveform.
    Q_PROPERTY(firstdew::ui::SheetLine level READ level NOTIFY changed)
    Q_PROPERTY(firstdew::ui::SheetLine pad READ pad NOTIFY changed)
    Q_PROPERTY(firstdew::ui::SheetLine raise READ raise NOTIFY changed)
    Q_PROPERTY(firstdew::ui::SheetLine lower READ lower NOTIFY changed)
    Q_PROPERTY(firstdew::ui::SheetLine swapping READ swapping NOTIFY changed)
    Q_PROPERTY(QString sitesProblem READ sitesProblem NOTIFY changed)
    Q_PROPERTY(QString waveformProblem READ waveformProblem NOTIFY changed)
    Q_PROPERTY(QString daysProblem READ daysProblem NOTIFY changed)
    Q_PROPERTY(QString reviewProblem READ reviewProblem NOTIFY changed)
    /// How long each session is, a line for each of the sites.
    Q_PROPERTY(QStringList phases READ phases NOTIFY changed)
    /// Nothing is wrong with it.
    Q_PROPERTY(bool ready READ ready NOTIFY changed)
    /// The text of its QR code; empty where it is not ready.
    Q_PROPERTY(QString code READ code NOTIFY changed)

public:
    SheetModel(Store& store, const CaseloadModel& caseload, const Outgoing& outgoing);
    static SheetModel* create(QQmlEngine*, QJSEngine*);

    [[nodiscard]] QString name() const { return text(m_name); }
    void setName(const QString& name);
    [[nodiscard]] ui::AgeGroup::Value age() const;
    void setAge(ui::AgeGroup::Value age);
    [[nodiscard]] QList<ui::Site::Value> sites() const;
    void setSites(const QList<ui::Site::Value>& sites);
    [[nodiscard]] int waveform() const;
    void setWaveform(int waveform);
    [[nodiscard]] int plan() const;
    void setPlan(int plan);
    [[nodiscard]] QList<int> days() const;
    [[nodiscard]] int lastDay() const { return m_lastDay; }
    [[nodiscard]] int given() const { return m_sheet.given.daysSince1970(); }
    [[nodiscard]] int start() const { return m_start ? m_start->daysSince1970() : 0; }
    void setStart(int day);
    [[nodiscard]] int review() const { return m_sheet.review ? m_sheet.review->daysSince1970() : 0; }
    void setReview(int day);
    [[nodiscard]] ui::SheetLine who() const;
    [[nodiscard]] ui::SheetLine contact() const;
    [[nodiscard]] ui::SheetLine notes() const;
    [[nodiscard]] ui::SheetLine atNoResponse() const;
    [[nodiscard]] ui::SheetLine direct() const;
    [[nodiscard]] ui::SheetLine pulsed() const;
    [[nodiscard]] ui::SheetLine level() const;
    [[nodiscard]] ui::SheetLine pad() const;
    [[nodiscard]] ui::SheetLine raise() const;
    [[nodiscard]] ui::SheetLine lower() const;
    [[nodiscard]] ui::SheetLine swapping() const;
    [[nodiscard]] QString sitesProblem() const { return problemOf(protocol::SheetField::Sites); }
    [[nodiscard]] QString waveformProblem() const { return problemOf(protocol::SheetField::Waveform); }
    [[nodiscard]] QString daysProblem() const { return problemOf(protocol::SheetField::Days); }
    [[nodiscard]] QString reviewProblem() const { return problemOf(protocol::SheetField::Review); }
    [[nodiscard]] QStringList phases() const;
    [[nodiscard]] bool ready() const;
    [[nodiscard]] QString code() const;
    [[nodiscard]] const facts::CareSheet& sheet() const { return m_sheet; }
    [[nodiscard]] QImage page(int width) const override;

    /// A new sheet, signed as the last one.
    Q_INVOKABLE void begin();
    /// The same for the person whose page the caseload shows: as the sheet in force there, given anew.
    Q_INVOKABLE void beginForShown();
    Q_INVOKABLE void setWho(const QString& who);
    Q_INVOKABLE void setContact(const QString& contact);
    Q_INVOKABLE void setNotes(const QString& notes);
    Q_INVOKABLE void setAtNoResponse(const QString& words);
    /// Puts a day of the prescribed course in, or takes it out; day 1 stays.
    Q_INVOKABLE void toggleDay(int day);
    /// Offers another week of days.
    Q_INVOKABLE void moreDays();
    /// One step up or down. What reaches its usual value is left open.
    Q_INVOKABLE void stepDirect(int by);
    Q_INVOKABLE void stepPulsed(int by);
    Q_INVOKABLE void stepLevel(int by);
    Q_INVOKABLE void stepPad(int by);
    Q_INVOKABLE void stepRaise(int by);
    Q_INVOKABLE void stepLower(int by);
    Q_INVOKABLE void stepSwapping(int by);
    /// Makes the sheet for the app of the person, or the page for their wall, and hands it over or asks where to save
    /// it; `went` tells what became of it.
    Q_INVOKABLE void shareSheet();
    Q_INVOKABLE void saveSheet();
    Q_INVOKABLE void shareHandout();
    Q_INVOKABLE void saveHandout();

signals:
    void went(const firstdew::ui::FileResult& result);

private:
    [[nodiscard]] facts::Result<QString> madeSheet();
    [[nodiscard]] facts::Result<QString> madeHandout();
    [[nodiscard]] Outgoing::Told teller();
    void share(const facts::Result<QString>& file);
    void save(const facts::Result<QString>& file);
    [[nodiscard]] QString problemOf(protocol::SheetField field) const;
    [[nodiscard]] ui::SheetLine lineOf(const QString& shown, protocol::SheetField field) const;
    [[nodiscard]] ui::SheetLine limitLine(facts::Waveform waveform, const std::optional<facts::Milliamps>& set,
                                          protocol::SheetField field) const;
    [[nodiscard]] ui::SheetLine timeLine(const std::optional<facts::Seconds>& set, facts::Seconds usual,
                                         protocol::SheetField field) const;
    void stepLimit(std::optional<facts::Milliamps>& limit, facts::Waveform waveform, int by);
    void lowerLevel();
    void stepTime(std::optional<facts::Seconds>& time, facts::Seconds usual, int by);
    void set(const facts::CareSheet& sheet);
    void remember();
    [[nodiscard]] print::HandoutContents contents() const { return {m_sheet, m_age, m_name, m_start}; }

    Store& m_store;
    const CaseloadModel& m_caseload;
    const Outgoing& m_outgoing;
    facts::CareSheet m_sheet;
    facts::AgeGroup m_age = facts::AgeGroup::Adult;
    std::string m_name;
    std::optional<facts::LocalDate> m_start;
    int m_lastDay = 28;
};

} // namespace firstdew::viewmodels
