#pragma once

#include "Store.h"

#include <QUrl>

namespace firstdew::viewmodels {

/// Files in and out: back-up, restore, import, export, care sheet; and deleting. Every call gives a map
/// {ok, code, message, input, count, path}; `message` is a sentence for the person.
class KeepModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// Where files are put, and looked for: the person's documents.
    Q_PROPERTY(QString folder READ folder CONSTANT)

public:
    explicit KeepModel(QObject* parent = nullptr) : QObject(parent) {}
    [[nodiscard]] QString folder() const;

    Q_INVOKABLE QVariantMap backUp(const QString& passphrase);
    Q_INVOKABLE QVariantMap restore(const QString& file, const QString& passphrase);
    /// The whole record as JSON, a FHIR bundle or a folder of tables (json, fhir, csv), or planned baths (ics, words by
    /// `calendarWords`: calendar, hands, feet, hand-foot, armpits, alarm).
    Q_INVOKABLE QVariantMap exportAs(const QString& format, const QVariantMap& calendarWords = {});
    Q_INVOKABLE QVariantMap importFrom(const QString& file);
    /// Reads a care sheet; the changes it would bring, [{field, before, after}].
    Q_INVOKABLE QVariantMap readSheet(const QString& file);
    Q_INVOKABLE bool acceptSheet(const QString& file);
    /// Removes the present person for good.
    Q_INVOKABLE QVariantMap forgetPerson();
    /// Removes everything for good; a new, empty record follows.
    Q_INVOKABLE QVariantMap forgetAll();
    /// Files in the folder whose names end so, newest first: [{name, path}].
    Q_INVOKABLE QVariantList filesEnding(const QString& ending) const;

private:
    QVariantMap writtenTables() const;
    QVariantMap written(const QString& ending, const std::string& content) const;
};

} // namespace firstdew::viewmodels
