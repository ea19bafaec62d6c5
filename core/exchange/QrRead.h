#pragma once

#include "facts/Result.h"

#include <span>
#include <string>

namespace firstdew::exchange {

/// Pixels of the largest picture in which a code is looked for.
inline constexpr std::size_t kMostPixels = 64'000'000;
/// Bytes of the largest file that is opened as a picture, our own choice: a photo takes a quarter.
inline constexpr std::size_t kMostPictureBytes = 32U << 20U;

/// Whether a picture of that size is looked at: it has pixels, and no more than kMostPixels.
[[nodiscard]] bool mayBeLookedAt(int width, int height);

/// The text of the QR code in a picture: brightness 0 to 255, row by row, without gaps. The code may be turned, tilted,
/// dim or noisy. Refused: no code that can be read (no-code), a size that does not fit the bytes, more than
/// kMostPixels.
[[nodiscard]] facts::Result<std::string> readQrCode(std::span<const unsigned char> grey, int width, int height);

} // namespace firstdew::exchange
