#pragma once

#include "facts/Result.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace firstdew::ports {

/// A file that is to leave the app.
struct OutFile {
    std::string name;
    std::string content;
};

/// Where it went.
struct SavedAs {
    /// The place as the system names it to the person: a path, or a name alone.
    std::string where;
    /// Where the app can read it for now; empty for several files.
    std::string file;
};

/// Lets the person choose a file, or a place for one, with the system's own chooser.
class FileChooser {
public:
    /// The path of a file that can be read now, or nullopt if the person chose none.
    using Chosen = std::function<void(std::optional<std::string> path)>;
    /// Where the files are now, nullopt if the person chose no place, or why they could not be written there.
    using Saved = std::function<void(facts::Result<std::optional<SavedAs>>)>;

    virtual ~FileChooser() = default;
    /// Asks for one file whose name ends in one of `endings`, parted by spaces ("json png"). `chosen` is called once,
    /// in the main thread, after this returned. Returns false if the system has no chooser; then `chosen` is never
    /// called. A second request, of either kind, drops the first one.
    [[nodiscard]] virtual bool choose(const std::string& title, const std::string& endings, Chosen chosen) = 0;
    /// Asks for a folder in the same way. False where the system lets nobody choose one.
    [[nodiscard]] virtual bool chooseFolder(const std::string& /*title*/, Chosen /*chosen*/) { return false; }
    /// Asks for a place and writes there: one file under a name that the person may change, several into a folder. They
    /// are there whole or not at all. `saved` is called as `chosen` is.
    [[nodiscard]] virtual bool save(const std::string& title, std::vector<OutFile> files, Saved saved) = 0;
    /// Removes the copies that the app still has of what was chosen, saved or shared.
    virtual void dropCopies() {}
};

} // namespace firstdew::ports
