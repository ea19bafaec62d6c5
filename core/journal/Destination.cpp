#include "journal/Destination.h"

#include "journal/Copies.h"
#include "journal/OwnFile.h"
#include "journal/Schema.h"

#include <algorithm>
#include <cstdint>
#include <fstream>

namespace firstdew::journal {

using namespace facts;
using std::filesystem::path;

namespace {

Error isStore(const path& out)
{
    return {"out-is-store", out.string(), "is a store or belongs to one; nothing was written, choose another name"};
}

/// Whether a file bears the mark that every store of ours has (SQLite's header, application id at byte 68).
bool bearsOurMark(const path& file)
{
    char head[72] = {};
    std::ifstream in(file, std::ios::binary);
    if (!in.read(head, sizeof head) || !std::string_view(head, 16).starts_with("SQLite format 3"))
        return false;
    std::uint32_t mark = 0;
    for (int i = 68; i < 72; ++i)
        mark = mark << 8U | static_cast<unsigned char>(head[i]);
    return mark == kApplicationId;
}

/// The path with every link followed, or as near as the system lets us come.
path real(const path& file)
{
    std::error_code failed;
    path out = std::filesystem::weakly_canonical(file, failed);
    return failed ? std::filesystem::absolute(file, failed).lexically_normal() : out;
}

/// Whether a file of this name would belong to a store that lies beside it.
bool belongsByName(const path& out)
{
    const std::string name = out.filename().string();
    for (const std::string_view suffix : kCompanions)
        if (name.size() > suffix.size() && name.ends_with(suffix) &&
            bearsOurMark(out.parent_path() / name.substr(0, name.size() - suffix.size())))
            return true;
    for (auto dot = name.find('.', 1); dot != std::string::npos; dot = name.find('.', dot + 1))
        if (!reasonOf(name, name.substr(0, dot)).empty() && bearsOurMark(out.parent_path() / name.substr(0, dot)))
            return true;
    return false;
}

bool belongsTo(const path& out, const path& store)
{
    if (out == store)
        return true;
    if (out.parent_path() == store.parent_path()) {
        const std::string name = out.filename().string();
        const std::string own = store.filename().string();
        for (const std::string_view suffix : kCompanions)
            if (name == own + std::string(suffix))
                return true;
        if (!reasonOf(name, own).empty())
            return true;
    }
    const auto same = identityOf(out);
    if (!same)
        return false;
    for (const std::string_view suffix : {"", "-wal", "-shm", "-journal", ".notices"})
        if (identityOf(beside(store, suffix)) == same)
            return true;
    const auto copies = copiesOf(store);
    return copies && std::ranges::any_of(*copies, [&](const path& copy) { return identityOf(copy) == same; });
}

Result<Lies> inspect(const path& out, const path& store)
{
    const auto lies = whatLiesAt(out);
    if (!lies)
        return lies.error();
    const path at = real(out);
    if ((!store.empty() && belongsTo(at, real(store))) || belongsByName(at) ||
        (*lies == Lies::File && bearsOurMark(at)))
        return isStore(out);
    if (*lies == Lies::Other)
        return Error{"file-failed", out.string(), "is no regular file; choose another name"};
    return lies;
}

} // namespace

Result<Done> mayWriteTo(const path& out, const path& store, bool replace)
{
    const auto lies = inspect(out, store);
    if (!lies)
        return lies.error();
    if (*lies == Lies::Folder)
        return Error{"file-failed", out.string(), "is a folder; choose another name"};
    if (*lies != Lies::Nothing && !replace)
        return Error{"file-exists", out.string(), "is there already; choose another name"};
    return Done{};
}

Result<Done> mayFillFolder(const path& out, const path& store)
{
    const auto lies = inspect(out, store);
    if (!lies)
        return lies.error();
    if (*lies == Lies::File || *lies == Lies::EmptyFile)
        return Error{"file-failed", out.string(), "is a file, and the tables need a folder; choose another name"};
    return Done{};
}

} // namespace firstdew::journal
