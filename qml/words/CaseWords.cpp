#include "words/CaseWords.h"

#include "words/Errors.h"
#include "words/Names.h"

#include <QCoreApplication>

namespace firstdew::words {

namespace {

/// Marks and translates in one; the tool that gathers texts reads the class name here.
struct CaseText {
    Q_DECLARE_TR_FUNCTIONS(CaseText)
};

} // namespace

QString callWhy(const exchange::CallWhy& why, facts::LocalDate today)
{
    using exchange::CallReason;
    const QString since = dayAndMonth(why.since, today);
    const QString site = why.site ? siteName(*why.site) : QString();
    switch (why.kind) {
    case CallReason::SkinEvent: return CaseText::tr("%1: blister or burn since %2").arg(site, since);
    case CallReason::HealthAnswer: return CaseText::tr("%1: a health answer stops sessions since %2").arg(site, since);
    case CallReason::StoppedInCourse: return CaseText::tr("%1: stopped in the first course on %2").arg(site, since);
    case CallReason::NoResponse: return CaseText::tr("%1: the course did not help, last session %2").arg(site, since);
    case CallReason::Overdue: return CaseText::tr("%1: top-up overdue since %2").arg(site, since);
    case CallReason::Shorter: return CaseText::tr("%1: dry spells shorter since about %2").arg(site, since);
    case CallReason::Silent: return CaseText::tr("Silent since %1").arg(since);
    case CallReason::DoingWell: return CaseText::tr("Doing well, last entry %1").arg(since);
    }
    return {};
}

QString unreadWhy(const facts::Error& error)
{
    if (error.code == "not-a-record")
        return CaseText::tr(
            "This is another kind of file, or a back-up. Type the passphrase below if it is a back-up.");
    if (error.code == "passphrase-wrong")
        return CaseText::tr("The passphrase does not open it. Ask its owner for the right one.");
    if (error.code == "folder-unreadable")
        return CaseText::tr("This folder cannot be read now. Look whether it is still there, or choose another one.");
    if (error.code == "folder-too-full")
        return CaseText::tr("This folder holds too many files. Put the records into a folder of their own.");
    if (error.code == "store-damaged" || error.code == "fact-damaged" || error.code == "back-up-damaged")
        return CaseText::tr("It is damaged, or came over in part. Ask its owner to send it again.");
    return errorSentence(error);
}

} // namespace firstdew::words
