#include "exchange/FhirId.h"

#include <fmt/format.h>

namespace firstdew::exchange {

namespace {

constexpr std::size_t kLongest = 64;
constexpr std::string_view kEscaped = "x.";

std::string written(std::string_view id)
{
    if (id.find_first_of("_:") == std::string_view::npos && !id.starts_with(kEscaped))
        return std::string(id);
    std::string out(kEscaped);
    for (const char c : id)
        out += c == '.' || c == '_' || c == ':' ? fmt::format(".{:02x}", static_cast<unsigned char>(c))
                                                : std::string(1, c);
    return out;
}

} // namespace

const std::string& FhirIds::of(const std::string& id)
{
    const auto [given, fresh] = m_given.try_emplace(id);
    if (!fresh)
        return given->second;
    std::string out = written(id);
    for (std::size_t n = m_given.size(); out.size() > kLongest || m_taken.contains(out); ++n)
        out = fmt::format("x.n{}", n);
    m_taken.emplace(out, id);
    given->second = std::move(out);
    return given->second;
}

} // namespace firstdew::exchange
