#pragma once

#include "android/JavaSide.h"
#include "ports/OwnerCheck.h"

namespace firstdew::androidside {

/// The phone's own lock, on the system's own page.
class AndroidOwnerCheck : public ports::OwnerCheck {
public:
    explicit AndroidOwnerCheck(const JavaSide& java) : m_java(java) {}
    [[nodiscard]] bool available() const override;
    void ask(const std::string& why, Asking asking) override;
    void drop() override { m_asking = {}; }
    /// Call on the app's thread when Java says "owner" or "no-owner".
    void answered(bool confirmed);

private:
    const JavaSide& m_java;
    Asking m_asking;
};

} // namespace firstdew::androidside
