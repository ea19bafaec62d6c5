#pragma once

#include <string>

namespace firstdew::ports {

/// Shows a file or a folder in the program that the person uses for it.
class Opener {
public:
    virtual ~Opener() = default;
    /// Returns false if the path does not exist or if no program can show it.
    [[nodiscard]] virtual bool open(const std::string& path) = 0;
};

} // namespace firstdew::ports
