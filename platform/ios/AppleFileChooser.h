#pragma once

#include "ports/FileChooser.h"

namespace firstdew::iosside {

/// The system's document picker. It hands over a copy that the app may read. AppleNotifier.h says what was checked.
class AppleFileChooser : public ports::FileChooser {
public:
    [[nodiscard]] bool choose(const std::string& title, const std::string& ending, Chosen chosen) override;
};

} // namespace firstdew::iosside
