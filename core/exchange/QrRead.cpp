#include "exchange/QrRead.h"

#define ZX_USE_UTF8 1 // ZXing 1.4 of Debian 12 otherwise gives wide characters
#include <ZXing/ReadBarcode.h>

namespace firstdew::exchange {

namespace {

#if __has_include(<ZXing/ReaderOptions.h>)
using Options = ZXing::ReaderOptions;
#else // ZXing 1.4 of Debian 12
using Options = ZXing::DecodeHints;
#endif

} // namespace

bool mayBeLookedAt(int width, int height)
{
    return width > 0 && height > 0 && static_cast<std::size_t>(width) <= kMostPixels / static_cast<std::size_t>(height);
}

facts::Result<std::string> readQrCode(std::span<const unsigned char> grey, int width, int height)
{
    if (!mayBeLookedAt(width, height) ||
        static_cast<std::size_t>(width) * static_cast<std::size_t>(height) != grey.size())
        return facts::Error{"picture-unusable", "", "is no picture that can be looked at; take another one"};
    const auto options = Options().setFormats(ZXing::BarcodeFormat::QRCode).setTryHarder(true).setTryRotate(true);
    const auto found = ZXing::ReadBarcode({grey.data(), width, height, ZXing::ImageFormat::Lum}, options);
    if (!found.isValid())
        return facts::Error{"no-code", "",
                            "shows no code that can be read; take it straight from the front, near and in good light"};
    return found.text();
}

} // namespace firstdew::exchange
