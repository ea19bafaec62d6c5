// Declarations repeated from Apple's documentation, as few as platform/ios uses: for a check of syntax and types alone.
#pragma once
#import <Foundation/Foundation.h>

@class UIViewController;
@interface UIView : NSObject
@end
@interface UIWindow : UIView
@property(readonly, getter=isKeyWindow) BOOL keyWindow;
@property(strong) UIViewController* rootViewController;
@end
@interface UIPopoverPresentationController : NSObject
@property(strong) UIView* sourceView;
@end
@interface UIViewController : NSObject
@property(strong) UIView* view;
@property(readonly) UIPopoverPresentationController* popoverPresentationController;
- (void)presentViewController:(UIViewController*)other animated:(BOOL)animated completion:(void (^)(void))completion;
@end
@interface UIActivityViewController : UIViewController
- (instancetype)initWithActivityItems:(NSArray*)items applicationActivities:(NSArray*)activities;
@end
@interface UIScene : NSObject
@end
@interface UIWindowScene : UIScene
@property(readonly) NSArray<UIWindow*>* windows;
@end
@interface UIApplication : NSObject
@property(class, readonly) UIApplication* sharedApplication;
@property(readonly) NSSet<UIScene*>* connectedScenes;
@property(getter=isIdleTimerDisabled) BOOL idleTimerDisabled;
@end
