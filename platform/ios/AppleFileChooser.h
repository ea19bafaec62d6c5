#pragma once

#include "ports/FileChooser.h"

namespace firstdew::iosside {

/// The system's document picker. It hands over a copy that the app may read, and puts a copy of what is saved where the
/// person chooses. AppleNotifier.h says what was checked.
class AppleFileChooser : public ports::FileChooser {
public:
    [[nodiscard]] bool choose(const std::string& title, const std::string& ending, Chosen chosen) override;
    [[nodiscard]] bool save(const std::string& title, std::vector<ports::OutFile> files, Saved saved) override;
    void dropCopies() override;
};

} // namespace firstdew::iosside
