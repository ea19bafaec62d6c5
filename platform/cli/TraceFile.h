#pragma once

#include "bath/Trace.h"

#include <string>
#include <vector>

namespace firstdew::cli {

/// Reads meter readings: CSV with a first line `second,milliamp`. Refused, naming file and line: another first line,
/// a line without two numbers, what bath::refusalOfTrace refuses, a file without readings.
std::vector<bath::TracePoint> readTrace(const std::string& file);

} // namespace firstdew::cli
