#include "sound/LeadLine.h"

namespace firstdew::sound {

std::unique_ptr<LeadLine> makeLeadLine(Timeline, std::function<void(bool)>) { return nullptr; }

} // namespace firstdew::sound
