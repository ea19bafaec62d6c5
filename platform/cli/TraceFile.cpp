#include "TraceFile.h"

#include "Files.h"
#include "exchange/Csv.h"

#include <charconv>
#include <fmt/format.h>
#include <limits>

namespace firstdew::cli {

namespace {

std::string trimmed(std::string_view text)
{
    const auto from = text.find_first_not_of(" \t");
    return from == std::string_view::npos ? std::string()
                                          : std::string(text.substr(from, text.find_last_not_of(" \t") - from + 1));
}

/// A reading a second for a day takes less.
constexpr std::size_t kMostTraceBytes = 4U << 20U;

void checkHead(const std::string& file, const exchange::CsvRow& row)
{
    if (row.cells.size() != 2 || trimmed(row.cells[0]) != "second" || trimmed(row.cells[1]) != "milliamp")
        throw Refused{
            fmt::format("{}:{}: the first line is not 'second,milliamp'; name the two columns so", file, row.line)};
}

double number(const std::string& file, const exchange::CsvRow& row, std::size_t column, std::string_view name)
{
    const std::string text = trimmed(row.cells[column]);
    double value = 0;
    const char* end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, value);
    if (error == std::errc::result_out_of_range)
        return std::numeric_limits<double>::infinity();
    if (error != std::errc{} || stop != end)
        throw Refused{fmt::format("{}:{}: {}: '{}' is not a number; write it with a point and no unit", file, row.line,
                                  name, text)};
    return value;
}

} // namespace

std::vector<bath::TracePoint> readTrace(const std::string& file)
{
    std::vector<bath::TracePoint> out;
    std::vector<int> lines; // of the points
    bool begun = false;
    (void)orRefuse(exchange::eachCsvRow(file, readWhole(file, kMostTraceBytes), [&](const exchange::CsvRow& row) {
        if (!begun)
            checkHead(file, row);
        else if (row.cells.size() != 2)
            throw Refused{fmt::format("{}:{}: there are {} fields and not two; write 'second,milliamp'", file, row.line,
                                      row.cells.size())};
        else
            out.push_back({number(file, row, 0, "second"), number(file, row, 1, "milliamp")}),
                lines.push_back(row.line);
        begun = true;
        return std::optional<facts::Error>();
    }));
    if (!begun)
        checkHead(file, {1, {}});
    if (out.empty())
        throw Refused{fmt::format("{}: there are no readings below the first line; add what the meter showed", file)};
    if (const auto wrong = bath::refusalOfTrace(out))
        throw Refused{
            fmt::format("{}:{}: {}: {}", file, lines[wrong->point], wrong->error.input, wrong->error.message)};
    return out;
}

} // namespace firstdew::cli
