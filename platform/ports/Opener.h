#pragma once

#include <string>

namespace firstdew::ports {

/// Shows a file or a folder in the program that the person uses for such.
class Opener {
public:
    virtual ~Opener() = default;
    /// False where it is not there, or where the system has nothing that shows it.
    [[nodiscard]] virtual bool open(const std::string& path) = 0;
};

} // namespace firstdew::ports
