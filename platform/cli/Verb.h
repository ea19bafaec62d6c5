#pragma once

#include "facts/Result.h"
#include "journal/Journal.h"

#include <CLI/CLI.hpp>
#include <functional>
#include <nlohmann/json.hpp>
#include <string>

namespace firstdew::cli {

/// Thrown by a verb: one line on standard error, exit 1.
struct Refused {
    std::string line;
};

/// Thrown by a verb for a wrong call: one line on standard error, exit 2.
struct Usage {
    std::string line;
};

/// What a verb has to say, as text for a reader and as one JSON document for a script.
struct Answer {
    std::string text;
    nlohmann::json json;
    bool refused = false; ///< printed as usual, but exit 1 (e.g. `verify` on a damaged store)
};

/// Declares a verb's options on `sub` and gives back what runs it after parsing.
using Setup = std::function<std::function<Answer()>(CLI::App& sub)>;

/// A verb makes itself known by one static of this type in its own file.
struct Verb {
    Verb(std::string name, std::string does, Setup setup);
};

/// The value, or Refused with the error's message.
template <class T>
T orRefuse(facts::Result<T> result)
{
    if (!result)
        throw Refused{result.error().input.empty() ? result.error().message
                                                   : result.error().input + ": " + result.error().message};
    return std::move(result.value());
}

/// Readers for option values; each throws Usage naming the option.
facts::LocalDate dateOption(const std::string& option, const std::string& text);

/// The words of E for a person to read: "hands, feet or armpits".
template <facts::HasTokens E>
std::string anyOf(std::string_view beforeLast = " or ")
{
    std::string known;
    const auto& list = facts::Tokens<E>::list;
    for (std::size_t i = 0; i < list.size(); ++i)
        known += std::string(i == 0 ? "" : i + 1 == list.size() ? beforeLast : ", ") += list[i];
    return known;
}

template <facts::HasTokens E>
E tokenOption(const std::string& option, const std::string& text)
{
    if (const auto value = facts::fromToken<E>(text))
        return *value;
    throw Usage{option + ": '" + text + "' is none of " + anyOf<E>(", ")};
}

/// Milliseconds since 1970 by the wall clock; a test fixes it with FIRSTDEW_NOW_MS.
long long nowMs();
/// The same moment by the clock on the wall here.
facts::LocalTime localNow();

/// The text on one line, without what would steer a terminal.
std::string oneLine(std::string_view text);

/// The person meant: the one named, by id or name, or the only one in the store; otherwise refused with those known. A
/// store that holds nobody gives an empty id.
std::string personOf(const std::vector<facts::Fact>& facts, const std::string& named);

/// Everybody in the store as a person is called there: "Anna (8f03…)", or the id alone.
std::string peopleIn(const std::vector<facts::Fact>& facts);

/// Who is called `named`, by id or by the name last recorded.
std::vector<std::string> personsCalled(const std::vector<facts::Fact>& facts, const std::string& named);

} // namespace firstdew::cli
