#include "exchange/QrRead.h"

#include <ZXing/ReadBarcode.h>
#include <ZXing/TextUtfEncoding.h>

namespace firstdew::exchange {

facts::Result<std::string> readQrCode(std::span<const unsigned char> grey, int width, int height)
{
    const auto pixels =
        width > 0 && height > 0 ? static_cast<std::size_t>(width) * static_cast<std::size_t>(height) : 0;
    if (pixels == 0 || pixels > kMostPixels || pixels != grey.size())
        return facts::Error{"picture-unusable", "", "is no picture that can be looked at; take another one"};
    const auto hints =
        ZXing::DecodeHints().setFormats(ZXing::BarcodeFormat::QRCode).setTryHarder(true).setTryRotate(true);
    const auto found = ZXing::ReadBarcode({grey.data(), width, height, ZXing::ImageFormat::Lum}, hints);
    if (!found.isValid())
        return facts::Error{"no-code", "",
                            "shows no code that can be read; take it straight from the front, near and in good light"};
    return ZXing::TextUtfEncoding::ToUtf8(found.text());
}

} // namespace firstdew::exchange
