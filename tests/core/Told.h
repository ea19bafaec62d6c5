#pragma once

#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <fstream>
#include <string>
#include <vector>

namespace build {

/// Lines of `told` and `written` that are not in the other, in order: "-" before what stood there, "+" before what is
/// told now. Empty where both are the same.
inline std::string differenceOf(const std::vector<std::string>& written, const std::vector<std::string>& told)
{
    const std::size_t n = written.size();
    const std::size_t m = told.size();
    std::vector<std::vector<int>> common(n + 1, std::vector<int>(m + 1)); // of what follows
    for (std::size_t i = n; i-- > 0;)
        for (std::size_t j = m; j-- > 0;)
            common[i][j] =
                written[i] == told[j] ? common[i + 1][j + 1] + 1 : std::max(common[i + 1][j], common[i][j + 1]);
    std::string out;
    for (std::size_t i = 0, j = 0; i < n || j < m;) {
        if (i < n && j < m && written[i] == told[j])
            ++i, ++j;
        else if (j == m || (i < n && common[i + 1][j] >= common[i][j + 1]))
            out += std::to_string(i + 1) + " - " + written[i] + '\n', ++i;
        else
            out += std::to_string(i + 1) + " + " + told[j] + '\n', ++j;
    }
    return out;
}

/// Holds what the rules tell, line by line, to what is written in told/NAME.txt and was read against them by hand; a
/// failure shows the lines that differ. With FIRSTDEW_WRITE_TOLD set the file is written anew instead, to be read again
/// before it is kept.
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
    std::vector<std::string> written;
    for (std::string line; std::getline(in, line);)
        written.push_back(line);
    INFO(file << " (line, - written, + told now):\n" << differenceOf(written, lines));
    CHECK(written == lines);
}

} // namespace build
