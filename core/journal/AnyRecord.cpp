#include "journal/AnyRecord.h"

#include "codec/RecordJson.h"
#include "journal/BackUp.h"
#include "journal/Import.h"
#include "journal/Journal.h"
#include "journal/OwnFile.h"

#include <algorithm>
#include <fmt/format.h>

namespace firstdew::journal {

namespace {

constexpr std::string_view kStoreBegins{"SQLite format 3\0", 16};

Result<std::vector<Fact>> fromStore(const std::filesystem::path& file)
{
    const auto store = Journal::openToRead(file);
    if (!store)
        return store.error();
    auto facts = store->readAll();
    if (facts)
        renameEarlierPersons(facts.value());
    return facts;
}

Result<std::vector<Fact>> fromJson(const std::string& file, std::string_view text)
{
    auto incoming = codec::readRecordJson(file, text);
    if (!incoming)
        return incoming.error();
    auto plan = planImport({}, std::move(incoming.value()), Doubtful::AsNewPerson);
    if (!plan)
        return plan.error();
    return std::move(plan.value().fresh);
}

} // namespace

Result<std::vector<Fact>> readAnyRecord(const std::filesystem::path& file, const std::string& passphrase)
{
    auto content = readFile(file, codec::kMostRecordBytes);
    if (!content)
        return content.error();
    if (content->starts_with(kStoreBegins)) {
        content.value() = {};
        return fromStore(file);
    }
    const auto first = content->find_first_not_of(" \t\r\n");
    if (first != std::string::npos && (*content)[first] == '{')
        return fromJson(file.string(), *content);
    if (passphrase.empty())
        return Error{"not-a-record", file.string(),
                     "is no store and no record in JSON; if it is a back-up, give its passphrase"};
    return openBackUp(file.string(), *content, passphrase);
}

Result<std::vector<std::filesystem::path>> recordFilesIn(const std::filesystem::path& folder)
{
    namespace fs = std::filesystem;
    std::vector<fs::path> out;
    std::error_code wrong;
    for (auto at = fs::directory_iterator(folder, wrong); !wrong && at != fs::directory_iterator();
         at.increment(wrong)) {
        const std::string name = at->path().filename().string();
        const bool beside = name.ends_with("-wal") || name.ends_with("-shm") || name.ends_with(".copy");
        if (at->is_regular_file(wrong) && !name.starts_with('.') && !beside)
            out.push_back(at->path());
        if (out.size() > kMostRecordFiles)
            return Error{
                "folder-too-full", folder.string(),
                fmt::format("holds more than {} files; choose the folder of the records alone", kMostRecordFiles)};
    }
    if (wrong)
        return Error{"folder-unreadable", folder.string(), wrong.message() + "; name a folder that can be read"};
    std::ranges::sort(out);
    return out;
}

} // namespace firstdew::journal
