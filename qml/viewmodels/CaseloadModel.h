#pragma once

#include "CaseValues.h"
#include "Enums.h"
#include "Outgoing.h"
#include "PageSource.h"
#include "Store.h"
// The meta-object compiler of Qt 6.4 cannot read the standard library's concepts.
#ifndef Q_MOC_RUN
#include "exchange/Caseload.h"
#include "ports/FileChooser.h"
#endif

#include <memory>
#include <string>
#include <thread>
#include <vector>

namespace firstdew::viewmodels {

/// The people whom the person teaches, from the files that they sent. Files are read by a thread of their own; nothing
/// is written into them, and nothing of them into the record here. The page of this is the summary of the one shown.
class CaseloadModel : public firstdew::viewmodels::PageSource {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// The person teaches others.
    Q_PROPERTY(bool teaches READ teaches WRITE setTeaches NOTIFY teachingChanged)
    /// The folder of the records; empty: none chosen.
    Q_PROPERTY(QString folder READ folder NOTIFY teachingChanged)
    Q_PROPERTY(bool canChoose READ canChoose NOTIFY read)
    Q_PROPERTY(bool canChooseFolder READ canChooseFolder NOTIFY read)
    /// Files are being read: so many of so many.
    Q_PROPERTY(bool reading READ reading NOTIFY progress)
    Q_PROPERTY(int filesRead READ filesRead NOTIFY progress)
    Q_PROPERTY(int filesAll READ filesAll NOTIFY progress)
    /// Who needs a call first.
    Q_PROPERTY(QList<firstdew::ui::CaseLine> people READ people NOTIFY read)
    Q_PROPERTY(int calls READ calls NOTIFY read)
    Q_PROPERTY(QList<firstdew::ui::UnreadFile> unread READ unread NOTIFY read)
    /// Some files may open with a passphrase that has not been given.
    Q_PROPERTY(bool locked READ locked NOTIFY read)
    /// Why the folder could not be read, in a sentence.
    Q_PROPERTY(QString trouble READ trouble NOTIFY read)
    /// Whose page is shown; an empty one where nobody's is.
    Q_PROPERTY(firstdew::ui::CaseLine shown READ shown NOTIFY changed)

public:
    CaseloadModel(Store& store, Outgoing& outgoing);
    ~CaseloadModel() override;
    static CaseloadModel* create(QQmlEngine*, QJSEngine*);
    /// The system's chooser, which outlives this. Without it files come from `documents`.
    void useChooser(ports::FileChooser& chooser);

    [[nodiscard]] bool teaches() const;
    void setTeaches(bool teaches);
    [[nodiscard]] QString folder() const;
    [[nodiscard]] bool canChoose() const { return m_chooser != nullptr; }
    [[nodiscard]] bool canChooseFolder() const { return m_chooser != nullptr && m_foldersChosen; }
    [[nodiscard]] bool reading() const { return m_reading; }
    [[nodiscard]] int filesRead() const { return m_filesRead; }
    [[nodiscard]] int filesAll() const { return m_filesAll; }
    [[nodiscard]] QList<ui::CaseLine> people() const;
    [[nodiscard]] int calls() const;
    [[nodiscard]] QList<ui::UnreadFile> unread() const;
    [[nodiscard]] bool locked() const { return m_locked; }
    [[nodiscard]] QString trouble() const { return m_trouble; }
    [[nodiscard]] ui::CaseLine shown() const;
    [[nodiscard]] QImage page(int width) const override;

    Q_INVOKABLE void chooseFolder(const QString& title);
    Q_INVOKABLE void chooseFile(const QString& title);
    /// Takes the records of that folder, and remembers it.
    Q_INVOKABLE void useFolder(const QString& folder);
    /// Takes the person's documents, where the system has no chooser.
    Q_INVOKABLE void useDocuments();
    /// Reads the folder where nothing was read yet.
    Q_INVOKABLE void open();
    /// Reads everything again.
    Q_INVOKABLE void readAgain();
    /// Tries that passphrase too on what is locked. It is forgotten when the program ends.
    Q_INVOKABLE void unlock(const QString& passphrase);
    /// Shows that person's page; an empty id: nobody's.
    Q_INVOKABLE void show(const QString& id);
    /// Makes the summary of the one shown as a PDF and hands it over; `summaryWent` tells what became of it.
    Q_INVOKABLE void shareSummary();

    /// The record and the case of the one shown, for a care sheet; null where nobody is.
    [[nodiscard]] const exchange::Case* shownCase() const;
    [[nodiscard]] const std::vector<facts::Fact>* shownFacts() const;

signals:
    void teachingChanged();
    void progress();
    void read();
    void summaryWent(const firstdew::ui::FileResult& result);

private:
    struct Found;
    struct Job;
    void start(std::vector<std::string> files);
    void take(const std::shared_ptr<const Found>& found);
    void stop();
    [[nodiscard]] facts::LocalDate today() const { return m_store.situation().today; }

    Store& m_store;
    Outgoing& m_outgoing;
    ports::FileChooser* m_chooser = nullptr;
    bool m_foldersChosen = true;
    std::vector<std::string> m_files; ///< chosen one by one
    std::vector<std::string> m_passphrases;
    std::shared_ptr<const Found> m_found;
    std::shared_ptr<Job> m_job;
    std::thread m_reader;
    bool m_reading = false;
    int m_filesRead = 0;
    int m_filesAll = 0;
    bool m_everRead = false;
    bool m_locked = false;
    QString m_trouble;
    std::string m_shown;
};

} // namespace firstdew::viewmodels
