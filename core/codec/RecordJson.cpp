#include "codec/RecordJson.h"

#include "codec/FactJson.h"

#include <algorithm>
#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <optional>
#include <utility>

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

// What a document may hold at most. A fact has a dozen fields, a care sheet some lists beneath them.
constexpr int kMostDepth = 8;
constexpr std::size_t kMostKeys = 64;       // in one object
constexpr std::size_t kMostValues = 20'000; // in one fact

/// Ends the parsing: what comes after is not read.
struct TooMuch {
    Error error;
};

/// Refuses, while a document is parsed, what is nested too deeply, has too many keys or one twice.
class Bounds {
public:
    explicit Bounds(const int* line) : m_line(line) {}

    void see(int depth, json::parse_event_t event, const json& parsed)
    {
        if (depth >= kMostDepth)
            throw TooMuch{{"not-json", "",
                           fmt::format("is nested more than {} deep; this cannot be the right file", kMostDepth)}};
        const auto level = static_cast<std::size_t>(depth);
        if (event == json::parse_event_t::object_start)
            m_keys[level].clear();
        else if (event == json::parse_event_t::key)
            note(m_keys[level - 1], parsed.get_ref<const std::string&>());
    }
    [[nodiscard]] const std::optional<Error>& twice() const { return m_twice; }
    [[nodiscard]] int twiceLine() const { return m_twiceLine; }

private:
    void note(std::vector<std::string>& keys, const std::string& key)
    {
        if (keys.size() >= kMostKeys)
            throw TooMuch{{"not-json", "",
                           fmt::format("has more than {} fields in one object; this cannot be the right "
                                       "file",
                                       kMostKeys)}};
        if (std::find(keys.begin(), keys.end(), key) != keys.end() && !m_twice) {
            m_twice = Error{"field-twice", key, "is given twice; keep one"};
            m_twiceLine = *m_line;
        }
        keys.push_back(key);
    }

    const int* m_line;
    std::vector<std::string> m_keys[kMostDepth];
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

/// Takes the facts out of a document while it is parsed, so that no more than one of them is held as JSON.
class FactTaker {
public:
    FactTaker(const std::string& file, const int* line) : m_file(file), m_line(line), m_bounds(line) {}

    /// Whether the parser keeps the value.
    bool operator()(int depth, json::parse_event_t event, json& parsed)
    {
        m_bounds.see(depth, event, parsed);
        if (depth == 1 && event == json::parse_event_t::key)
            field(parsed.get_ref<const std::string&>());
        if (!m_inFacts)
            return outside(depth, event, parsed);
        if (depth < kFactDepth || (depth == kFactDepth && event == json::parse_event_t::key))
            return true;
        if (++m_values > kMostValues)
            throw TooMuch{{"fact-too-large", "", "holds more than any fact does; this cannot be the right file"}};
        if (depth > kFactDepth || event == json::parse_event_t::object_start ||
            event == json::parse_event_t::array_start)
            within(depth, event, parsed);
        else
            end(event, parsed);
        return depth > kFactDepth || event == json::parse_event_t::object_start ||
               event == json::parse_event_t::array_start;
    }

    [[nodiscard]] const Bounds& bounds() const { return m_bounds; }
    [[nodiscard]] const std::optional<Error>& refused() const { return m_refused; }
    [[nodiscard]] std::vector<Incoming>& facts() { return m_facts; }

private:
    // Depths as the parser counts them: the document's keys 1, a fact 2, its keys 3, its payload's keys 4.
    static constexpr int kFactDepth = 2;

    /// A field of the document itself.
    void field(const std::string& name)
    {
        m_inFacts = name == "facts";
        if (!m_inFacts && name != "format" && name != "version" && !m_refused)
            m_refused = errorAt(m_file, *m_line, {"field-unknown", name, "is not a field known here"});
    }

    /// Of other fields only plain values are of use.
    static bool outside(int depth, json::parse_event_t event, const json& parsed)
    {
        using Is = json::parse_event_t;
        if (event == Is::value)
            return depth == 1 && (!parsed.is_string() || parsed.get_ref<const std::string&>().size() < 100);
        return depth == 0 || event == Is::key;
    }

    void within(int depth, json::parse_event_t event, const json& parsed)
    {
        if (depth == kFactDepth) {
            m_place = *m_line;
            m_fields.clear();
        } else if (event == json::parse_event_t::key && depth <= kFactDepth + 2) {
            const std::string key = parsed.get_ref<const std::string&>();
            m_fields.emplace_back(depth == kFactDepth + 1 ? key : "is." + key, *m_line);
        }
    }

    void end(json::parse_event_t event, const json& parsed)
    {
        m_values = 0;
        if (m_refused)
            return;
        if (event != json::parse_event_t::object_end) {
            m_refused =
                errorAt(m_file, m_facts.empty() ? 1 : m_facts.back().line,
                        {"not-an-object", "facts", fmt::format("item {} must be an object", m_facts.size() + 1)});
            return;
        }
        if (m_facts.size() >= kMostFacts)
            throw TooMuch{{"file-too-large", "facts",
                           fmt::format("are more than {}; this cannot be the right file", kMostFacts)}};
        auto fact = factFromJson(parsed);
        if (fact)
            m_facts.push_back({std::move(fact.value()), m_file, m_place});
        else
            m_refused = errorAt(m_file, lineOf(fact.error().input), fact.error());
    }

    /// Line of a field that is at fault, or of its fact where the field is not there.
    [[nodiscard]] int lineOf(const std::string& field) const
    {
        for (const auto& [name, line] : m_fields)
            if (name == field)
                return line;
        return m_place;
    }

    const std::string& m_file;
    const int* m_line;
    Bounds m_bounds;
    bool m_inFacts = false;
    std::size_t m_values = 0;
    int m_place = 1;
    std::vector<std::pair<std::string, int>> m_fields; ///< of the present fact, with their lines
    std::vector<Incoming> m_facts;
    std::optional<Error> m_refused;
};

template <class See>
Result<json> parsed(const std::string& file, std::string_view text, See see, const Bounds& bounds, int& line)
{
    if (text.size() > kMostRecordBytes)
        return errorAt(file, 1,
                       {"file-too-large", "",
                        fmt::format("is larger than {} MB; this cannot be the right file", kMostRecordBytes >> 20U)});
    try {
        json document =
            json::parse(LineCounting(text.data(), &line), LineCounting(text.data() + text.size(), &line), see);
        if (bounds.twice())
            return errorAt(file, bounds.twiceLine(), *bounds.twice());
        return document;
    } catch (const TooMuch& e) {
        return errorAt(file, line, e.error);
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
    Bounds bounds(&line);
    const auto see = [&bounds](int depth, json::parse_event_t event, json& value) {
        bounds.see(depth, event, value);
        return true;
    };
    return parsed(file, text, see, bounds, line);
}

Result<std::vector<Incoming>> readRecordJson(const std::string& file, std::string_view text)
{
    int line = 1;
    FactTaker taker(file, &line);
    const auto document = parsed(file, text, std::ref(taker), taker.bounds(), line);
    if (!document)
        return document.error();
    if (auto bad = badHead(*document))
        return errorAt(file, 1, *bad);
    if (taker.refused())
        return *taker.refused();
    return std::move(taker.facts());
}

} // namespace firstdew::codec
