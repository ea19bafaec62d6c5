#include "journal/Schema.h"

#include "codec/CleanText.h"
#include "journal/Copies.h"
#include "journal/Journal.h"
#include "journal/People.h"
#include "journal/Rows.h"
#include "journal/StoreError.h"

#include <cstdint>
#include <fmt/format.h>
#include <vector>

namespace firstdew::journal {

using namespace facts;

namespace {

// `corrects` is no foreign key: a correction whose original is missing stands for itself (facts/Record.h).
// `seal` is a CRC-32 of the other columns: SQLite keeps no checksums in the file, so that a flipped bit in a
// number would otherwise read back as a wrong fact.
constexpr const char* kTable = R"sql(

CREATE TABLE fact(
    sequence INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE CHECK(length(id) BETWEEN 1 AND 64),
    person TEXT NOT NULL CHECK(length(person) BETWEEN 1 AND 64),
    kind TEXT NOT NULL,
    happened_day INTEGER NOT NULL,
    happened_minute INTEGER NOT NULL CHECK(happened_minute BETWEEN 0 AND 1439),
    recorded_ms INTEGER NOT NULL,
    corrects TEXT NOT NULL DEFAULT '',
    body TEXT NOT NULL CHECK(json_valid(body)),
    seal INTEGER NOT NULL
) STRICT;
)sql";

/// Persons called "p1", "p2" … get ids of their own, and texts lose the characters that steer. Rows that do not match
/// their check sum stay as they are, so that the damage still shows.
Result<Done> nameAndClean(SQLite::Database& db, const std::filesystem::path& file)
{
    std::vector<Fact> facts;
    std::vector<long long> sequences;
    {
        SQLite::Statement select(db, kSelectRows);
        FactReader reader;
        while (select.executeStep())
            if (auto fact = reader.factAt(select)) {
                sequences.push_back(select.getColumn(0).getInt64());
                facts.push_back(std::move(fact.value()));
            } else if (fact.error().code == "fact-newer") {
                return newerFact(file, fact.error());
            }
    }
    const auto before = facts;
    renameEarlierPersons(facts);
    SQLite::Statement update(db, "UPDATE fact SET person = ?, body = ?, seal = ? WHERE sequence = ?");
    for (std::size_t i = 0; i < facts.size(); ++i) {
        codec::cleanTexts(facts[i]);
        if (facts[i] == before[i])
            continue;
        const Row row = rowOf(facts[i]);
        update.bind(1, row.person);
        update.bind(2, row.body);
        update.bind(3, static_cast<std::int64_t>(row.seal()));
        update.bind(4, static_cast<std::int64_t>(sequences[i]));
        update.exec();
        update.reset();
    }
    return Done{};
}

constexpr Migration kSteps[] = {{1, kTable}, {2, "", nameAndClean}};
static_assert(kSteps[std::size(kSteps) - 1].to == kSchemaVersion);

int number(SQLite::Database& db, const char* sql) { return db.execAndGet(sql).getInt(); }

/// One step under a write lock; does nothing where another process has made it meanwhile.
Result<Done> take(SQLite::Database& db, const std::filesystem::path& file, const Migration& step)
{
    SQLite::Transaction transaction(db, SQLite::TransactionBehavior::IMMEDIATE);
    if (number(db, "PRAGMA user_version") >= step.to)
        return Done{};
    db.exec(step.sql);
    if (step.rewrite != nullptr)
        if (auto done = step.rewrite(db, file); !done)
            return done;
    db.exec(fmt::format("PRAGMA user_version = {}", step.to));
    db.exec(fmt::format("PRAGMA application_id = {}", kApplicationId));
    transaction.commit();
    return Done{};
}

} // namespace

std::span<const Migration> migrations() { return kSteps; }

Result<Done> recognise(SQLite::Database& db, const std::filesystem::path& file, int newest)
{
    const int application = number(db, "PRAGMA application_id");
    const bool empty = number(db, "SELECT count(*) FROM sqlite_schema") == 0;
    if (application != kApplicationId && !(empty && application == 0))
        return foreignFile(file);
    if (const int version = number(db, "PRAGMA user_version"); version > newest)
        return newerStore(file, version);
    return Done{};
}

Result<Done> bringUpToDate(SQLite::Database& db, const std::filesystem::path& file, std::span<const Migration> steps)
{
    if (auto ours = recognise(db, file, steps.back().to); !ours)
        return ours;
    const int version = number(db, "PRAGMA user_version");
    if (version == steps.back().to)
        return Done{};
    if (version > 0)
        if (auto kept = keepCopy(db, file, fmt::format("before-version-{}", steps.back().to)); !kept)
            return kept.error();
    for (const Migration& step : steps)
        if (auto taken = take(db, file, step); !taken)
            return taken;
    return Done{};
}

} // namespace firstdew::journal
