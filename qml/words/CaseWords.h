#pragma once

#include "exchange/Caseload.h"

#include <QString>

namespace firstdew::words {

/// Why somebody needs a call: "Blister or burn (hands), since 3 March".
[[nodiscard]] QString callWhy(const exchange::CallWhy& why, facts::LocalDate today);
/// Why a file of the caseload was not read, and what to do.
[[nodiscard]] QString unreadWhy(const facts::Error& error);

} // namespace firstdew::words
