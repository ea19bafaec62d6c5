// Declarations repeated from Apple's documentation, as few as platform/ios uses: for a check of syntax and types alone.
#pragma once
#import <Foundation/Foundation.h>
#include <stdint.h>

@class UIViewController, UIApplication;
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
typedef struct {
    CGFloat top, left, bottom, right;
} UIEdgeInsets;
@interface UIView : NSObject
@property(readonly) UIEdgeInsets safeAreaInsets;
- (void)safeAreaInsetsDidChange;
@property(getter=isUserInteractionEnabled) BOOL userInteractionEnabled;
- (instancetype)initWithFrame:(CGRect)frame;
@property CGRect bounds;
@property(copy) UIColor* backgroundColor;
- (void)addSubview:(UIView*)view;
- (void)removeFromSuperview;
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
- (instancetype)initForOpeningContentTypes:(NSArray*)types asCopy:(BOOL)asCopy;
@property(weak) id<UIDocumentPickerDelegate> delegate;
@property BOOL allowsMultipleSelection;
@end
typedef enum : NSInteger {
    UIImpactFeedbackStyleLight,
    UIImpactFeedbackStyleMedium,
    UIImpactFeedbackStyleHeavy
} UIImpactFeedbackStyle;
@interface UIImpactFeedbackGenerator : NSObject
- (instancetype)initWithStyle:(UIImpactFeedbackStyle)style;
- (void)impactOccurred;
@end
typedef enum : NSInteger {
    UIUserInterfaceIdiomUnspecified = -1,
    UIUserInterfaceIdiomPhone,
    UIUserInterfaceIdiomPad
} UIUserInterfaceIdiom;
@interface UIDevice : NSObject
@property(class, readonly) UIDevice* currentDevice;
@property(readonly) UIUserInterfaceIdiom userInterfaceIdiom;
@end
@interface UIScene : NSObject
@end
@interface UIWindowScene : UIScene
@property(readonly) NSArray<UIWindow*>* windows;
@end
extern BOOL UIAccessibilityIsReduceMotionEnabled(void);
extern BOOL UIAccessibilityIsVoiceOverRunning(void);
typedef uint32_t UIAccessibilityNotifications;
extern UIAccessibilityNotifications UIAccessibilityAnnouncementNotification;
extern UIAccessibilityNotifications UIAccessibilityScreenChangedNotification;
extern void UIAccessibilityPostNotification(UIAccessibilityNotifications notification, id argument);
extern NSString* const UIApplicationWillResignActiveNotification;
extern NSString* const UIApplicationDidBecomeActiveNotification;
@interface UIApplication : NSObject
- (void)openURL:(NSURL*)url options:(NSDictionary*)options completionHandler:(void (^)(BOOL success))completion;
@property(class, readonly) UIApplication* sharedApplication;
@property(readonly) NSSet<UIScene*>* connectedScenes;
@property(getter=isIdleTimerDisabled) BOOL idleTimerDisabled;
@end
