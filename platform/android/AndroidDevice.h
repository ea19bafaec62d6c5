#pragma once

#include "android/JavaSide.h"
#include "ports/Haptics.h"
#include "ports/Opener.h"
#include "ports/SessionNotice.h"
#include "ports/Sharer.h"
#include "ports/WakeGuard.h"

#include <string>
#include <vector>

namespace firstdew::androidside {

/// The system's share sheet, through a provider that gives that one file alone.
class AndroidSharer : public ports::Sharer {
public:
    explicit AndroidSharer(const JavaSide& java) : m_java(java) {}
    [[nodiscard]] bool share(const std::string& file, const std::string& mimeType) override;

private:
    const JavaSide& m_java;
};

/// The app that shows such files, through the same provider. Folders are shown by none.
class AndroidOpener : public ports::Opener {
public:
    explicit AndroidOpener(const JavaSide& java) : m_java(java) {}
    [[nodiscard]] bool open(const std::string& path) override;

private:
    const JavaSide& m_java;
};

/// The phone's motor. What a call throws is no matter to a session, and is left at a line in the log.
class AndroidHaptics : public ports::Haptics {
public:
    explicit AndroidHaptics(const JavaSide& java) : m_java(java) {}
    [[nodiscard]] bool present() const override;
    void pulse() override;
    void alarm() override;
    void still() override;

private:
    /// Milliseconds still and shaking in turn; none: ends what runs.
    void shake(const std::vector<int>& timings);

    const JavaSide& m_java;
};

/// Keeps the activity's window on, and has other programs play softly meanwhile, so that the prompts are heard.
class AndroidWakeGuard : public ports::WakeGuard {
public:
    explicit AndroidWakeGuard(const JavaSide& java) : m_java(java) {}
    void keepAwake(bool on) override;

private:
    const JavaSide& m_java;
};

/// The foreground notification of a running bath, with its countdown.
class BathNotice : public ports::SessionNotice {
public:
    explicit BathNotice(const JavaSide& java) : m_java(java) {}
    void show(const ports::SessionStep& step) override;
    void over() override;

private:
    const JavaSide& m_java;
};

} // namespace firstdew::androidside
