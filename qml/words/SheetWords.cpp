#include "words/SheetWords.h"

#include "exchange/CareSheetFile.h"
#include "protocol/Course.h"
#include "protocol/Limits.h"
#include "protocol/Script.h"
#include "words/Names.h"

#include <QCoreApplication>
#include <algorithm>

namespace firstdew::words {

namespace {

using namespace facts;
using protocol::SheetField;

/// Marks and translates in one; the tool that gathers texts reads the class name here.
struct SheetText {
    Q_DECLARE_TR_FUNCTIONS(SheetText)
};

QString fieldName(SheetField field)
{
    switch (field) {
    case SheetField::Who: return SheetText::tr("From");
    case SheetField::Given: return SheetText::tr("Given on");
    case SheetField::Sites: return SheetText::tr("For");
    case SheetField::Plan: return SheetText::tr("Course");
    case SheetField::Days: return SheetText::tr("Session days");
    case SheetField::Waveform: return SheetText::tr("Current");
    case SheetField::DirectLimit: return SheetText::tr("Limit, direct");
    case SheetField::PulsedLimit: return SheetText::tr("Limit, pulsed");
    case SheetField::Raise: return SheetText::tr("Time to turn up");
    case SheetField::Lower: return SheetText::tr("Time to turn down");
    case SheetField::Swapping: return SheetText::tr("Time to swap");
    case SheetField::Review: return SheetText::tr("Review");
    case SheetField::Notes: return SheetText::tr("Notes");
    case SheetField::Pad: return SheetText::tr("Armpit pads");
    case SheetField::AtNoResponse: return SheetText::tr("If the course does not help");
    case SheetField::Level: return SheetText::tr("Level to begin with");
    case SheetField::Contact: return SheetText::tr("Whom to call");
    }
    return {};
}

QString days(const std::vector<int>& list)
{
    QStringList out;
    for (const int day : list)
        out << QString::number(day);
    return listed(out);
}

QString secondsIn(const std::optional<Seconds>& length) { return length ? seconds(*length) : QString(); }

QString limit(const std::optional<Milliamps>& at) { return at ? milliamps(at->mA) : QString(); }

/// Empty where the sheet leaves the field open.
QString valueOf(SheetField field, const CareSheet& s)
{
    switch (field) {
    case SheetField::Who: return giverName(s.who);
    case SheetField::Given: return dayOfYear(s.given);
    case SheetField::Sites: {
        std::vector<Site> sites;
        for (const Site site : allOf<Site>())
            if (s.sites.contains(site))
                sites.push_back(site);
        return siteNames(sites);
    }
    case SheetField::Plan: return s.plan ? templateName(*s.plan) : QString();
    case SheetField::Days: return days(s.days);
    case SheetField::Waveform: return s.waveform ? waveformName(*s.waveform) : QString();
    case SheetField::DirectLimit: return limit(s.directLimit);
    case SheetField::PulsedLimit: return limit(s.pulsedLimit);
    case SheetField::Raise: return secondsIn(s.raise);
    case SheetField::Lower: return secondsIn(s.lower);
    case SheetField::Swapping: return secondsIn(s.swapping);
    case SheetField::Review: return s.review ? dayOfYear(*s.review) : QString();
    case SheetField::Notes: return s.notes.empty() ? QString() : asWritten(s.notes);
    case SheetField::Pad: return s.pad ? squareCentimetres(*s.pad) : QString();
    case SheetField::AtNoResponse: return s.atNoResponse.empty() ? QString() : asWritten(s.atNoResponse);
    case SheetField::Level: return limit(s.level);
    case SheetField::Contact: return s.contact ? asWritten(*s.contact) : QString();
    }
    return {};
}

} // namespace

QString seconds(Seconds length) { return SheetText::tr("%n second(s)", nullptr, length.s); }
QString squareCentimetres(SquareCentimetres area)
{
    return SheetText::tr("%1 each").arg(quantity(area.cm2, Unit::SquareCentimetres));
}
QString asUsual(const QString& value) { return SheetText::tr("As usual: %1").arg(value); }
QString leftOpen() { return SheetText::tr("Left open"); }

QString phasesOf(Site site)
{
    const auto plan = protocol::phasesFor(site);
    return SheetText::tr("%1: %2 times %n minute(s)", nullptr, plan.hold.s / 60).arg(siteName(site)).arg(plan.phases);
}

QString sheetProblem(SheetField field, const CareSheet& sheet, AgeGroup age)
{
    const auto problems = exchange::careSheetProblems(sheet, age);
    if (std::ranges::none_of(problems, [&](const Error& e) { return e.input == token(field); }))
        return {};
    const auto tooHigh = [&](Waveform waveform) {
        const auto usual = protocol::limitFor({Site::Hands, waveform, age, {}, {}, {}}).limit;
        return SheetText::tr("Too high: %1 is the usual limit. Lower it.").arg(milliamps(usual.mA));
    };
    switch (field) {
    case SheetField::Who: return SheetText::tr("Type your name, on one short line.");
    case SheetField::Sites: return SheetText::tr("Choose where to treat.");
    case SheetField::Waveform: return SheetText::tr("Armpits need pulsed current. Choose that one.");
    case SheetField::Days: return SheetText::tr("Choose up to 60 days, from day 1.");
    case SheetField::DirectLimit: return tooHigh(Waveform::Direct);
    case SheetField::PulsedLimit: return tooHigh(Waveform::Pulsed);
    case SheetField::Review: return SheetText::tr("This lies before the day of the sheet. Choose a later day.");
    case SheetField::Contact: return SheetText::tr("Keep it to one short line.");
    case SheetField::Notes:
    case SheetField::AtNoResponse: return SheetText::tr("Too long for the code. Shorten it.");
    default: return SheetText::tr("This value cannot be used. Change it.");
    }
}

QStringList sheetLines(const CareSheet& sheet)
{
    QStringList out;
    for (const SheetField field : allOf<SheetField>()) {
        if (field <= SheetField::Sites)
            continue;
        if (const QString value = valueOf(field, sheet); !value.isEmpty())
            out << SheetText::tr("%1: %2").arg(fieldName(field), value);
    }
    return out;
}

QString courseBegins(const protocol::PrescribedCourse& next)
{
    const QString where = siteName(next.course.site);
    if (next.goesOn)
        return SheetText::tr("%1: the course that runs now goes on.").arg(where);
    const auto plan = protocol::templateDays(next.course.plan, next.course.days, next.course.start);
    const int count = plan ? static_cast<int>(plan->days.size()) : 0;
    const QString begins = SheetText::tr("%1: a course of %n session(s) begins today.", nullptr, count).arg(where);
    return next.replaces ? SheetText::tr("%1 It takes the place of the one that runs now.").arg(begins) : begins;
}

QString sheetChange(SheetField field, const std::optional<CareSheet>& before, const CareSheet& after)
{
    const auto orOpen = [](const QString& value) { return value.isEmpty() ? SheetText::tr("not set") : value; };
    const QString next = orOpen(valueOf(field, after));
    return before ? SheetText::tr("%1: %2 (now %3)").arg(fieldName(field), next, orOpen(valueOf(field, *before)))
                  : SheetText::tr("%1: %2").arg(fieldName(field), next);
}

} // namespace firstdew::words
