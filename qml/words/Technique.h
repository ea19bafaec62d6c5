#pragma once

#include "protocol/Response.h"

#include <QString>

// How the treatment is done, as questions to oneself.
namespace firstdew::words {

[[nodiscard]] QString techniqueText(protocol::TechniqueCheck check, facts::Site site);

} // namespace firstdew::words
