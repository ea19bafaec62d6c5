#pragma once

#include <catch2/catch.hpp>
#include <cstdlib>
#include <fstream>
#include <string>
#include <vector>

namespace build {

/// Holds what the rules tell, line by line, to what is written in told/NAME.txt and was read against them by hand. With
/// FIRSTDEW_WRITE_TOLD set it is written anew instead, to be read again before it is kept.
inline void checkTold(const std::string& name, const std::vector<std::string>& lines)
{
    const std::string file = std::string(SOURCE_DIR) + "/tests/core/told/" + name + ".txt";
    if (std::getenv("FIRSTDEW_WRITE_TOLD") != nullptr) {
        std::ofstream out(file);
        for (const auto& line : lines)
            out << line << '\n';
        FAIL("written anew, to be read: " << file);
    }
    std::ifstream in(file);
    REQUIRE(in);
    std::string written;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        INFO(file << ":" << i + 1);
        REQUIRE(std::getline(in, written));
        REQUIRE(lines[i] == written);
    }
    CHECK_FALSE(std::getline(in, written));
}

} // namespace build
