#include "exchange/QrCode.h"

#include <fmt/format.h>
#include <memory>
#include <qrencode.h>

namespace firstdew::exchange {

namespace {

constexpr int kQuiet = 4; // ISO/IEC 18004: four modules on every side

} // namespace

facts::Result<QrCode> qrCodeOf(std::string_view text)
{
    const std::unique_ptr<QRcode, void (*)(QRcode*)> made(
        QRcode_encodeData(static_cast<int>(text.size()), reinterpret_cast<const unsigned char*>(text.data()), 0,
                          QR_ECLEVEL_M),
        &QRcode_free);
    if (!made)
        return facts::Error{
            "qr-too-long", "",
            fmt::format("{} bytes do not fit one QR code; shorten the notes, or send the file", text.size())};
    QrCode out{made->width, {}};
    const int modules = made->width * made->width;
    for (int i = 0; i < modules; ++i)
        out.dark.push_back((made->data[i] & 1U) != 0);
    return out;
}

std::string qrSvg(const QrCode& code)
{
    const int side = code.size + 2 * kQuiet;
    std::string path;
    for (int row = 0; row < code.size; ++row)
        for (int column = 0; column < code.size; ++column)
            if (code.at(column, row))
                path += fmt::format("M{} {}h1v1h-1z", column + kQuiet, row + kQuiet);
    return fmt::format("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {0} {0}\" width=\"{1}\" height=\"{1}\" "
                       "shape-rendering=\"crispEdges\">"
                       "<path fill=\"#fff\" d=\"M0 0h{0}v{0}H0z\"/><path fill=\"#000\" d=\"{2}\"/></svg>\n",
                       side, side * 4, path);
}

} // namespace firstdew::exchange
