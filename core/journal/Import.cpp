#include "journal/Import.h"

namespace firstdew::journal {

Result<Imported> importInto(Journal& journal, const std::vector<Incoming>& incoming)
{
    const auto recorded = journal.readAll();
    if (!recorded)
        return recorded.error();
    auto plan = planImport(*recorded, incoming);
    if (!plan)
        return plan.error();
    Imported out{plan->fresh.size(), plan->known, {}};
    if (plan->fresh.empty())
        return out;
    if (!recorded->empty()) {
        auto kept = journal.keepCopy("before-import");
        if (!kept)
            return kept.error();
        out.kept = std::move(kept.value());
    }
    if (auto added = journal.appendAll(std::move(plan.value().fresh)); !added)
        return added.error();
    return out;
}

} // namespace firstdew::journal
