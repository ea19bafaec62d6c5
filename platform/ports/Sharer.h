#pragma once

#include <string>

namespace firstdew::ports {

/// Hands a file to the system: its viewer, mail or share sheet.
class Sharer {
public:
    virtual ~Sharer() = default;
    /// False where the system has nothing that takes it; the file stays where it is.
    [[nodiscard]] virtual bool share(const std::string& file, const std::string& mimeType) = 0;
};

} // namespace firstdew::ports
