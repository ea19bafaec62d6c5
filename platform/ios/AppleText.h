#pragma once

#import <Foundation/Foundation.h>

#include <string>

namespace firstdew::iosside {

/// Empty where the bytes are no UTF-8: the system's classes raise an exception for nil.
inline NSString* _Nonnull toApple(const std::string& bytes)
{
    NSString* made = [NSString stringWithUTF8String:bytes.c_str()];
    return made == nil ? @"" : made;
}

/// Empty for nil.
inline std::string fromApple(NSString* _Nullable string)
{
    const char* bytes = string.UTF8String;
    return bytes == nullptr ? std::string() : std::string(bytes);
}

} // namespace firstdew::iosside
