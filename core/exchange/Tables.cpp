#include "exchange/Tables.h"

#include "codec/FieldText.h"
#include "codec/RecordJson.h"
#include "exchange/Csv.h"

#include <algorithm>

namespace firstdew::exchange {

using codec::bare;
using codec::errorAt;
using codec::expected;
using codec::isOptional;
using codec::isSet;
using codec::possible;
using codec::Quantity;
using codec::Textual;

namespace {

template <class T>
std::string cellOf(const T& value)
{
    std::string out;
    const auto join = [&out](const std::string& item) { out += (out.empty() ? "" : ";") + item; };
    if constexpr (isOptional<T>)
        return value ? cellOf(*value) : "";
    else if constexpr (std::same_as<T, std::string>)
        return guarded(value);
    else if constexpr (Textual<T>)
        return codec::textOf(value);
    else if constexpr (std::same_as<T, bool>)
        return value ? "true" : "false";
    else if constexpr (std::same_as<T, std::vector<int>>)
        for (const int item : value)
            join(fmt::format("{}", item));
    else if constexpr (isSet<T>)
        [&]<class E>(const SetOf<E>& set) {
            for (const E e : allOf<E>())
                if (set.contains(e))
                    join(codec::textOf(e));
        }(value);
    else
        return fmt::format("{}", bare(value));
    return out;
}

template <class E>
std::string noneOrMoreOf(const SetOf<E>&)
{
    return "none or more of " + codec::wordsOf<E>() + ", joined by ';'";
}

/// What a column holds, in a phrase.
template <class T>
std::string holds(const T& value, const Range* range)
{
    if constexpr (isOptional<T>)
        return holds(typename T::value_type{}, range) + ", or empty";
    else if constexpr (Textual<T>)
        return expected<T>();
    else if constexpr (std::same_as<T, bool>)
        return "true or false";
    else if constexpr (std::same_as<T, std::vector<int>>)
        return "whole numbers joined by ';'";
    else if constexpr (isSet<T>)
        return noneOrMoreOf(value);
    else
        return expected<T>(range ? *range : possible<T>());
}

template <Textual T>
std::optional<std::string> readCell(std::string_view cell, T& into, const Range*)
{
    const auto value = codec::parseText<T>(cell);
    if (!value)
        return expected<T>();
    into = *value;
    return std::nullopt;
}

std::optional<std::string> readCell(std::string_view cell, std::string& into, const Range*)
{
    into = unguarded(cell);
    return std::nullopt;
}

std::optional<std::string> readCell(std::string_view cell, bool& into, const Range*)
{
    into = cell == "true";
    return into || cell == "false" ? std::optional<std::string>() : "true or false";
}

template <Quantity T>
std::optional<std::string> readCell(std::string_view cell, T& into, const Range* narrower)
{
    const Range range = narrower ? *narrower : possible<T>();
    auto& number = bare(into);
    const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), number);
    if (error != std::errc() || end != cell.data() + cell.size() || !codec::within(number, range))
        return expected<T>(range);
    return std::nullopt;
}

/// Calls `each` with every item of a list joined by ';' until one is refused.
template <class Each>
bool forItems(std::string_view cell, Each each)
{
    while (!cell.empty()) {
        const auto end = std::min(cell.find(';'), cell.size());
        if (!each(cell.substr(0, end)))
            return false;
        cell.remove_prefix(std::min(end + 1, cell.size()));
    }
    return true;
}

template <class E>
std::optional<std::string> readCell(std::string_view cell, SetOf<E>& into, const Range*)
{
    const bool good = forItems(cell, [&](std::string_view item) {
        const auto e = fromToken<E>(item);
        if (!e || into.contains(*e))
            return false;
        into.insert(*e);
        return true;
    });
    return good ? std::optional<std::string>() : holds(into, nullptr);
}

std::optional<std::string> readCell(std::string_view cell, std::vector<int>& into, const Range* range)
{
    const bool good =
        forItems(cell, [&](std::string_view item) { return !readCell(item, into.emplace_back(), range); });
    return good ? std::optional<std::string>() : holds(into, range);
}

template <class T>
std::optional<std::string> readCell(std::string_view cell, std::optional<T>& into, const Range* range)
{
    if (cell.empty())
        return std::nullopt;
    return readCell(cell, into.emplace(), range);
}

/// The columns before a kind's own.
struct Head {
    std::string kind;
    std::string id;
    std::string person;
    LocalTime happened;
    std::optional<long long> recordedMs;
    std::string corrects;
    static void fields(auto& self, auto&& f)
    {
        f("kind", self.kind), f("id", self.id), f("person", self.person), f("happened", self.happened),
            f("recorded_ms", self.recordedMs), f("corrects", self.corrects);
    }
};
constexpr std::string_view kMayBeLeftOut[] = {"id", "person", "corrects"};

struct Names {
    std::vector<std::string>& out;
    void operator()(std::string_view name, const auto&, Range = {}) const { out.emplace_back(name); }
};

struct Cells {
    std::vector<std::string>& out;
    void operator()(std::string_view, const auto& value, Range = {}) const { out.push_back(cellOf(value)); }
};

struct Describe {
    std::string& out;
    std::string_view kind;
    void operator()(std::string_view name, const auto& value) const { line(name, holds(value, nullptr)); }
    void operator()(std::string_view name, const auto& value, Range range) const { line(name, holds(value, &range)); }
    void line(std::string_view name, const std::string& what) const
    {
        appendCsvRow(out, {std::string(kind), std::string(name), what});
    }
};

/// A row under its header; collects the first thing wrong with it.
struct RowReader {
    const std::vector<std::string>& header;
    const std::vector<std::string>& cells;
    std::optional<Error> error{};

    template <class T>
    void operator()(std::string_view name, T& into)
    {
        read(name, into, nullptr);
    }
    template <class T>
    void operator()(std::string_view name, T& into, Range range)
    {
        read(name, into, &range);
    }

private:
    template <class T>
    void read(std::string_view name, T& into, const Range* range)
    {
        const auto at = std::find(header.begin(), header.end(), name);
        if (at == header.end()) {
            const bool optional = isOptional<T> || std::find(std::begin(kMayBeLeftOut), std::end(kMayBeLeftOut),
                                                             name) != std::end(kMayBeLeftOut);
            if (!optional && !error)
                error = Error{"column-missing", std::string(name), "there is no such column; add it"};
            return;
        }
        const auto wanted = readCell(cells[static_cast<std::size_t>(at - header.begin())], into, range);
        if (wanted && !error)
            error = Error{"field-invalid", std::string(name), "must be " + *wanted};
    }
};

/// Something to list the fields of.
template <class P>
const P blank{};

template <class P>
std::vector<std::string> columnsOf()
{
    std::vector<std::string> names;
    Head::fields(blank<Head>, Names{names});
    P::fields(blank<P>, Names{names});
    return names;
}

template <class P>
Result<Payload> readPayload(RowReader& row)
{
    const auto known = columnsOf<P>();
    for (const auto& name : row.header)
        if (std::find(known.begin(), known.end(), name) == known.end())
            return Error{"column-unknown", name, fmt::format("is no column of {}; see columns.csv", P::kind)};
    P payload;
    P::fields(payload, row);
    if (row.error)
        return *row.error;
    return Payload(std::move(payload));
}

Result<Payload> readPayloadOf(std::string_view kind, RowReader& row)
{
    std::optional<Result<Payload>> out;
    forEachPayload([&](auto each) {
        using P = typename decltype(each)::type;
        if (!out && P::kind == kind)
            out.emplace(readPayload<P>(row));
    });
    if (!out)
        return Error{"kind-unknown", "kind", fmt::format("'{}' is no kind of fact known here; see columns.csv", kind)};
    return *out;
}

std::optional<Error> badHeader(const std::vector<std::string>& header)
{
    if (std::find(header.begin(), header.end(), "kind") == header.end())
        return Error{"not-a-table", "",
                     "names no column 'kind', so that this is no table of ours; choose another file"};
    for (auto at = header.begin(); at != header.end(); ++at)
        if (std::find(header.begin(), at, *at) != at)
            return Error{"column-twice", *at, "stands twice in the header; keep one"};
    return std::nullopt;
}

Result<Fact> readRow(const std::vector<std::string>& header, const CsvRow& cells, const std::string& person,
                     long long recordedMs)
{
    if (cells.cells.size() != header.size())
        return Error{"csv-invalid", "",
                     fmt::format("has {} fields where the header has {}", cells.cells.size(), header.size())};
    RowReader row{header, cells.cells};
    Head head;
    Head::fields(head, row);
    if (row.error)
        return *row.error;
    auto payload = readPayloadOf(head.kind, row);
    if (!payload)
        return payload.error();
    return Fact{head.id,       head.person.empty() ? person : head.person,
                head.happened, head.recordedMs.value_or(recordedMs),
                head.corrects, std::move(payload.value())};
}

} // namespace

std::map<std::string, std::string> tablesOf(std::span<const Fact> facts)
{
    std::map<std::string, std::string> out;
    for (const Fact& fact : facts) {
        const auto row = [&](const auto& payload) {
            using P = std::decay_t<decltype(payload)>;
            std::string& table = out[std::string(P::kind) + ".csv"];
            if (table.empty())
                appendCsvRow(table, columnsOf<P>());
            std::vector<std::string> cells;
            const Head head{std::string(P::kind), fact.id, fact.person, fact.happened, fact.recordedMs, fact.corrects};
            Head::fields(head, Cells{cells});
            P::fields(payload, Cells{cells});
            appendCsvRow(table, cells);
        };
        std::visit(row, fact.payload);
    }
    std::string& columns = out["columns.csv"];
    appendCsvRow(columns, {"table", "column", "holds"});
    Head::fields(blank<Head>, Describe{columns, "every"});
    forEachPayload([&](auto each) {
        using P = typename decltype(each)::type;
        P::fields(blank<P>, Describe{columns, P::kind});
    });
    return out;
}

std::vector<std::string> tableNames()
{
    std::vector<std::string> out{"columns.csv"};
    forEachPayload([&](auto each) { out.push_back(std::string(decltype(each)::type::kind) + ".csv"); });
    return out;
}

Result<std::vector<codec::Incoming>> readTable(const std::string& file, std::string_view text,
                                               const std::string& person, long long recordedMs)
{
    std::vector<std::string> header;
    std::vector<codec::Incoming> out;
    const auto read = eachCsvRow(file, text, [&](CsvRow& row) -> std::optional<Error> {
        if (header.empty()) {
            header = std::move(row.cells);
            return badHeader(header);
        }
        if (out.size() >= codec::kMostFacts)
            return Error{
                "file-too-large", "",
                fmt::format("is the row of more than {} facts; this cannot be the right file", codec::kMostFacts)};
        auto fact = readRow(header, row, person, recordedMs);
        if (!fact)
            return fact.error();
        out.push_back({std::move(fact.value()), file, row.line});
        return std::nullopt;
    });
    if (!read)
        return read.error();
    if (header.empty())
        return codec::errorAt(file, 1, {"csv-invalid", "", "has no header line"});
    return out;
}

} // namespace firstdew::exchange
