#include "journal/OpenPgp.h"

#include <cstring>
#include <fmt/format.h>
#include <optional>
#include <rnp/rnp.h>
#include <rnp/rnp_err.h>
#include <utility>

namespace firstdew::journal {

using facts::Error;
using facts::Result;

namespace {

/// An owned handle of the library.
template <class Handle, auto destroy>
class Owned {
public:
    Owned() = default;
    Owned(const Owned&) = delete;
    Owned& operator=(const Owned&) = delete;
    ~Owned()
    {
        if (m_handle != nullptr)
            (void)destroy(m_handle);
    }
    Handle* out() { return &m_handle; }
    operator Handle() const { return m_handle; }

private:
    Handle m_handle = nullptr;
};

using Ffi = Owned<rnp_ffi_t, rnp_ffi_destroy>;
using Input = Owned<rnp_input_t, rnp_input_destroy>;
using Output = Owned<rnp_output_t, rnp_output_destroy>;
using Encryption = Owned<rnp_op_encrypt_t, rnp_op_encrypt_destroy>;
using Verification = Owned<rnp_op_verify_t, rnp_op_verify_destroy>;
using Text = Owned<char*, [](char* text) { rnp_buffer_destroy(text); }>;

const auto* bytesOf(std::string_view text) { return reinterpret_cast<const uint8_t*>(text.data()); }

Result<std::string> contentOf(rnp_output_t output)
{
    uint8_t* bytes = nullptr;
    std::size_t length = 0;
    if (rnp_output_memory_get_buf(output, &bytes, &length, false) != RNP_SUCCESS)
        return Error{"back-up-failed", "", "there was not enough memory; close other programs and try again"};
    return std::string(reinterpret_cast<const char*>(bytes), length);
}

/// Takes what is unpacked as far as the bound.
struct Sink {
    std::size_t most = 0;
    std::string content{};
    bool full = false;

    static bool write(void* sink, const void* bytes, std::size_t length)
    {
        auto& self = *static_cast<Sink*>(sink);
        self.full = self.full || length > self.most - self.content.size();
        if (!self.full)
            self.content.append(static_cast<const char*>(bytes), length);
        return !self.full;
    }
};

/// Gives the passphrase once; asked again, it was wrong.
bool givePassphrase(rnp_ffi_t, void* context, rnp_key_handle_t, const char*, char* buffer, std::size_t size)
{
    const auto*& passphrase = *static_cast<const std::string**>(context);
    if (passphrase == nullptr || passphrase->size() >= size)
        return false;
    std::memcpy(buffer, passphrase->c_str(), passphrase->size() + 1);
    passphrase = nullptr;
    return true;
}

bool encrypt(Encryption& op, const std::string& passphrase, unsigned rounds)
{
    return rnp_op_encrypt_add_password(op, passphrase.c_str(), "SHA256", rounds, "AES256") == RNP_SUCCESS &&
           rnp_op_encrypt_set_cipher(op, "AES256") == RNP_SUCCESS &&
           rnp_op_encrypt_set_aead(op, "None") == RNP_SUCCESS &&
           rnp_op_encrypt_set_compression(op, "ZLIB", 6) == RNP_SUCCESS &&
           rnp_op_encrypt_set_file_mtime(op, 0) == RNP_SUCCESS && rnp_op_encrypt_execute(op) == RNP_SUCCESS;
}

/// Whether what was decrypted proves that nobody changed it; without that proof it is not to be trusted.
bool isProtected(rnp_op_verify_t op)
{
    Text mode;
    bool valid = false;
    return rnp_op_verify_get_protection_info(op, mode.out(), nullptr, &valid) == RNP_SUCCESS && valid;
}

/// The length of a body, or of its next part, in the new format of RFC 4880, section 4.2.2.
struct Length {
    std::size_t bytes = 0;
    bool more = false; ///< a partial body: another length follows
};

std::optional<Length> takeLength(std::string_view& rest)
{
    const auto byte = [&rest](std::size_t i) { return static_cast<std::size_t>(static_cast<unsigned char>(rest[i])); };
    std::size_t width = 1;
    Length out;
    if (rest.empty())
        return std::nullopt;
    if (byte(0) < 192) {
        out.bytes = byte(0);
    } else if (byte(0) >= 224 && byte(0) < 255) {
        out = {std::size_t{1} << (byte(0) & 0x1fU), true};
    } else {
        width = byte(0) == 255 ? 5 : 2;
        if (rest.size() < width)
            return std::nullopt;
        out.bytes = width == 2 ? ((byte(0) - 192) << 8U) + byte(1) + 192
                               : (byte(1) << 24U) + (byte(2) << 16U) + (byte(3) << 8U) + byte(4);
    }
    rest.remove_prefix(width);
    return out;
}

/// The body of a packet in the old format (section 4.2.1): 1, 2 or 4 bytes of length, or all that is left.
std::optional<Length> takeOldLength(std::string_view& rest, unsigned type)
{
    if (type == 3)
        return Length{rest.size(), false};
    const std::size_t width = std::size_t{1} << type;
    if (rest.size() < width)
        return std::nullopt;
    Length out;
    for (std::size_t i = 0; i < width; ++i)
        out.bytes = (out.bytes << 8U) + static_cast<unsigned char>(rest[i]);
    rest.remove_prefix(width);
    return out;
}

/// The packet's kind by its first byte (section 4.2).
unsigned kindOf(unsigned char tag) { return (tag & 0x40U) != 0 ? tag & 0x3fU : (tag >> 2U) & 0x0fU; }

/// Whether the file is passphrase packets and then one of protected data that ends with the file's last byte. The
/// library reads a wrong length charitably.
bool fillsWholly(std::string_view rest)
{
    constexpr unsigned passphrasePacket = 3;
    constexpr unsigned protectedData = 18;
    while (!rest.empty()) {
        const auto tag = static_cast<unsigned char>(rest.front());
        rest.remove_prefix(1);
        if ((tag & 0x80U) == 0)
            return false;
        for (bool more = true; more;) {
            const auto length = (tag & 0x40U) != 0 ? takeLength(rest) : takeOldLength(rest, tag & 3U);
            if (!length || length->bytes > rest.size())
                return false;
            rest.remove_prefix(length->bytes);
            more = length->more;
        }
        if (kindOf(tag) != passphrasePacket)
            return kindOf(tag) == protectedData && rest.empty();
    }
    return false;
}

} // namespace

Result<std::string> seal(std::string_view plain, const std::string& passphrase, unsigned rounds)
{
    if (passphrase.empty())
        return Error{"passphrase-empty", "passphrase", "is empty; choose one that only you know"};
    if (passphrase.size() > kLongestPassphrase)
        return Error{"passphrase-too-long", "passphrase", "has more than 255 bytes; choose a shorter one"};
    Ffi ffi;
    Input input;
    Output output;
    Encryption op;
    const bool done = rnp_ffi_create(ffi.out(), "GPG", "GPG") == RNP_SUCCESS &&
                      rnp_input_from_memory(input.out(), bytesOf(plain), plain.size(), false) == RNP_SUCCESS &&
                      rnp_output_to_memory(output.out(), 0) == RNP_SUCCESS &&
                      rnp_op_encrypt_create(op.out(), ffi, input, output) == RNP_SUCCESS &&
                      encrypt(op, passphrase, rounds);
    if (!done)
        return Error{"back-up-failed", "", "could not be encrypted; nothing was written, try again"};
    return contentOf(output);
}

Result<std::string> unseal(std::string_view sealed, const std::string& passphrase, std::size_t most)
{
    Ffi ffi;
    Input input;
    Output output;
    Verification op;
    Sink sink{most};
    const std::string* once = &passphrase;
    if (rnp_ffi_create(ffi.out(), "GPG", "GPG") != RNP_SUCCESS ||
        rnp_ffi_set_pass_provider(ffi, givePassphrase, &once) != RNP_SUCCESS ||
        rnp_input_from_memory(input.out(), bytesOf(sealed), sealed.size(), false) != RNP_SUCCESS ||
        rnp_output_to_callback(output.out(), Sink::write, nullptr, &sink) != RNP_SUCCESS ||
        rnp_op_verify_create(op.out(), ffi, input, output) != RNP_SUCCESS)
        return Error{"back-up-failed", "", "could not be opened; try again"};
    const rnp_result_t result = rnp_op_verify_execute(op);
    if (result == RNP_ERROR_BAD_PASSWORD || result == RNP_ERROR_DECRYPT_FAILED)
        return Error{
            "passphrase-wrong", "",
            "does not open with this passphrase, or is damaged at its beginning; try again, or take another back-up"};
    if (sink.full)
        return Error{"back-up-too-large", "",
                     fmt::format("unpacks to more than {} MB; this cannot be a back-up of Firstdew", most >> 20U)};
    if (result != RNP_SUCCESS || !isProtected(op) || !fillsWholly(sealed))
        return Error{"back-up-damaged", "", "is no back-up, or is cut short or changed; take another one"};
    return std::move(sink.content);
}

} // namespace firstdew::journal
