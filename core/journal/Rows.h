#pragma once

#include "facts/Fact.h"
#include "facts/Result.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <string>
#include <unordered_map>

// Facts as rows of the table `fact`.
namespace firstdew::journal {

/// A fact in the columns of the table.
struct Row {
    std::string id;
    std::string person;
    std::string kind;
    long long day = 0;
    long long minute = 0;
    long long recordedMs = 0;
    std::string corrects;
    std::string body;
    /// CRC-32 of all of it.
    [[nodiscard]] long long seal() const;
};

/// Every row in the order recorded, for factAt.
inline constexpr const char* kSelectRows =
    "SELECT sequence, id, person, kind, happened_day, happened_minute, recorded_ms, corrects, body, seal "
    "FROM fact NOT INDEXED ORDER BY sequence";
inline constexpr const char* kInsertRow =
    "INSERT INTO fact(id, person, kind, happened_day, happened_minute, recorded_ms, corrects, body, seal) "
    "VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?)";

/// The row of a fact that can be kept (journal/FactJson).
[[nodiscard]] Row rowOf(const facts::Fact& fact);
/// Binds a row, which has to outlive the statement's run, to kInsertRow.
void bindRow(SQLite::Statement& insert, const Row& row);
/// Reads facts row by row. Years of a diary say few things over and over: what a short body says is worked out once.
class FactReader {
public:
    /// The fact in the present row of kSelectRows; the error says what is wrong with it.
    [[nodiscard]] facts::Result<facts::Fact> factAt(SQLite::Statement& select);

private:
    [[nodiscard]] facts::Result<facts::Payload> payloadOf(const Row& row);
    std::unordered_map<std::string, facts::Payload> m_said; ///< by kind and body
    std::string m_key;
};

} // namespace firstdew::journal
