#include "codec/FactJson.h"

#include "codec/FieldText.h"

#include <algorithm>
#include <fmt/format.h>
#include <functional>
#include <nlohmann/json.hpp>
#include <set>

namespace firstdew::codec {

using namespace facts;
using nlohmann::json;

namespace {

template <class T>
json valueToJson(const T& value)
{
    if constexpr (Textual<T>) {
        return textOf(value);
    } else if constexpr (isSet<T>) {
        json out = json::array();
        [&]<class E>(const SetOf<E>& set) {
            for (const E e : allOf<E>())
                if (set.contains(e))
                    out.push_back(textOf(e));
        }(value);
        return out;
    } else if constexpr (std::same_as<T, bool> || std::same_as<T, std::vector<int>>) {
        return value;
    } else {
        return bare(value);
    }
}

struct Writer {
    json& object;
    template <class T>
    void operator()(std::string_view name, const T& value, Range = {}) const
    {
        if constexpr (isOptional<T>) {
            if (value)
                object[std::string(name)] = valueToJson(*value);
        } else {
            object[std::string(name)] = valueToJson(value);
        }
    }
};

/// Reads one value; on failure gives back what was expected instead.
template <Textual T>
std::optional<std::string> readValue(const json& from, T& into, const Range*)
{
    const auto parsed = from.is_string() ? parseText<T>(from.get_ref<const std::string&>()) : std::optional<T>();
    if (!parsed)
        return expected<T>();
    into = *parsed;
    return std::nullopt;
}

std::optional<std::string> readValue(const json& from, bool& into, const Range*)
{
    if (!from.is_boolean())
        return "true or false";
    into = from.get<bool>();
    return std::nullopt;
}

template <Quantity T>
std::optional<std::string> readValue(const json& from, T& into, const Range* narrower)
{
    const Range range = narrower ? *narrower : possible<T>();
    using N = std::remove_reference_t<decltype(bare(into))>;
    if (!from.is_number() || (std::integral<N> && !from.is_number_integer()) || !within(from.get<double>(), range))
        return expected<T>(range);
    bare(into) = from.get<N>();
    return std::nullopt;
}

template <class E>
std::optional<std::string> readValue(const json& from, SetOf<E>& into, const Range*)
{
    const auto wanted = "a list of words out of " + wordsOf<E>() + ", none twice";
    if (!from.is_array())
        return wanted;
    into = {};
    for (const auto& item : from) {
        E e{};
        if (readValue(item, e, nullptr) || into.contains(e))
            return wanted;
        into.insert(e);
    }
    return std::nullopt;
}

std::optional<std::string> readValue(const json& from, std::vector<int>& into, const Range* narrower)
{
    const Range range = narrower ? *narrower : possible<int>();
    const auto wanted = "a list, each " + expected<int>(range);
    if (!from.is_array() || from.size() > 10'000)
        return wanted;
    into.clear();
    for (const auto& item : from)
        if (readValue(item, into.emplace_back(), &range))
            return wanted;
    return std::nullopt;
}

template <class T>
std::optional<std::string> readValue(const json& from, std::optional<T>& into, const Range* narrower)
{
    return readValue(from, into.emplace(), narrower);
}

struct Reader {
    const json& object;
    std::set<std::string, std::less<>> known{};
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
        known.emplace(name);
        if (error)
            return;
        const auto at = object.find(std::string(name));
        if (at == object.end()) {
            if constexpr (!isOptional<T>)
                error = Error{"field-missing", std::string(name), "is missing"};
            return;
        }
        if (const auto wanted = readValue(*at, into, range))
            error = Error{"field-invalid", std::string(name), "must be " + *wanted};
    }
};

/// Refuses what the reader did not ask for: a misspelt optional field must not be lost in silence.
std::optional<Error> unknownField(const json& object, const Reader& reader)
{
    for (const auto& item : object.items())
        if (!reader.known.contains(item.key()))
            return Error{"field-unknown", item.key(), "is not a field known here"};
    return std::nullopt;
}

template <class P>
Result<Payload> readPayload(const json& object)
{
    P payload;
    Reader reader{object};
    P::fields(payload, reader);
    if (reader.error)
        return *reader.error;
    if (auto unknown = unknownField(object, reader))
        return *unknown;
    return Payload(std::move(payload));
}

bool plainId(std::string_view id)
{
    constexpr std::string_view more = "-_.:";
    return id.size() <= 64 && std::all_of(id.begin(), id.end(), [&](char c) {
               return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                      more.find(c) != std::string_view::npos;
           });
}

/// The fields of a fact outside its payload, visited like a payload's own.
struct Envelope {
    std::optional<std::string> id;
    std::string person;
    std::string kind;
    LocalTime happened;
    long long recordedMs = 0;
    std::optional<std::string> corrects;
    static void fields(auto& self, auto&& f)
    {
        f("id", self.id), f("person", self.person), f("kind", self.kind), f("happened", self.happened),
            f("recorded_ms", self.recordedMs), f("corrects", self.corrects);
    }
};

std::optional<Error> badIds(const Envelope& e)
{
    const std::string rule = "must be up to 64 letters, digits and -_.:";
    if (!plainId(e.id.value_or("")))
        return Error{"field-invalid", "id", rule};
    if (e.person.empty() || !plainId(e.person))
        return Error{"field-invalid", "person", rule + ", and not empty"};
    if (!plainId(e.corrects.value_or("")))
        return Error{"field-invalid", "corrects", rule};
    if (e.corrects && !e.corrects->empty() && e.corrects == e.id)
        return Error{"field-invalid", "corrects", "names the fact itself; it must name an earlier one"};
    return std::nullopt;
}

} // namespace

json payloadToJson(const Payload& payload)
{
    json object = json::object();
    std::visit([&]<class P>(const P& p) { P::fields(p, Writer{object}); }, payload);
    return object;
}

Result<Payload> payloadFromJson(std::string_view kind, const json& object)
{
    if (!object.is_object())
        return Error{"not-an-object", "", "must be a JSON object"};
    std::optional<Result<Payload>> out;
    forEachPayload([&](auto each) {
        using P = typename decltype(each)::type;
        if (!out && P::kind == kind)
            out.emplace(readPayload<P>(object));
    });
    if (!out)
        return Error{"kind-unknown", "kind", fmt::format("'{}' is no kind of fact known here", kind)};
    return *out;
}

json factToJson(const Fact& fact)
{
    const auto given = [](const std::string& s) { return s.empty() ? std::optional<std::string>() : s; };
    json object = json::object();
    const Envelope envelope{given(fact.id), fact.person,     std::string(kindOf(fact.payload)),
                            fact.happened,  fact.recordedMs, given(fact.corrects)};
    Envelope::fields(envelope, Writer{object});
    object["is"] = payloadToJson(fact.payload);
    return object;
}

Result<Fact> factFromJson(const json& object)
{
    if (!object.is_object())
        return Error{"not-an-object", "", "must be a JSON object"};
    Envelope envelope;
    Reader reader{object};
    Envelope::fields(envelope, reader);
    reader.known.emplace("is");
    if (reader.error)
        return *reader.error;
    if (auto unknown = unknownField(object, reader))
        return *unknown;
    if (auto bad = badIds(envelope))
        return *bad;
    const auto is = object.find("is");
    if (is == object.end())
        return Error{"field-missing", "is", "is missing"};
    auto payload = payloadFromJson(envelope.kind, *is);
    if (!payload) {
        Error e = payload.error();
        if (e.code != "kind-unknown")
            e.input = e.input.empty() ? "is" : "is." + e.input;
        return e;
    }
    return Fact{envelope.id.value_or(""),       envelope.person,           envelope.happened, envelope.recordedMs,
                envelope.corrects.value_or(""), std::move(payload.value())};
}

std::optional<Error> contradictionIn(const Payload& payload)
{
    if (const auto* away = std::get_if<Away>(&payload); away != nullptr && away->to < away->from)
        return Error{"field-invalid", "to", fmt::format("{} lies before {}", away->to.iso(), away->from.iso())};
    if (const auto* other = std::get_if<OtherTreatment>(&payload);
        other != nullptr && other->until && *other->until < other->from)
        return Error{"field-invalid", "until",
                     fmt::format("{} lies before {}", other->until->iso(), other->from.iso())};
    if (const auto* course = std::get_if<Course>(&payload))
        if (std::ranges::adjacent_find(course->days, std::greater_equal<>()) != course->days.end())
            return Error{"field-invalid", "days", "must rise, with no day twice"};
    return std::nullopt;
}

Result<Done> canBeKept(const Fact& fact)
{
    try {
        const json written = factToJson(fact);
        auto readBack = factFromJson(written);
        if (!readBack)
            return readBack.error();
        (void)written.dump(); // throws on text that is not UTF-8
        if (*readBack == fact)
            return Done{};
    } catch (const json::exception&) {
        return Error{"field-invalid", std::string(kindOf(fact.payload)), "holds text that is not UTF-8; type it again"};
    }
    return Error{"field-invalid", std::string(kindOf(fact.payload)), "holds a value that cannot be written down"};
}

} // namespace firstdew::codec
