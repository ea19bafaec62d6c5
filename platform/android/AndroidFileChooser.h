#pragma once

#include "android/JavaSide.h"
#include "ports/FileChooser.h"

#include <filesystem>

namespace firstdew::androidside {

/// The system's document picker. Java copies a chosen document into the app's cache and keeps its path; what is saved
/// it copies from there to the place that the person chose.
class AndroidFileChooser : public ports::FileChooser {
public:
    /// `outgoing` is a folder of the app's own for what is on its way out.
    AndroidFileChooser(const JavaSide& java, std::filesystem::path outgoing)
        : m_java(java), m_outgoing(std::move(outgoing))
    {
    }
    [[nodiscard]] bool choose(const std::string& title, const std::string& ending, Chosen chosen) override;
    [[nodiscard]] bool save(const std::string& title, std::vector<ports::OutFile> files, Saved saved) override;
    void dropCopies() override;
    /// Tells the answer if there is one. Call when the app is in front again.
    void lookForAnswer();

private:
    void lookForSaved();

    const JavaSide& m_java;
    std::filesystem::path m_outgoing;
    Chosen m_chosen;
    Saved m_saved;
    std::string m_file; ///< the copy of a single file that is being saved
};

} // namespace firstdew::androidside
