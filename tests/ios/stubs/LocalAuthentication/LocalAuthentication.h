// Declarations of Apple's, as few as platform/ios uses. ../../declarations.py holds them against the objc2 crates.
#pragma once
#import <Foundation/Foundation.h>

NS_ASSUME_NONNULL_BEGIN

typedef NS_ENUM(NSInteger, LAPolicy) { LAPolicyDeviceOwnerAuthentication = 2 };
typedef NS_ENUM(NSInteger, LAError) {
    LAErrorUserCancel = -2,
    LAErrorSystemCancel = -4,
    LAErrorPasscodeNotSet = -5,
    LAErrorAppCancel = -9
};

@interface LAContext : NSObject
- (BOOL)canEvaluatePolicy:(LAPolicy)policy error:(NSError* _Nullable* _Nullable)error;
- (void)evaluatePolicy:(LAPolicy)policy
       localizedReason:(NSString*)localizedReason
                 reply:(void (^)(BOOL success, NSError* _Nullable error))reply;
- (void)invalidate;
@end

NS_ASSUME_NONNULL_END
