#pragma once

#include "KeepValues.h"
#include "Store.h"
#ifndef Q_MOC_RUN
#include "ports/FileChooser.h"
#endif

namespace firstdew::viewmodels {

/// Files in and out: back-up, restore, import, export, care sheet; and deleting.
class KeepModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// Where files are put and looked for if the system has no chooser: the person's documents.
    Q_PROPERTY(QString folder READ folder CONSTANT)
    /// Whether the system has a chooser of its own.
    Q_PROPERTY(bool canChoose READ canChoose NOTIFY canChooseChanged)

public:
    explicit KeepModel(Store& store) : m_store(store) {}
    /// The system's chooser, which outlives this. Without it there is none.
    void useChooser(ports::FileChooser& chooser);
    [[nodiscard]] bool canChoose() const { return m_chooser != nullptr; }
    static KeepModel* create(QQmlEngine*, QJSEngine*);
    [[nodiscard]] QString folder() const;

    /// These make a file and ask where to put it; saved() tells what became of it. A back-up, encrypted:
    Q_INVOKABLE void backUp(const QString& passphrase);
    /// The whole record as JSON, tables or a FHIR bundle.
    Q_INVOKABLE void exportAs(firstdew::ui::ExportFormat::Value format);
    /// Planned sessions for a calendar; its name, and what an alarm says, come from the page.
    Q_INVOKABLE void exportCalendar(const QString& name, const QString& alarm);
    /// Whether a back-up may have that passphrase.
    Q_INVOKABLE static bool longEnough(const QString& passphrase);
    Q_INVOKABLE firstdew::ui::FileResult restore(const QString& file, const QString& passphrase);
    /// Somebody who may be another than the person recorded is refused, or with `asNewPerson` added as a new person.
    Q_INVOKABLE firstdew::ui::FileResult importFrom(const QString& file, bool asNewPerson);
    /// Reads a care sheet, and tells the changes that it would bring.
    Q_INVOKABLE firstdew::ui::SheetRead readSheet(const QString& file);
    /// Refused where the sheet allows more than today and `loosen` does not say that this is wanted.
    Q_INVOKABLE bool acceptSheet(const QString& file, bool loosen);
    /// The same for the text of a code that the camera read.
    Q_INVOKABLE firstdew::ui::SheetRead readScanned(const QString& text);
    Q_INVOKABLE bool acceptScanned(const QString& text, bool loosen);
    /// Removes the present person for good.
    Q_INVOKABLE firstdew::ui::FileResult forgetPerson();
    /// Removes everything for good; a new, empty record follows.
    Q_INVOKABLE firstdew::ui::FileResult forgetAll();
    /// Makes a damaged record usable again, with what can still be read of it.
    Q_INVOKABLE firstdew::ui::FileResult repair();
    /// Asks for a file that ends so. fileChosen() tells the answer with the number returned; 0: the system cannot ask.
    Q_INVOKABLE int chooseFile(const QString& title, const QString& ending);
    /// What the record on this phone holds.
    Q_INVOKABLE firstdew::ui::RecordTally tally() const;
    /// Opens a back-up and tells what it holds; nothing changes.
    Q_INVOKABLE firstdew::ui::BackUpRead lookInto(const QString& file, const QString& passphrase) const;
    /// Puts the back-up in the place of what is here, reads it again from there and compares: ok means that every entry
    /// of the back-up is here.
    Q_INVOKABLE firstdew::ui::BackUpRead takeOver(const QString& file, const QString& passphrase);
    /// Files in the folder whose names end in one of these, parted by spaces; newest first.
    Q_INVOKABLE QList<firstdew::ui::FoundFile> filesEnding(const QString& ending) const;

    using Told = std::function<void(const ui::FileResult&)>;
    /// Asks where to put a copy of that file. A result that was not tried: the person chose no place.
    void saveCopy(const QString& file, Told told);

signals:
    void canChooseChanged();
    /// What became of the last file made; not tried: the person chose no place.
    void saved(const firstdew::ui::FileResult& result);
    /// Entries were removed for good: no copy of them may stay.
    void forgotten();
    /// The person chose that file; empty: none.
    void fileChosen(int request, const QString& path);

private:
    [[nodiscard]] facts::Result<facts::CareSheet> sheetIn(const QString& file) const;
    [[nodiscard]] facts::Result<facts::CareSheet> sheetFrom(const std::string& source, std::string_view text) const;
    [[nodiscard]] ui::SheetRead told(const facts::Result<facts::CareSheet>& sheet) const;
    bool accept(const facts::Result<facts::CareSheet>& sheet, bool loosen);
    [[nodiscard]] std::string fileName(const QString& ending) const;
    void save(std::vector<ports::OutFile> files, Told told);
    void dropCopies();
    void keepLock(bool on);
    void saveAndTell(std::vector<ports::OutFile> files);
    [[nodiscard]] ui::FileResult written(const std::vector<ports::OutFile>& files) const;

    Store& m_store;
    ports::FileChooser* m_chooser = nullptr;
    int m_requests = 0;
};

} // namespace firstdew::viewmodels
