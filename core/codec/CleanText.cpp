#include "codec/CleanText.h"

#include <type_traits>

namespace firstdew::codec {

namespace {

/// One character: its bytes and its code point, or none where the bytes are no UTF-8.
struct Character {
    std::string_view bytes;
    long code = -1;
};

Character first(std::string_view text)
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned lead = byte(0);
    const std::size_t length = lead < 0x80   ? 1
                               : lead < 0xc2 ? 0
                               : lead < 0xe0 ? 2
                               : lead < 0xf0 ? 3
                               : lead < 0xf5 ? 4
                                             : 0;
    if (length == 0 || length > text.size())
        return {text.substr(0, 1)};
    long code = length == 1 ? static_cast<long>(lead) : static_cast<long>(lead & (0x7fU >> length));
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(i) & 0xc0U) != 0x80U)
            return {text.substr(0, 1)};
        code = code << 6 | static_cast<long>(byte(i) & 0x3fU);
    }
    return {text.substr(0, length), code};
}

bool isLineBreak(long code) { return code == '\n' || code == '\r' || code == 0x2028 || code == 0x2029; }

bool steers(long code)
{
    if (code == '\t' || code == '\n' || code == '\r')
        return false;
    return (code >= 0 && code < 0x20) || (code >= 0x7f && code < 0xa0) || (code >= 0x202a && code <= 0x202e) ||
           (code >= 0x2066 && code <= 0x2069);
}

/// Calls `each` with every character.
template <class Each>
void forCharacters(std::string_view text, Each each)
{
    while (!text.empty()) {
        const Character c = first(text);
        each(c);
        text.remove_prefix(c.bytes.size());
    }
}

} // namespace

bool isClean(std::string_view text)
{
    bool clean = true;
    forCharacters(
        text, [&](const Character& c) { clean = clean && !steers(c.code) && c.code != 0x2028 && c.code != 0x2029; });
    return clean;
}

std::string cleanText(std::string_view text)
{
    std::string out;
    forCharacters(text, [&](const Character& c) {
        if (c.code == 0x2028 || c.code == 0x2029)
            out += '\n';
        else if (!steers(c.code))
            out += c.bytes;
    });
    return out;
}

void cleanTexts(facts::Fact& fact)
{
    const auto clean = [](std::string_view, auto& field, auto...) {
        if constexpr (std::is_same_v<std::decay_t<decltype(field)>, std::string>)
            if (!isClean(field))
                field = cleanText(field);
    };
    std::visit([&]<class P>(P& payload) { P::fields(payload, clean); }, fact.payload);
}

bool isOneLine(std::string_view text)
{
    bool one = true;
    forCharacters(text, [&](const Character& c) { one = one && !isLineBreak(c.code); });
    return one;
}

std::string forTerminal(std::string_view text, bool keepLines)
{
    std::string out;
    forCharacters(text, [&](const Character& c) {
        if (c.code < 0)
            out += '?';
        else if (c.code == '\n' && keepLines)
            out += '\n';
        else if (steers(c.code) || isLineBreak(c.code) || c.code == '\t')
            out += ' ';
        else
            out += c.bytes;
    });
    return out;
}

} // namespace firstdew::codec
