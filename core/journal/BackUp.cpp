#include "journal/BackUp.h"

#include "codec/RecordJson.h"
#include "journal/Copies.h"
#include "journal/Import.h"
#include "journal/OwnFile.h"
#include "journal/ReplaceDamaged.h"
#include "journal/StoreError.h"

#include <algorithm>
#include <fmt/format.h>

namespace firstdew::journal {

using std::filesystem::path;

namespace {

std::size_t charactersIn(std::string_view text)
{
    return static_cast<std::size_t>(
        std::ranges::count_if(text, [](char c) { return (static_cast<unsigned char>(c) & 0xc0U) != 0x80U; }));
}

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
    if (charactersIn(passphrase) < kLeastPassphrase && !passphrase.empty())
        return Error{"passphrase-short", "passphrase",
                     fmt::format("must have at least {} characters; choose a longer one", kLeastPassphrase)};
    std::string record;
    {
        const auto facts = journal.readAll();
        if (!facts)
            return facts.error();
        record = codec::recordJson(*facts);
    }
    if (record.size() > codec::kMostRecordBytes)
        return Error{"back-up-too-large", "",
                     fmt::format("the record is larger than {} MB and could not be opened again; export each person "
                                 "alone",
                                 codec::kMostRecordBytes >> 20U)};
    return seal(record, passphrase, rounds);
}

Result<std::vector<Fact>> openBackUp(const std::string& file, std::string_view sealed, const std::string& passphrase)
{
    auto plain = unseal(sealed, passphrase, codec::kMostRecordBytes);
    if (!plain) {
        Error e = plain.error();
        e.input = file;
        return e;
    }
    auto incoming = codec::readRecordJson(file, *plain);
    plain.value() = {};
    if (!incoming)
        return incoming.error();
    auto plan = planImport({}, std::move(incoming.value()));
    if (!plan)
        return plan.error();
    return std::move(plan.value().fresh);
}

Result<path> backUpName(const path& wanted) { return freeName(wanted); }

Result<Restored> restore(const path& named, const std::vector<Fact>& facts)
{
    const auto real = behindLinks(named);
    const auto lies = real ? whatLiesAt(*real) : Result<Lies>(real.error());
    const auto copies = real ? copiesOf(*real) : Result<std::vector<path>>(real.error());
    // A look that failed does not mean that nothing is there.
    if (!lies || !copies)
        return unreadableStore(named, lies ? copies.error().message : lies.error().message);
    const path& store = *real;
    if ((*lies == Lies::Nothing || *lies == Lies::EmptyFile) && copies->empty())
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
