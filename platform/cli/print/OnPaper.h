#pragma once

#include "print/PdfFile.h"

#include <functional>
#include <string>

namespace firstdew::cli {

/// The paper of that name; refuses another one.
[[nodiscard]] print::Paper paperOption(const std::string& paper);

/// Runs `work` with what a page needs to be drawn without a screen, in that language. Refuses an unknown language.
void onPaper(const std::string& language, const std::function<void()>& work);

} // namespace firstdew::cli
