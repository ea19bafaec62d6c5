// Declarations of Apple's, as few as platform/ios uses. ../../declarations.py holds them against the objc2 crates.
#pragma once
#import <Foundation/Foundation.h>

NS_ASSUME_NONNULL_BEGIN

@interface UTType : NSObject
@end
FOUNDATION_EXPORT UTType* const UTTypeItem;

NS_ASSUME_NONNULL_END
