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

} // namespace firstdew::ui
