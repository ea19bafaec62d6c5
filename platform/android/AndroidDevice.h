#pragma once

#include "android/JavaSide.h"
#include "ports/Sharer.h"
#include "ports/WakeGuard.h"

#include <optional>
#include <string>

namespace firstdew::androidside
{

/// The system's share sheet, through a provider that gives that one file alone.
class AndroidSharer : public ports::Sharer
{
public:
    explicit AndroidSharer(const JavaSide& java) : m_java(java) {}
    [[nodiscard]] bool share(const std::string& file, const std::string& mimeType) override;

private:
    const JavaSide& m_java;
};

/// Keeps the activity's window on.
class AndroidWakeGuard : public ports::WakeGuard
{
public:
    explicit AndroidWakeGuard(const JavaSide& java) : m_java(java) {}
    void keepAwake(bool on) override;

private:
    const JavaSide& m_java;
};

/// The foreground notification of a running bath, with its countdown.
class BathNotice
{
public:
    explicit BathNotice(const JavaSide& java) : m_java(java) {}
    /// `endWallMs` is when the step ends, ms since 1970 UTC; nothing for a step that waits for the person.
    /// False where the system refused it; the bath goes on, but the system may stop an app that it does not see.
    [[nodiscard]] bool show(const std::string& title, const std::string& text, std::optional<long long> endWallMs);
    void over();

private:
    const JavaSide& m_java;
};

} // namespace firstdew::androidside
