#pragma once

#include "facts/Fact.h"

#include <span>
#include <string>

namespace firstdew::exchange {

using namespace facts;

struct FhirOptions {
    bool names = false;    ///< name and birth date of the person; left out unless asked for
    long long stampMs = 0; ///< moment of writing, for Bundle.timestamp
};

/// The record as an HL7 FHIR R4 (4.0.1) Bundle of type collection: a Patient per person; Observations for diary levels,
/// HDSS, weighings and side effects; a QuestionnaireResponse for each HDSS answer; Procedures for sessions, current and
/// charge as extensions; MedicationStatements, or Procedures, for other treatments. Corrections are applied. Codes are
/// of SNOMED CT where one means the same, and of our own systems, which fhirDefinitions() publishes. FHIR has no local
/// time without a zone: a diary line carries its day, and the minute in an extension.
[[nodiscard]] std::string fhirBundle(std::span<const Fact> facts, const FhirOptions& options);

} // namespace firstdew::exchange
