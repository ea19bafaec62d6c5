#pragma once

#include "Enums.h"
#include "Store.h"
#include "TaughtValues.h"

namespace firstdew::viewmodels {

/// Sessions that somebody watched and taught.
class TaughtModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// All of them, the latest first.
    Q_PROPERTY(QList<firstdew::ui::TaughtLine> taught READ taught NOTIFY changed)
    /// What has one, a site after the other, in a few words; empty where nothing has.
    Q_PROPERTY(QString inShort READ inShort NOTIFY changed)
    /// After a session there it is asked whether somebody taught it.
    Q_PROPERTY(QList<firstdew::ui::Site::Value> offered READ offered NOTIFY changed)
    /// What can be ticked.
    Q_PROPERTY(QList<firstdew::ui::TaughtTick::Value> ticks READ ticks CONSTANT)
    /// Why the last one was not recorded; empty where it was.
    Q_PROPERTY(QString refusal READ refusal NOTIFY refusalChanged)

public:
    explicit TaughtModel(Store& store);
    static TaughtModel* create(QQmlEngine*, QJSEngine*);

    [[nodiscard]] QList<ui::TaughtLine> taught() const;
    [[nodiscard]] QString inShort() const;
    [[nodiscard]] QList<ui::Site::Value> offered() const;
    [[nodiscard]] QList<ui::TaughtTick::Value> ticks() const;
    [[nodiscard]] QString refusal() const { return m_refusal; }
    Q_INVOKABLE QString tickName(firstdew::ui::TaughtTick::Value tick, firstdew::ui::Site::Value site) const;
    /// The kinds of current that are open at that site.
    Q_INVOKABLE QList<firstdew::ui::Waveform::Value> waveforms(firstdew::ui::Site::Value site) const;
    /// mA; 0 where that current is not open there.
    Q_INVOKABLE qreal limit(firstdew::ui::Site::Value site, firstdew::ui::Waveform::Value waveform) const;
    /// mA to begin with where a level is to be agreed.
    Q_INVOKABLE qreal usualLevel(firstdew::ui::Site::Value site, firstdew::ui::Waveform::Value waveform) const;
    /// A level of 0 was not agreed. False where it was refused; refusal says why.
    Q_INVOKABLE bool add(firstdew::ui::Site::Value site, int day, const QString& who,
                         const QList<firstdew::ui::TaughtTick::Value>& ticks, firstdew::ui::Waveform::Value waveform,
                         double level);
    /// What was refused is being changed.
    Q_INVOKABLE void forgetRefusal() { refuse({}); }

signals:
    void changed();
    void refusalChanged();

private:
    void refuse(const QString& why);

    Store& m_store;
    QString m_refusal;
};

} // namespace firstdew::viewmodels
