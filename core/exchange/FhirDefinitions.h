#pragma once

#include <string>

namespace firstdew::exchange {

/// What the FHIR bundle refers to, as an HL7 FHIR R4 (4.0.1) Bundle of type collection: a CodeSystem for each of our
/// own systems, a StructureDefinition for each extension, and the Questionnaire for the severity of sweating. It stands
/// in the tree as fhir-definitions.json.
[[nodiscard]] std::string fhirDefinitions();

} // namespace firstdew::exchange
