#pragma once

#include "Enums.h"

#include <QString>

namespace firstdew::ui {

/// What a record holds, in numbers to compare on two phones.
class RecordTally {
    Q_GADGET
    QML_VALUE_TYPE(recordTally)
    Q_PROPERTY(int people MEMBER people FINAL)
    Q_PROPERTY(int checkIns MEMBER checkIns FINAL)
    Q_PROPERTY(int sessions MEMBER sessions FINAL)
    Q_PROPERTY(int last MEMBER last FINAL)

public:
    int people = 0;
    int checkIns = 0;
    int sessions = 0;
    int last = 0; ///< day of the latest of these; 0: none
    bool operator==(const RecordTally&) const = default;
};

/// A back-up that was looked into, or taken over.
class BackUpRead {
    Q_GADGET
    QML_VALUE_TYPE(backUpRead)
    Q_PROPERTY(bool tried MEMBER tried FINAL)
    Q_PROPERTY(bool ok MEMBER ok FINAL)
    Q_PROPERTY(QString message MEMBER message FINAL)
    Q_PROPERTY(firstdew::ui::RecordTally tally MEMBER tally FINAL)
    Q_PROPERTY(QString kept MEMBER kept FINAL)

public:
    bool tried = false;
    bool ok = false;
    QString message; ///< why not, in a sentence
    RecordTally tally;
    QString kept; ///< where the record lies that was here before; empty where there was none
    bool operator==(const BackUpRead&) const = default;
};

/// What became of a file.
class FileResult {
    Q_GADGET
    QML_VALUE_TYPE(fileResult)
    Q_PROPERTY(bool tried MEMBER tried FINAL)
    Q_PROPERTY(bool ok MEMBER ok FINAL)
    Q_PROPERTY(QString message MEMBER message FINAL)
    Q_PROPERTY(QString where MEMBER where FINAL)
    Q_PROPERTY(QString path MEMBER path FINAL)
    Q_PROPERTY(bool otherPerson MEMBER otherPerson FINAL)

public:
    bool tried = false;
    bool ok = false;
    QString message;          ///< why not, in a sentence
    QString where;            ///< the place as the person knows it
    QString path;             ///< the file that can be handed on; empty where there is none
    bool otherPerson = false; ///< refused because it may be about somebody else, who may be added as a new person
    bool operator==(const FileResult&) const = default;
};

/// A field that a new care sheet changes.
class SheetChange {
    Q_GADGET
    QML_VALUE_TYPE(sheetChange)
    Q_PROPERTY(QString text MEMBER text FINAL)
    Q_PROPERTY(bool loosens MEMBER loosens FINAL)

public:
    QString text; ///< field, new value, present value
    bool loosens = false;
    bool operator==(const SheetChange&) const = default;
};

/// What a new care sheet changes at the sites that share one today.
class SheetEffect {
    Q_GADGET
    QML_VALUE_TYPE(sheetEffect)
    Q_PROPERTY(QString sites MEMBER sites FINAL)
    Q_PROPERTY(QList<firstdew::ui::SheetChange> changes MEMBER changes FINAL)

public:
    QString sites;
    QList<SheetChange> changes;
    bool operator==(const SheetEffect&) const = default;
};

/// A care sheet as read from a file.
class SheetRead {
    Q_GADGET
    QML_VALUE_TYPE(sheetRead)
    Q_PROPERTY(bool tried MEMBER tried FINAL)
    Q_PROPERTY(bool ok MEMBER ok FINAL)
    Q_PROPERTY(QString message MEMBER message FINAL)
    Q_PROPERTY(bool loosens MEMBER loosens FINAL)
    Q_PROPERTY(QList<firstdew::ui::SheetEffect> effects MEMBER effects FINAL)
    Q_PROPERTY(QStringList courses MEMBER courses FINAL)

public:
    bool tried = false;
    bool ok = false;
    QString message;      ///< why not, in a sentence
    bool loosens = false; ///< it allows more than today; accepting it takes a word of its own
    QList<SheetEffect> effects;
    QStringList courses; ///< that begin or go on when it is accepted, a sentence each
    bool operator==(const SheetRead&) const = default;
};

/// A file that may be chosen.
class FoundFile {
    Q_GADGET
    QML_VALUE_TYPE(foundFile)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QString path MEMBER path FINAL)

public:
    QString name;
    QString path;
    bool operator==(const FoundFile&) const = default;
};

/// A question for the prescriber.
class QuestionLine {
    Q_GADGET
    QML_VALUE_TYPE(questionLine)
    Q_PROPERTY(QString id MEMBER id FINAL)
    Q_PROPERTY(QString text MEMBER text FINAL)

public:
    QString id;
    QString text;
    bool operator==(const QuestionLine&) const = default;
};

} // namespace firstdew::ui
