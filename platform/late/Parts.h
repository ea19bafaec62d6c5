#pragma once

#include "facts/Result.h"

#include <string>
#include <string_view>

// What the parts offer, each under one name.
namespace firstdew::ports {
class Voice;
}

namespace firstdew::late {

/// The part "seal": journal/OpenPgp.h.
struct Seal {
    facts::Result<std::string> (*seal)(std::string_view plain, const std::string& passphrase, unsigned rounds);
    facts::Result<std::string> (*unseal)(std::string_view sealed, const std::string& passphrase);
};

/// The part "pdf": print/PdfLanguage.h.
struct Pdf {
    facts::Result<std::string> (*inLanguage)(std::string_view pdf, const std::string& language);
};

/// The part "sound": makes a voice, the caller's own.
struct Sound {
    ports::Voice* (*make)();
};

} // namespace firstdew::late

/// Says what a part offers: FIRSTDEW_PART(Seal, {journal::seal, journal::unseal}).
#define FIRSTDEW_PART(Offer, ...)                                                                                      \
    extern "C" __attribute__((visibility("default"))) const firstdew::late::Offer firstdewPart;                        \
    const firstdew::late::Offer firstdewPart __VA_ARGS__
