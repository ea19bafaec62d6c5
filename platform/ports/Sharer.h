#pragma once

#include <string>

namespace firstdew::ports {

/// Hands a file to the system: to its viewer, mail program or share sheet.
class Sharer {
public:
    virtual ~Sharer() = default;
    /// Returns false if no program takes the file. The file stays where it is.
    [[nodiscard]] virtual bool share(const std::string& file, const std::string& mimeType) = 0;
};

} // namespace firstdew::ports
