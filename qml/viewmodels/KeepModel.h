#pragma once

#include "Store.h"
#include "Values.h"

namespace firstdew::viewmodels {

/// Files in and out: back-up, restore, import, export, care sheet; and deleting.
class KeepModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// Where files are put, and looked for: the person's documents.
    Q_PROPERTY(QString folder READ folder CONSTANT)

public:
    explicit KeepModel(Store& store) : m_store(store) {}
    static KeepModel* create(QQmlEngine*, QJSEngine*);
    [[nodiscard]] QString folder() const;

    Q_INVOKABLE firstdew::ui::FileResult backUp(const QString& passphrase);
    Q_INVOKABLE firstdew::ui::FileResult restore(const QString& file, const QString& passphrase);
    /// The whole record as JSON, a folder of tables or a FHIR bundle.
    Q_INVOKABLE firstdew::ui::FileResult exportAs(firstdew::ui::ExportFormat::Value format);
    /// Planned sessions for a calendar; its name, and what an alarm says, come from the page.
    Q_INVOKABLE firstdew::ui::FileResult exportCalendar(const QString& name, const QString& alarm);
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
    /// Files in the folder whose names end in one of these, parted by spaces; newest first.
    Q_INVOKABLE QList<firstdew::ui::FoundFile> filesEnding(const QString& ending) const;

private:
    [[nodiscard]] facts::Result<facts::CareSheet> sheetIn(const QString& file) const;
    [[nodiscard]] facts::Result<facts::CareSheet> sheetFrom(const std::string& source, std::string_view text) const;
    [[nodiscard]] ui::SheetRead told(const facts::Result<facts::CareSheet>& sheet) const;
    bool accept(const facts::Result<facts::CareSheet>& sheet, bool loosen);
    [[nodiscard]] ui::FileResult writtenTables() const;
    [[nodiscard]] ui::FileResult written(const QString& ending, const std::string& content) const;

    Store& m_store;
};

} // namespace firstdew::viewmodels
