#pragma once

#include "ports/OwnerCheck.h"

#include <memory>

namespace firstdew::iosside {

/// Face, finger or passcode, in the system's own dialog. AppleNotifier.h says what was checked.
class AppleOwnerCheck : public ports::OwnerCheck {
public:
    AppleOwnerCheck();
    ~AppleOwnerCheck() override;
    AppleOwnerCheck(const AppleOwnerCheck&) = delete;
    AppleOwnerCheck& operator=(const AppleOwnerCheck&) = delete;

    [[nodiscard]] bool available() const override;
    void ask(const std::string& why, Asking asking) override;
    void drop() override;

private:
    struct Inside;
    std::shared_ptr<Inside> m_inside; ///< the system may answer after this object is gone
};

} // namespace firstdew::iosside
