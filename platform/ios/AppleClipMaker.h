#pragma once

#include "ports/ClipMaker.h"

#include <memory>

namespace firstdew::iosside {

/// The system's speech synthesizer, into files. AppleNotifier.h says what was checked.
class AppleClipMaker : public ports::ClipMaker {
public:
    AppleClipMaker();
    ~AppleClipMaker() override;
    void speak(const std::string& language, const std::string& text, const std::string& file,
               std::function<void(bool)> answer) override;
    void drop() override;

private:
    struct Inside;
    std::shared_ptr<Inside> m_inside; // what the system calls later may come after this object
};

} // namespace firstdew::iosside
