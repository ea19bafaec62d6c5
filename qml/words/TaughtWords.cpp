#include "words/TaughtWords.h"

#include "words/Names.h"

#include <QCoreApplication>

namespace firstdew::words {

namespace {

/// Marks and translates in one; the tool that gathers texts reads the class name here.
struct TaughtText {
    Q_DECLARE_TR_FUNCTIONS(TaughtText)
};

} // namespace

QString taughtTickName(TaughtTick tick, Site site)
{
    const bool pads = site == Site::Armpits;
    switch (tick) {
    case TaughtTick::SkinAndJewellery: return TaughtText::tr("Checked the skin and took off jewellery");
    case TaughtTick::TraysAndWater:
        return pads ? TaughtText::tr("Soaked the pads and fitted them tight")
                    : TaughtText::tr("Set out trays, plates and water");
    case TaughtTick::TurnedUpSlowly: return TaughtText::tr("Turned up slowly and said when it was enough");
    case TaughtTick::SwappedAtZero: return TaughtText::tr("Swapped at zero");
    case TaughtTick::OutOfWater:
        return pads ? TaughtText::tr("Knows what to do when a pad comes off")
                    : TaughtText::tr("Knows what to do when a hand or foot comes out of the water");
    case TaughtTick::WhenToStop: return TaughtText::tr("Knows when to stop and whom to call");
    }
    return {};
}

QString taughtLine(const Entry<Taught>& taught)
{
    const Taught& t = taught.payload;
    const QString line = TaughtText::tr("%1, %2, with %3", "taught: site, day, who watched")
                             .arg(siteName(t.site), dayOfYear(taught.happened.date), asWritten(t.who));
    return t.level ? TaughtText::tr("%1. %2: %3 agreed", "taught: line, kind of current, milliamperes")
                         .arg(line, waveformName(t.waveform), milliamps(t.level->mA))
                   : line;
}

QStringList taughtTicks(const Taught& taught)
{
    QStringList out;
    for (const TaughtTick tick : allOf<TaughtTick>())
        if (taught.ticks.contains(tick))
            out << taughtTickName(tick, taught.site);
    return out;
}

} // namespace firstdew::words
