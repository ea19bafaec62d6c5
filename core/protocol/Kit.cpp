#include "protocol/Kit.h"

#include <algorithm>

namespace firstdew::protocol {

std::optional<int> cellSessionsLeft(const Diary& diary, const Machine& machine)
{
    if (machine.power != PowerSource::Cells)
        return std::nullopt;
    const Entry<CellsChanged>* change = nullptr;
    for (const auto& e : diary.cellsChanged)
        if (e.payload.machine == machine.name)
            change = &e;
    if (change == nullptr)
        return std::nullopt;
    // An unnamed machine is the only one there is; a session with no machine named was made with it.
    const auto used = std::count_if(diary.sessions.begin(), diary.sessions.end(), [&](const auto& e) {
        return e.happened >= change->happened && (e.payload.machine.empty() || e.payload.machine == machine.name);
    });
    return std::max(0, kSessionsPerCellSet - static_cast<int>(used));
}

} // namespace firstdew::protocol
