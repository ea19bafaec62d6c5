#pragma once

#include <map>
#include <string>
#include <string_view>

namespace firstdew::exchange {

/// Our ids in the alphabet of FHIR's (letters, digits, '-' and '.', up to 64), two never the same. An id that is one of
/// FHIR's stays; any other is written behind "x.", with '.', '_' and ':' as their code. What gets too long for that, or
/// would meet another, is numbered within one bundle.
class FhirIds {
public:
    [[nodiscard]] const std::string& of(const std::string& id);

private:
    std::map<std::string, std::string, std::less<>> m_given;
    std::map<std::string, std::string, std::less<>> m_taken; ///< by whom
};

} // namespace firstdew::exchange
