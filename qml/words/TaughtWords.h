#pragma once

#include "facts/Entry.h"
#include "facts/Payloads.h"

#include <QString>
#include <QStringList>

// The words of a session that somebody watched and taught.
namespace firstdew::words {

using namespace facts;

/// What was seen, as a line to tick.
[[nodiscard]] QString taughtTickName(TaughtTick tick, Site site);
/// Site, day, who watched and the level agreed, in one line.
[[nodiscard]] QString taughtLine(const Entry<Taught>& taught);
/// What was ticked, in the order of the list.
[[nodiscard]] QStringList taughtTicks(const Taught& taught);

} // namespace firstdew::words
