#pragma once

#include <functional>
#include <optional>
#include <string>

namespace firstdew::ports {

/// Lets the person choose a file with the system's own chooser.
class FileChooser {
public:
    /// The path of a file that can be read now, or nullopt if the person chose none.
    using Chosen = std::function<void(std::optional<std::string> path)>;

    virtual ~FileChooser() = default;
    /// Asks for one file whose name ends in one of `endings`, parted by spaces ("json png"). `chosen` is called once,
    /// in the main thread, after this returned. Returns false if the system has no chooser; then `chosen` is never
    /// called. A second request drops the first one.
    [[nodiscard]] virtual bool choose(const std::string& title, const std::string& endings, Chosen chosen) = 0;
    /// Asks for a folder in the same way. False where the system lets nobody choose one.
    [[nodiscard]] virtual bool chooseFolder(const std::string& /*title*/, Chosen /*chosen*/) { return false; }
};

} // namespace firstdew::ports
