#pragma once

#include "KeepValues.h"
#include "Outgoing.h"
#include "PageSource.h"
#include "Store.h"
#include "ports/Opener.h"
#include "ports/Sharer.h"
#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "summary/Contents.h"
#endif

namespace firstdew::viewmodels {

/// The prescriber's page: made and handed over in one tap.
class SummaryModel : public firstdew::viewmodels::PageSource {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// What became of the last page; empty before the first.
    Q_PROPERTY(QString message READ message NOTIFY messageChanged)
    Q_PROPERTY(QString file READ file NOTIFY messageChanged)
    /// How many days back the page reaches, remembered.
    Q_PROPERTY(int days READ days WRITE setDays NOTIFY changed)
    /// Questions that stand on the page.
    Q_PROPERTY(QList<firstdew::ui::QuestionLine> questions READ questions NOTIFY changed)

public:
    /// `folder` is the app's own, for the last page made.
    SummaryModel(Store& store, ports::Sharer& sharer, ports::Opener& opener, QString folder);
    /// Where files wait that leave the app.
    [[nodiscard]] Outgoing& outgoing() { return m_outgoing; }
    /// Removes the last page made.
    void dropCopy();
    static SummaryModel* create(QQmlEngine*, QJSEngine*);

    [[nodiscard]] QString message() const { return m_message; }
    [[nodiscard]] QString file() const { return m_file; }
    [[nodiscard]] int days() const;
    void setDays(int days);
    [[nodiscard]] QList<ui::QuestionLine> questions() const;
    /// The first page as it would be made now, in pixels of that width.
    [[nodiscard]] QImage page(int width) const override;
    /// Makes the page and hands it to the system. If no program takes it, asks where to save it.
    Q_INVOKABLE void share();
    /// Makes the page and asks where to save it.
    Q_INVOKABLE void save();
    /// Hands a file made elsewhere to the system; whether it took it.
    Q_INVOKABLE bool handOver(const QString& file);
    /// Shows a file or a folder in the person's own program for it; false where it is not there or nothing shows it.
    Q_INVOKABLE bool open(const QString& path);
    /// Keeps a question for the prescriber; it goes onto the page.
    Q_INVOKABLE void ask(const QString& question);
    Q_INVOKABLE void takeBack(const QString& id);

signals:
    void messageChanged();

private:
    [[nodiscard]] summary::Contents contents() const;
    bool make();
    void say(const QString& message);

    Store& m_store;
    ports::Opener& m_opener;
    Outgoing m_outgoing;
    QString m_message;
    QString m_file;
};

} // namespace firstdew::viewmodels
