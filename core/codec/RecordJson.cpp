#include "codec/RecordJson.h"

#include "codec/FactJson.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <nlohmann/json.hpp>

namespace firstdew::codec {

using nlohmann::json;

namespace {

constexpr const char* kFormat = "firstdew-record";

/// Lets the parser run over the text and tells the line it has come to.
class LineCounting {
public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    LineCounting(const char* at, int* line) : m_at(at), m_line(line) {}
    reference operator*() const { return *m_at; }
    LineCounting& operator++()
    {
        if (*m_at == '\n')
            ++*m_line;
        ++m_at;
        return *this;
    }
    bool operator==(const LineCounting& other) const { return m_at == other.m_at; }

private:
    const char* m_at;
    int* m_line;
};

/// Where the facts of a document and their fields stand, noted while it is parsed.
class Places {
public:
    struct Place {
        int line = 0;
        std::map<std::string, int> fields;
    };

    explicit Places(const int* line) : m_line(line) {}

    bool operator()(int depth, json::parse_event_t event, json& parsed)
    {
        if (event == json::parse_event_t::object_start)
            open(depth);
        else if (event == json::parse_event_t::key)
            note(depth, parsed.get<std::string>());
        return true;
    }
    [[nodiscard]] const std::vector<Place>& facts() const { return m_facts; }
    [[nodiscard]] const std::optional<Error>& twice() const { return m_twice; }
    [[nodiscard]] int twiceLine() const { return m_twiceLine; }

private:
    // Depths as the parser counts them: the document's keys 1, a fact 2, its keys 3, its payload's keys 4.
    static constexpr int kFactDepth = 2;

    void open(int depth)
    {
        if (static_cast<std::size_t>(depth) < std::size(m_keys))
            m_keys[depth].clear();
        if (depth == kFactDepth)
            m_facts.push_back({*m_line, {}});
    }
    void note(int depth, const std::string& key)
    {
        if (depth < 1 || static_cast<std::size_t>(depth) > std::size(m_keys))
            return;
        auto& keys = m_keys[depth - 1];
        if (std::find(keys.begin(), keys.end(), key) != keys.end() && !m_twice) {
            m_twice = Error{"field-twice", key, "is given twice; keep one"};
            m_twiceLine = *m_line;
        }
        keys.push_back(key);
        if (depth == kFactDepth + 1 && !m_facts.empty())
            m_facts.back().fields[key] = *m_line;
        if (depth == kFactDepth + 2 && !m_facts.empty())
            m_facts.back().fields["is." + key] = *m_line;
    }

    const int* m_line;
    std::vector<Place> m_facts;
    std::vector<std::string> m_keys[6];
    std::optional<Error> m_twice;
    int m_twiceLine = 0;
};

std::optional<Error> badHead(const json& document)
{
    if (!document.is_object() || !document.contains("format") || document["format"] != kFormat)
        return Error{"format-unknown", "format",
                     fmt::format("is not \"{}\"; choose a file that Firstdew exported", kFormat)};
    const json version = document.value("version", json());
    if (!version.is_number_integer() || version < 1)
        return Error{"field-invalid", "version", "must be a whole number from 1"};
    if (version > kRecordJsonVersion)
        return Error{
            "format-newer", "version",
            fmt::format("is {}, this Firstdew reads up to {}; update Firstdew", version.dump(), kRecordJsonVersion)};
    if (!document.contains("facts") || !document["facts"].is_array())
        return Error{"field-missing", "facts", "must be a list of facts"};
    for (const auto& item : document.items())
        if (item.key() != "format" && item.key() != "version" && item.key() != "facts")
            return Error{"field-unknown", item.key(), "is not a field known here"};
    return std::nullopt;
}

/// Line of a field that is at fault, or of its fact where the field is not there.
int lineOf(const Places::Place& place, const std::string& field)
{
    const auto at = place.fields.find(field);
    return at == place.fields.end() ? place.line : at->second;
}

Result<json> parsed(const std::string& file, std::string_view text, Places& places, int& line)
{
    try {
        json document = json::parse(LineCounting(text.data(), &line), LineCounting(text.data() + text.size(), &line),
                                    std::ref(places));
        if (places.twice())
            return errorAt(file, places.twiceLine(), *places.twice());
        return document;
    } catch (const json::parse_error& e) {
        const auto before = text.substr(0, e.byte > 0 ? e.byte - 1 : 0);
        const auto at = static_cast<int>(std::count(before.begin(), before.end(), '\n')) + 1;
        return errorAt(file, at,
                       {"not-json", "", "is not JSON from here on; mend the line, or have the file made again"});
    } catch (const json::exception&) {
        return errorAt(file, line, {"not-json", "", "holds a number that no program can keep"});
    }
}

} // namespace

std::string recordJson(std::span<const Fact> facts)
{
    std::string out = fmt::format("{{\"format\":\"{}\",\"version\":{},\"facts\":[", kFormat, kRecordJsonVersion);
    const char* between = "\n";
    for (const Fact& fact : facts) {
        out += between + factToJson(fact).dump();
        between = ",\n";
    }
    return out + "\n]}\n";
}

Result<json> parseJson(const std::string& file, std::string_view text)
{
    int line = 1;
    Places places(&line);
    return parsed(file, text, places, line);
}

Result<std::vector<Incoming>> readRecordJson(const std::string& file, std::string_view text)
{
    int line = 1;
    Places places(&line);
    const auto read = parsed(file, text, places, line);
    if (!read)
        return read.error();
    const json& document = *read;
    if (auto bad = badHead(document))
        return errorAt(file, 1, *bad);

    std::vector<Incoming> out;
    std::size_t object = 0;
    for (const json& item : document["facts"]) {
        if (!item.is_object())
            return errorAt(file, out.empty() ? 1 : out.back().line,
                           {"not-an-object", "facts", fmt::format("item {} must be an object", out.size() + 1)});
        const Places::Place& place = places.facts()[object++];
        auto fact = factFromJson(item);
        if (!fact)
            return errorAt(file, lineOf(place, fact.error().input), fact.error());
        out.push_back({std::move(fact.value()), file, place.line});
    }
    return out;
}

} // namespace firstdew::codec
