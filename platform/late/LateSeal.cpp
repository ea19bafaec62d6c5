// Stands in for firstdew_openpgp.
#include "journal/OpenPgp.h"
#include "late/Late.h"
#include "late/Missing.h"
#include "late/Parts.h"

namespace firstdew::journal {

namespace {

const late::Seal* part()
{
    static const auto* offer = static_cast<const late::Seal*>(late::offered("seal"));
    return offer;
}

} // namespace

facts::Result<std::string> seal(std::string_view plain, const std::string& passphrase, unsigned rounds)
{
    return part() != nullptr ? part()->seal(plain, passphrase, rounds) : late::missing();
}

facts::Result<std::string> unseal(std::string_view sealed, const std::string& passphrase)
{
    return part() != nullptr ? part()->unseal(sealed, passphrase) : late::missing();
}

} // namespace firstdew::journal
