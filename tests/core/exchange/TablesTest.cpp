#include "exchange/Tables.h"

#include "core/RandomFacts.h"
#include "exchange/Csv.h"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

using namespace firstdew;
using namespace firstdew::exchange;

// The rules of the format are those of RFC 4180, section 2; the numbers in brackets are its own.
TEST_CASE("CSV is written after RFC 4180")
{
    std::string out;
    appendCsvRow(out, {"\r"});
    CHECK(out == "\"\r\"\r\n");
    out.clear();
    appendCsvRow(out, {"aaa", "b,b", "c\"c", "d\r\nd", "", " e "});
    CHECK(out == "aaa,\"b,b\",\"c\"\"c\",\"d\r\nd\",, e \r\n"); // [1] CRLF, [6] quotes where needed, [7] doubled
                                                                // quotes, [4] spaces kept
}

TEST_CASE("the examples of RFC 4180 are read")
{
    const auto cells = [](std::string_view text) {
        const auto rows = readCsv("x.csv", text);
        REQUIRE(rows.ok());
        std::vector<std::vector<std::string>> out;
        for (const auto& row : *rows)
            out.push_back(row.cells);
        return out;
    };
    using Rows = std::vector<std::vector<std::string>>;
    CHECK(cells("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n") == Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});         // [1]
    CHECK(cells("aaa,bbb,ccc\r\nzzz,yyy,xxx") == Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});             // [2]
    CHECK(cells("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx") == Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}); // [5]
    CHECK(cells("\"aaa\",\"b\r\nbb\",\"ccc\"\r\n") == Rows{{"aaa", "b\r\nbb", "ccc"}});                           // [6]
    CHECK(cells("\"aaa\",\"b\"\"bb\",\"ccc\"") == Rows{{"aaa", "b\"bb", "ccc"}});                                 // [7]
    // Our own choice beyond the standard: LF alone, a byte order mark, empty lines.
    CHECK(cells("\xef\xbb\xbf"
                "a,b\n\n,\n") == Rows{{"a", "b"}, {"", ""}});
}

TEST_CASE("a broken line is told by its number")
{
    const auto where = [](std::string_view text) {
        const auto rows = readCsv("x.csv", text);
        return rows.ok() ? "read" : rows.error().input;
    };
    CHECK(where("a,b\n\"c\nd\",e\nf,\"g") == "x.csv, line 4");
    CHECK(where("a,b\nc,d\"e\"\n") == "x.csv, line 2");
    CHECK(where("a,b\n\"c\"d,e\n") == "x.csv, line 2");
    CHECK(where("a,b\rc,d\r") == "x.csv, line 1");
    CHECK(where("a\n" + std::string(kMostCells - 1, ',') + "\n") == "read");
    CHECK(where("a\n" + std::string(kMostCells, ',') + "\n") == "x.csv, line 2");
}

TEST_CASE("ten thousand random facts pass through the tables unchanged", "[property]")
{
    CHECK(rc::check([](unsigned long long seed) {
        auto facts = testing::RandomFacts(seed).many(100);
        std::vector<Fact> back;
        for (const auto& [name, table] : tablesOf(facts)) {
            if (name == "columns.csv")
                continue;
            const auto read = readTable(name, table, "somebody", 7);
            RC_ASSERT(read.ok());
            for (const auto& incoming : *read)
                back.push_back(incoming.fact);
        }
        const auto byId = [](const Fact& a, const Fact& b) { return a.id < b.id; };
        std::sort(facts.begin(), facts.end(), byId);
        std::sort(back.begin(), back.end(), byId);
        RC_ASSERT(back == facts);
    }));
}

TEST_CASE("every column of every table is described")
{
    const auto facts = testing::RandomFacts(1).many(2000);
    const auto tables = tablesOf(facts);
    CHECK(tables.size() == std::variant_size_v<Payload> + 1);
    std::set<std::pair<std::string, std::string>> described;
    const auto columns = readCsv("columns.csv", tables.at("columns.csv"));
    for (const auto& row : *columns) {
        REQUIRE(row.cells.size() == 3);
        CHECK_FALSE(row.cells[2].empty());
        described.emplace(row.cells[0], row.cells[1]);
    }
    for (const auto& [name, table] : tables) {
        const auto rows = readCsv(name, table);
        for (const auto& column : rows->front().cells)
            if (name != "columns.csv")
                CHECK((described.contains({"every", column}) ||
                       described.contains({name.substr(0, name.size() - 4), column})));
    }
    CHECK(tables.at("columns.csv").find("check-in,level,\"one of dry, clammy, wet, dripping\"") != std::string::npos);
    CHECK(tables.at("columns.csv").find("hdss,score,a whole number from 1 to 4\r\n") != std::string::npos);
}

TEST_CASE("a table typed by hand needs no more than what was seen")
{
    const auto read = readTable(
        "diary.csv", "level,kind,happened,site,with\nclammy,check-in,2026-03-05T07:30,hands,heat;stress\n", "p1", 42);
    REQUIRE(read.ok());
    REQUIRE(read->size() == 1);
    CHECK((*read)[0].fact ==
          Fact{"", "p1", *LocalTime::parse("2026-03-05T07:30"), 42, "",
               CheckIn{DiarySite::Hands, Level::Clammy, {Circumstance::Heat, Circumstance::Stress}}});
}

TEST_CASE("what is wrong in a table is told with its line and column")
{
    struct Case {
        const char* text;
        const char* where;
    };
    const std::string head = "kind,happened,site,level,with\n";
    const auto c = GENERATE(values<Case>({
        {"check-in,2026-03-05T07:30,hands,damp,\n", "x.csv, line 2, level"},
        {"check-in,2026-03-05T07:30,hands,dry,\ncheck-in,2026-03-05,hands,dry,\n", "x.csv, line 3, happened"},
        {"check-in,2026-03-05T07:30,hands,dry,heat;heat\n", "x.csv, line 2, with"},
        {"check-in,2026-03-05T07:30,hands,dry\n", "x.csv, line 2"},
        {"diary,2026-03-05T07:30,hands,dry,\n", "x.csv, line 2, kind"},
        {"hdss,2026-03-05T07:30,hands,dry,\n", "x.csv, line 2, level"},
    }));
    INFO(c.text);
    const auto read = readTable("x.csv", head + c.text, "p1", 1);
    REQUIRE_FALSE(read.ok());
    CHECK(read.error().input == c.where);
    CHECK(readTable("x.csv", "kind,kind\n", "p1", 1).error().input == "x.csv, line 1, kind");
    CHECK_FALSE(readTable("x.csv", "", "p1", 1).ok());
    CHECK(readTable("x.csv", "happened,site,level,with\n2026-03-05T07:30,hands,dry,\n", "p1", 1).error().code ==
          "not-a-table");
    CHECK(readTable("x.csv", "Dear doctor", "p1", 1).error().code == "not-a-table");
}

TEST_CASE("of every table each cell that holds something else is refused by its column, and said what belongs there")
{
    std::map<std::string, std::string> rows; // of each kind, one line under its header
    for (const auto& fact : testing::RandomFacts(2).many(1000))
        for (const auto& [name, table] : tablesOf(std::vector{fact}))
            if (name != "columns.csv")
                rows.emplace(name, table);
    CHECK(rows.size() == std::variant_size_v<Payload>);
    const auto described = readCsv("columns.csv", tablesOf({}).at("columns.csv"));
    REQUIRE(described.ok());
    const auto holds = [&](const std::string& table, const std::string& column) -> std::string {
        for (const auto& row : *described)
            if ((row.cells.at(0) == table || row.cells.at(0) == "every") && row.cells.at(1) == column)
                return row.cells.at(2);
        return {};
    };
    int refused = 0;
    for (const auto& [name, table] : rows) {
        const auto lines = readCsv(name, table);
        REQUIRE(lines.ok());
        const auto& header = lines->at(0).cells;
        for (std::size_t column = 0; column < header.size(); ++column) {
            auto cells = lines->at(1).cells;
            cells[column] = "no such thing";
            std::string text;
            appendCsvRow(text, header);
            appendCsvRow(text, cells);
            const auto read = readTable(name, text, "p1", 1);
            const std::string wanted = holds(name.substr(0, name.size() - 4), header[column]);
            INFO(name << ", " << header[column] << ": " << wanted);
            if (wanted.starts_with("a text")) {
                CHECK((read.ok() || read.error().code == "kind-unknown"));
                continue;
            }
            ++refused;
            REQUIRE_FALSE(read.ok());
            CHECK(read.error().code == "field-invalid");
            CHECK(read.error().input == name + ", line 2, " + header[column]);
            // An empty cell of a column that may be one is nothing wrong, so the sentence leaves it out.
            CHECK(wanted.starts_with(read.error().message.substr(std::string_view("must be ").size())));
        }
    }
    CHECK(refused > 100);
}

TEST_CASE("of every table each column is needed, but those that tell of nothing where they are missing")
{
    std::map<std::string, std::string> rows;
    for (const auto& fact : testing::RandomFacts(2).many(1000))
        for (const auto& [name, table] : tablesOf(std::vector{fact}))
            if (name != "columns.csv")
                rows.emplace(name, table);
    const auto columns = tablesOf({}).at("columns.csv");
    for (const auto& [name, table] : rows) {
        const auto lines = readCsv(name, table);
        REQUIRE(lines.ok());
        for (std::size_t column = 0; column < lines->at(0).cells.size(); ++column) {
            auto header = lines->at(0).cells;
            auto cells = lines->at(1).cells;
            const std::string gone = header[column];
            header.erase(header.begin() + static_cast<std::ptrdiff_t>(column));
            cells.erase(cells.begin() + static_cast<std::ptrdiff_t>(column));
            std::string text;
            appendCsvRow(text, header);
            appendCsvRow(text, cells);
            const auto read = readTable(name, text, "p1", 1);
            const std::string mark = "\r\n" + name.substr(0, name.size() - 4) + "," + gone + ",";
            const auto at = columns.find(mark);
            const bool ownMayLack =
                at != std::string::npos &&
                columns.substr(at + 2, columns.find("\r\n", at + 2) - at).find("or empty") != std::string::npos;
            const bool everyMayLack = gone == "id" || gone == "person" || gone == "corrects" || gone == "recorded_ms";
            INFO(name << ", " << gone);
            CHECK(read.ok() == (ownMayLack || everyMayLack));
            if (read.ok())
                continue;
            const bool table = gone != "kind"; // a file without it is none of these tables
            CHECK(read.error().code == (table ? "column-missing" : "not-a-table"));
            CHECK(read.error().input == name + (table ? ", line 2, " + gone : ", line 1"));
        }
    }
}
