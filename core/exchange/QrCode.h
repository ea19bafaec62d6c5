#pragma once

#include "facts/Result.h"

#include <string_view>
#include <vector>

namespace firstdew::exchange {

/// The modules of a QR code (ISO/IEC 18004), without the quiet zone of four that has to surround it.
struct QrCode {
    int size = 0;
    std::vector<bool> dark; ///< size × size, row by row
    [[nodiscard]] bool at(int column, int row) const
    {
        return dark[static_cast<std::size_t>(row) * static_cast<std::size_t>(size) + static_cast<std::size_t>(column)];
    }
};

/// Bytes that the largest code holds at that level (ISO/IEC 18004, version 40-M).
inline constexpr std::size_t kMostQrBytes = 2331;

/// The text as bytes at error correction level M (15 %). Refused: nothing, and what does not fit (kMostQrBytes).
[[nodiscard]] facts::Result<QrCode> qrCodeOf(std::string_view text);

/// The code as an SVG picture with its quiet zone, black on white.
[[nodiscard]] std::string qrSvg(const QrCode& code);

} // namespace firstdew::exchange
