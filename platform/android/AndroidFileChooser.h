#pragma once

#include "android/JavaSide.h"
#include "ports/FileChooser.h"

namespace firstdew::androidside {

/// The system's document picker. Java copies the chosen document into the app's cache and keeps its path.
class AndroidFileChooser : public ports::FileChooser {
public:
    explicit AndroidFileChooser(const JavaSide& java) : m_java(java) {}
    [[nodiscard]] bool choose(const std::string& title, const std::string& ending, Chosen chosen) override;
    /// Tells the answer if there is one. Call when the app is in front again.
    void lookForAnswer();

private:
    const JavaSide& m_java;
    Chosen m_chosen;
};

} // namespace firstdew::androidside
