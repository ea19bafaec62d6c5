// Declarations repeated from Apple's documentation, as few as platform/ios uses: for a check of syntax and types alone.
#pragma once
#import <Foundation/Foundation.h>

@interface UTType : NSObject
@end
extern UTType* const UTTypeItem;
