#pragma once

#include "ports/Sharer.h"
#include "ports/WakeGuard.h"

namespace firstdew::iosside
{

/// The system's share sheet. (What has been checked of it: see AppleNotifier.h.)
class AppleSharer : public ports::Sharer
{
public:
    [[nodiscard]] bool share(const std::string& file, const std::string& mimeType) override;
};

/// Keeps the screen on while a session runs, and lets prompts be heard over the silent switch and over other sound.
class AppleWakeGuard : public ports::WakeGuard
{
public:
    void keepAwake(bool on) override;
};

} // namespace firstdew::iosside
