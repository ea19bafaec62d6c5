#pragma once

#include "facts/Result.h"

#include <string>
#include <string_view>

// Encryption by a passphrase in the OpenPGP format (RFC 4880), so that a back-up opens without this program:
// `gpg -d FILE` on any computer. The library draws salt and session key from the system's generator.
namespace firstdew::journal {

/// Rounds of hashing that make guessing a passphrase slow (the most RFC 4880 can express).
inline constexpr unsigned kPassphraseRounds = 65'011'712;

/// Bytes of the longest passphrase that librnp can be given when it decrypts.
inline constexpr std::size_t kLongestPassphrase = 255;

/// Encrypts with AES-256 and integrity protection (SEIPD). Refused: an empty passphrase, and one
/// of more than kLongestPassphrase bytes, with which nothing could be opened again.
[[nodiscard]] facts::Result<std::string> seal(std::string_view plain, const std::string& passphrase,
                                              unsigned rounds = kPassphraseRounds);

/// Decrypts what `seal` or `gpg --symmetric` made. Refused: a wrong passphrase, anything cut or changed, a message
/// without integrity protection, no OpenPGP at all.
[[nodiscard]] facts::Result<std::string> unseal(std::string_view sealed, const std::string& passphrase);

} // namespace firstdew::journal
