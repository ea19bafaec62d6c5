#include "sound/LeadLine.h"

namespace firstdew::sound {

std::unique_ptr<LeadLine> makeLeadLine(Timeline, std::function<void()>) { return nullptr; }

} // namespace firstdew::sound
