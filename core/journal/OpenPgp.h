#pragma once

#include "facts/Result.h"

#include <string>
#include <string_view>

// Encryption by a passphrase in the OpenPGP format (RFC 4880), so that a back-up opens without this program:
// `gpg -d FILE` on any computer. The library draws salt and session key from the system's generator.
namespace firstdew::journal {

/// Rounds of hashing that make guessing a passphrase slow (the most RFC 4880 can express).
inline constexpr unsigned kPassphraseRounds = 65'011'712;

/// Characters of the shortest passphrase for a new back-up: our own choice, cautious. Older ones open with any.
inline constexpr std::size_t kLeastPassphrase = 8;

/// Bytes of the longest passphrase that librnp can be given when it decrypts.
inline constexpr std::size_t kLongestPassphrase = 255;

/// Bytes that are unpacked at most where the caller names no bound.
inline constexpr std::size_t kMostUnsealed = 128U << 20U;

/// Encrypts with AES-256 and integrity protection (SEIPD). Refused: an empty passphrase, and one
/// of more than kLongestPassphrase bytes, with which nothing could be opened again.
[[nodiscard]] facts::Result<std::string> seal(std::string_view plain, const std::string& passphrase,
                                              unsigned rounds = kPassphraseRounds);

/// Decrypts what `seal` or `gpg --symmetric` made. Refused: a wrong passphrase, anything cut or changed, a message
/// without integrity protection, no OpenPGP at all, and what comes to more than `most` bytes: a small file may be
/// packed to unpack to any size.
[[nodiscard]] facts::Result<std::string> unseal(std::string_view sealed, const std::string& passphrase,
                                                std::size_t most = kMostUnsealed);

} // namespace firstdew::journal
