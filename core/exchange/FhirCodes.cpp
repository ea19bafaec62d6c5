#include "exchange/FhirCodes.h"

namespace firstdew::exchange {

using nlohmann::ordered_json;

std::string fhirUrl(std::string_view tail) { return std::string(kFhirBase) + std::string(tail); }

ordered_json fhirConcept(std::string_view system, std::string_view code, std::string_view text)
{
    return {{"coding", {{{"system", fhirUrl("CodeSystem/") + std::string(system)}, {"code", code}, {"display", text}}}},
            {"text", text}};
}

} // namespace firstdew::exchange
