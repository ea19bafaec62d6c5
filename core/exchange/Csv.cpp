#include "exchange/Csv.h"

#include "codec/Incoming.h"

#include <fmt/format.h>

namespace firstdew::exchange {

using codec::errorAt;
using facts::Error;
using facts::Result;

namespace {

class CsvReader {
public:
    CsvReader(const std::string& file, std::string_view text) : m_file(file), m_text(text)
    {
        if (m_text.starts_with("\xef\xbb\xbf"))
            m_text.remove_prefix(3);
    }

    Result<facts::Done> read(const SeeCsvRow& see)
    {
        while (!m_text.empty()) {
            CsvRow row{m_line, {}};
            do {
                if (row.cells.size() >= kMostCells)
                    return errorAt(m_file, m_line,
                                   {"csv-invalid", "",
                                    fmt::format("has more than {} fields; this cannot be the right file", kMostCells)});
                row.cells.emplace_back();
                if (auto wrong = m_text.starts_with('"') ? quoted(row.cells.back()) : bare(row.cells.back()))
                    return errorAt(m_file, m_line, *wrong);
            } while (accept(","));
            if (!accept("\r\n") && !accept("\n") && !m_text.empty())
                return errorAt(m_file, m_line,
                               {"csv-invalid", "", "has text after a closing quote; separate fields by a comma"});
            if (row.cells.size() == 1 && row.cells.front().empty())
                continue;
            if (auto refused = see(row))
                return errorAt(m_file, row.line, *refused);
        }
        return facts::Done{};
    }

private:
    const std::string& m_file;
    std::string_view m_text;
    int m_line = 1;

    bool accept(std::string_view what)
    {
        if (!m_text.starts_with(what))
            return false;
        m_text.remove_prefix(what.size());
        if (what.back() == '\n')
            ++m_line;
        return true;
    }

    std::optional<Error> bare(std::string& cell)
    {
        const auto end = m_text.find_first_of(",\r\n\"");
        cell = m_text.substr(0, end);
        m_text.remove_prefix(cell.size());
        if (m_text.starts_with('"'))
            return Error{"csv-invalid", "",
                         "has a quote inside a bare field; put the field in quotes and double the quote"};
        if (m_text.starts_with('\r') && !m_text.starts_with("\r\n"))
            return Error{"csv-invalid", "", "has a carriage return alone; end lines with CRLF or LF"};
        return std::nullopt;
    }

    std::optional<Error> quoted(std::string& cell)
    {
        const int opened = m_line;
        m_text.remove_prefix(1);
        while (!m_text.empty()) {
            const char c = m_text.front();
            m_text.remove_prefix(1);
            if (c == '\n')
                ++m_line;
            if (c != '"')
                cell += c;
            else if (!m_text.starts_with('"'))
                return std::nullopt;
            else
                cell += c, m_text.remove_prefix(1);
        }
        m_line = opened;
        return Error{"csv-invalid", "", "opens a quote that is never closed"};
    }
};

} // namespace

namespace {

/// Whether a text, after any apostrophes, begins as a formula does.
bool looksLikeFormula(std::string_view text)
{
    const auto at = text.find_first_not_of('\'');
    return at != std::string_view::npos && std::string_view("=+-@\t\r\n").find(text[at]) != std::string_view::npos;
}

} // namespace

std::string guarded(std::string_view text) { return (looksLikeFormula(text) ? "'" : "") + std::string(text); }

std::string unguarded(std::string_view cell)
{
    return std::string(cell.starts_with('\'') && looksLikeFormula(cell) ? cell.substr(1) : cell);
}

void appendCsvRow(std::string& out, const std::vector<std::string>& cells)
{
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i > 0)
            out += ',';
        if (cells[i].find_first_of(",\"\r\n") == std::string::npos) {
            out += cells[i];
            continue;
        }
        out += '"';
        for (const char c : cells[i])
            out += c == '"' ? std::string("\"\"") : std::string(1, c);
        out += '"';
    }
    out += "\r\n";
}

Result<facts::Done> eachCsvRow(const std::string& file, std::string_view text, const SeeCsvRow& see)
{
    return CsvReader(file, text).read(see);
}

Result<std::vector<CsvRow>> readCsv(const std::string& file, std::string_view text)
{
    std::vector<CsvRow> rows;
    const auto read = eachCsvRow(file, text, [&rows](CsvRow& row) {
        rows.push_back(std::move(row));
        return std::optional<Error>();
    });
    if (!read)
        return read.error();
    return rows;
}

} // namespace firstdew::exchange
