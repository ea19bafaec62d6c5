#pragma once

// Catch2 3 (Debian 13) has no header of this name; Catch2 2 (Debian 12) has no other. tests/CMakeLists.txt adds this
// folder to the include path for Catch2 3 only.
#include <catch2/catch_all.hpp>

using Catch::Approx; // Catch2 2 declares it globally
