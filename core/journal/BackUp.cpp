#include "journal/BackUp.h"

#include "codec/RecordJson.h"
#include "journal/Copies.h"
#include "journal/Import.h"
#include "journal/ReplaceDamaged.h"
#include "journal/StoreError.h"

namespace firstdew::journal {

using std::filesystem::path;

namespace {

Result<Restored> restoreIntoNew(const path& store, const std::vector<Fact>& facts)
{
    auto journal = Journal::open(store);
    if (!journal)
        return journal.error();
    if (auto replaced = journal.value().replaceAll(facts); !replaced)
        return replaced.error();
    return Restored{facts.size(), {}};
}

} // namespace

Result<std::string> backUp(const Journal& journal, const std::string& passphrase, unsigned rounds)
{
    const auto facts = journal.readAll();
    if (!facts)
        return facts.error();
    return seal(codec::recordJson(*facts), passphrase, rounds);
}

Result<std::vector<Fact>> openBackUp(const std::string& file, std::string_view sealed, const std::string& passphrase)
{
    auto plain = unseal(sealed, passphrase);
    if (!plain) {
        Error e = plain.error();
        e.input = file;
        return e;
    }
    auto incoming = codec::readRecordJson(file, *plain);
    if (!incoming)
        return incoming.error();
    const auto plan = planImport({}, *incoming);
    if (!plan)
        return plan.error();
    return plan->fresh;
}

Result<Restored> restore(const path& store, const std::vector<Fact>& facts)
{
    std::error_code ec;
    const bool nothing = !std::filesystem::exists(store, ec) ||
                         (std::filesystem::is_regular_file(store, ec) && std::filesystem::file_size(store, ec) == 0);
    if (nothing && copiesOf(store).empty())
        return restoreIntoNew(store, facts);
    {
        auto present = Journal::openExisting(store);
        if (!present && present.error().code != "store-damaged")
            return present.error();
        if (present && present->check().ok) {
            auto kept = present.value().keepCopy("before-restore");
            if (!kept)
                return kept.error();
            if (auto replaced = present.value().replaceAll(facts); !replaced)
                return replaced.error();
            return Restored{facts.size(), *kept};
        }
    }
    auto kept = replaceDamaged(store, facts);
    if (!kept)
        return kept.error();
    return Restored{facts.size(), std::move(kept.value())};
}

} // namespace firstdew::journal
