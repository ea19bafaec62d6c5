#pragma once

// Parts of the program that few starts need bring many libraries with them, and those cost time and memory before the
// first picture. Such a part stands in a file of its own beside the program and is loaded when it is first wanted.
namespace firstdew::late {

/// What the part `name` offers (late/Parts.h); null, and a line in the log, where the part is missing.
[[nodiscard]] const void* offered(const char* name);

} // namespace firstdew::late
