#include "journal/BackUp.h"

#include <cstdint>

using namespace firstdew;

/// A back-up from anywhere: opened or refused.
extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, size_t size)
{
    (void)journal::openBackUp("file", {reinterpret_cast<const char*>(data), size}, "word");
    return 0;
}
