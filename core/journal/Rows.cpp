#include "journal/Rows.h"

#include "codec/FactJson.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <zlib.h>

namespace firstdew::journal {

using namespace facts;

namespace {

constexpr std::string_view kBetween = "\x1f"; // stands in no text

Row rowAt(SQLite::Statement& select)
{
    const auto text = [&](int i) { return select.getColumn(i).getString(); };
    const auto whole = [&](int i) { return static_cast<long long>(select.getColumn(i).getInt64()); };
    return {text(1), text(2), text(3), whole(4), whole(5), whole(6), text(7), text(8)};
}

} // namespace

long long Row::seal() const
{
    auto crc = ::crc32(0, nullptr, 0);
    const auto add = [&](std::string_view text) {
        crc = ::crc32(crc, reinterpret_cast<const Bytef*>(text.data()), static_cast<uInt>(text.size()));
    };
    const auto addWhole = [&](long long value) {
        const fmt::format_int digits(value);
        add({digits.data(), digits.size()});
    };
    for (const std::string* text : {&id, &person, &kind}) {
        add(*text);
        add(kBetween);
    }
    for (const long long whole : {day, minute, recordedMs}) {
        addWhole(whole);
        add(kBetween);
    }
    add(corrects);
    add(kBetween);
    add(body);
    return static_cast<long long>(crc);
}

Row rowOf(const Fact& fact)
{
    return {fact.id,
            fact.person,
            std::string(kindOf(fact.payload)),
            fact.happened.date.daysSince1970(),
            fact.happened.at.minute,
            fact.recordedMs,
            fact.corrects,
            codec::payloadToJson(fact.payload).dump()};
}

void bindRow(SQLite::Statement& insert, const Row& row)
{
    int i = 0;
    for (const std::string* text : {&row.id, &row.person, &row.kind})
        insert.bindNoCopy(++i, *text);
    for (const long long whole : {row.day, row.minute, row.recordedMs})
        insert.bind(++i, static_cast<int64_t>(whole));
    insert.bindNoCopy(++i, row.corrects);
    insert.bindNoCopy(++i, row.body);
    insert.bind(++i, static_cast<int64_t>(row.seal()));
}

Result<Payload> FactReader::payloadOf(const Row& row)
{
    constexpr std::size_t kShort = 128; // a session says something new each time, and is long
    m_key.assign(row.kind).append(kBetween).append(row.body);
    if (const auto said = m_said.find(m_key); said != m_said.end())
        return said->second;
    const auto body = nlohmann::json::parse(row.body, nullptr, false);
    if (body.is_discarded())
        return Error{"fact-damaged", row.id, "is not readable"};
    auto payload = codec::payloadFromJson(row.kind, body);
    // Whole, but not of a kind known here.
    if (!payload)
        return Error{"fact-newer", row.id, fmt::format("{}: {}", payload.error().input, payload.error().message)};
    if (row.body.size() <= kShort)
        m_said.emplace(m_key, *payload);
    return payload;
}

Result<Fact> FactReader::factAt(SQLite::Statement& select)
{
    Row row = rowAt(select);
    if (row.seal() != select.getColumn(9).getInt64())
        return Error{"fact-damaged", row.id, "does not match its check sum"};
    auto payload = payloadOf(row);
    if (!payload)
        return payload.error();
    const LocalTime happened{LocalDate(static_cast<int>(row.day)), {static_cast<int>(row.minute)}};
    return Fact{std::move(row.id), std::move(row.person),   happened,
                row.recordedMs,    std::move(row.corrects), std::move(payload.value())};
}

} // namespace firstdew::journal
