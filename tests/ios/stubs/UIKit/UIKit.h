// Declarations of Apple's, as few as platform/ios uses. ../../declarations.py holds them against the objc2 crates.
#pragma once
#import <Foundation/Foundation.h>

NS_ASSUME_NONNULL_BEGIN

@class UIViewController, UIApplication, UIActivity, UTType;
@interface UIResponder : NSObject
@end
@interface UIApplicationShortcutItem : NSObject
@property(readonly, copy) NSString* type;
@end
@protocol UIApplicationDelegate <NSObject>
@optional
- (void)application:(UIApplication*)application
    performActionForShortcutItem:(UIApplicationShortcutItem*)item
               completionHandler:(void (^)(BOOL succeeded))completionHandler;
@end
@interface UIColor : NSObject
@property(class, readonly) UIColor* systemBackgroundColor;
@end
typedef struct UIEdgeInsets {
    CGFloat top, left, bottom, right;
} UIEdgeInsets;
@interface UIView : UIResponder
@property(readonly) UIEdgeInsets safeAreaInsets;
- (void)safeAreaInsetsDidChange;
@property(getter=isUserInteractionEnabled) BOOL userInteractionEnabled;
- (instancetype)initWithFrame:(CGRect)frame;
@property CGRect bounds;
@property(nullable, copy) UIColor* backgroundColor;
- (void)addSubview:(UIView*)view;
- (void)removeFromSuperview;
@end
@interface UIWindow : UIView
@property(readonly, getter=isKeyWindow) BOOL keyWindow;
@property(nullable, strong) UIViewController* rootViewController;
@end
@interface UIPresentationController : NSObject
@end
@interface UIPopoverPresentationController : UIPresentationController
@property(nullable, strong) UIView* sourceView;
@end
@interface UIViewController : UIResponder
@property(nullable, strong) UIView* view;
@property(nullable, readonly) UIPopoverPresentationController* popoverPresentationController;
- (void)presentViewController:(UIViewController*)other
                     animated:(BOOL)animated
                   completion:(void (^_Nullable)(void))completion;
@end
@interface UIActivityViewController : UIViewController
- (instancetype)initWithActivityItems:(NSArray*)items applicationActivities:(nullable NSArray<UIActivity*>*)activities;
@end
@class UIDocumentInteractionController;
@protocol UIDocumentInteractionControllerDelegate <NSObject>
@optional
- (UIViewController*)documentInteractionControllerViewControllerForPreview:(UIDocumentInteractionController*)controller;
@end
@interface UIDocumentInteractionController : NSObject
+ (UIDocumentInteractionController*)interactionControllerWithURL:(NSURL*)url;
@property(weak) id<UIDocumentInteractionControllerDelegate> delegate;
- (BOOL)presentPreviewAnimated:(BOOL)animated;
@end
@class UIDocumentPickerViewController;
@protocol UIDocumentPickerDelegate <NSObject>
@optional
- (void)documentPicker:(UIDocumentPickerViewController*)picker didPickDocumentsAtURLs:(NSArray<NSURL*>*)urls;
- (void)documentPickerWasCancelled:(UIDocumentPickerViewController*)picker;
@end
@interface UIDocumentPickerViewController : UIViewController
- (instancetype)initForExportingURLs:(NSArray<NSURL*>*)urls asCopy:(BOOL)asCopy;
- (instancetype)initForOpeningContentTypes:(NSArray<UTType*>*)types asCopy:(BOOL)asCopy;
@property(weak) id<UIDocumentPickerDelegate> delegate;
@property BOOL allowsMultipleSelection;
@end
typedef NS_ENUM(NSInteger, UIImpactFeedbackStyle) {
    UIImpactFeedbackStyleLight,
    UIImpactFeedbackStyleMedium,
    UIImpactFeedbackStyleHeavy
};
@interface UIFeedbackGenerator : NSObject
@end
@interface UIImpactFeedbackGenerator : UIFeedbackGenerator
- (instancetype)initWithStyle:(UIImpactFeedbackStyle)style;
- (void)impactOccurred;
@end
typedef NS_ENUM(NSInteger, UIUserInterfaceIdiom) {
    UIUserInterfaceIdiomUnspecified = -1,
    UIUserInterfaceIdiomPhone,
    UIUserInterfaceIdiomPad
};
@interface UIDevice : NSObject
@property(class, readonly) UIDevice* currentDevice;
@property(readonly) UIUserInterfaceIdiom userInterfaceIdiom;
@end
@interface UIScene : UIResponder
@end
@interface UIWindowScene : UIScene
@property(readonly) NSArray<UIWindow*>* windows;
@end
FOUNDATION_EXPORT BOOL UIAccessibilityIsReduceMotionEnabled(void);
FOUNDATION_EXPORT BOOL UIAccessibilityIsVoiceOverRunning(void);
typedef uint32_t UIAccessibilityNotifications;
FOUNDATION_EXPORT UIAccessibilityNotifications UIAccessibilityAnnouncementNotification;
FOUNDATION_EXPORT UIAccessibilityNotifications UIAccessibilityScreenChangedNotification;
FOUNDATION_EXPORT void UIAccessibilityPostNotification(UIAccessibilityNotifications notification,
                                                       _Nullable id argument);
FOUNDATION_EXPORT NSString* const UIApplicationWillResignActiveNotification;
FOUNDATION_EXPORT NSString* const UIApplicationDidBecomeActiveNotification;
@interface UIApplication : UIResponder
- (void)openURL:(NSURL*)url
              options:(NSDictionary<NSString*, id>*)options
    completionHandler:(void (^_Nullable)(BOOL success))completion;
@property(class, readonly) UIApplication* sharedApplication;
@property(readonly) NSSet<UIScene*>* connectedScenes;
@property(getter=isIdleTimerDisabled) BOOL idleTimerDisabled;
@end

NS_ASSUME_NONNULL_END
