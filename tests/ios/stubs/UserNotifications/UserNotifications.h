// Declarations repeated from Apple's documentation, as few as platform/ios uses: for a check of syntax and types alone.
#pragma once
#import <Foundation/Foundation.h>

typedef enum : NSUInteger {
    UNNotificationActionOptionNone = 0,
    UNNotificationActionOptionAuthenticationRequired = 1 << 0,
    UNNotificationActionOptionDestructive = 1 << 1,
    UNNotificationActionOptionForeground = 1 << 2
} UNNotificationActionOptions;
typedef enum : NSUInteger { UNNotificationCategoryOptionNone = 0 } UNNotificationCategoryOptions;
typedef NSUInteger UNAuthorizationOptions;
static const UNAuthorizationOptions UNAuthorizationOptionBadge = 1 << 0, UNAuthorizationOptionSound = 1 << 1, UNAuthorizationOptionAlert = 1 << 2;
typedef enum : NSUInteger { UNNotificationPresentationOptionNone = 0 } UNNotificationPresentationOptions;
extern NSString* const UNNotificationDefaultActionIdentifier;

@class UNUserNotificationCenter;

@interface UNNotificationSound : NSObject
@property(class, readonly) UNNotificationSound* defaultSound;
@end
@interface UNNotificationContent : NSObject
@end
@interface UNMutableNotificationContent : UNNotificationContent
@property(copy) NSString* title;
@property(copy) NSString* body;
@property(copy) UNNotificationSound* sound;
@property(copy) NSString* categoryIdentifier;
@end
@interface UNNotificationTrigger : NSObject
@end
@interface UNCalendarNotificationTrigger : UNNotificationTrigger
+ (instancetype)triggerWithDateMatchingComponents:(NSDateComponents*)components repeats:(BOOL)repeats;
@end
@interface UNTimeIntervalNotificationTrigger : UNNotificationTrigger
+ (instancetype)triggerWithTimeInterval:(NSTimeInterval)interval repeats:(BOOL)repeats;
@end
@interface UNNotificationRequest : NSObject
@property(readonly, copy) NSString* identifier;
@property(readonly, copy) UNNotificationContent* content;
+ (instancetype)requestWithIdentifier:(NSString*)identifier content:(UNNotificationContent*)content trigger:(UNNotificationTrigger*)trigger;
@end
@interface UNNotification : NSObject
@property(readonly, copy) UNNotificationRequest* request;
@end
@interface UNNotificationResponse : NSObject
@property(readonly, copy) UNNotification* notification;
@property(readonly, copy) NSString* actionIdentifier;
@end
@interface UNNotificationAction : NSObject
+ (instancetype)actionWithIdentifier:(NSString*)identifier title:(NSString*)title options:(UNNotificationActionOptions)options;
@end
@interface UNNotificationCategory : NSObject
+ (instancetype)categoryWithIdentifier:(NSString*)identifier
                               actions:(NSArray<UNNotificationAction*>*)actions
                     intentIdentifiers:(NSArray<NSString*>*)intents
                               options:(UNNotificationCategoryOptions)options;
@end
@protocol UNUserNotificationCenterDelegate <NSObject>
@optional
- (void)userNotificationCenter:(UNUserNotificationCenter*)center
       willPresentNotification:(UNNotification*)notification
         withCompletionHandler:(void (^)(UNNotificationPresentationOptions))handler;
- (void)userNotificationCenter:(UNUserNotificationCenter*)center
    didReceiveNotificationResponse:(UNNotificationResponse*)response
             withCompletionHandler:(void (^)(void))handler;
@end
@interface UNUserNotificationCenter : NSObject
@property(weak) id<UNUserNotificationCenterDelegate> delegate;
+ (UNUserNotificationCenter*)currentNotificationCenter;
- (void)requestAuthorizationWithOptions:(UNAuthorizationOptions)options completionHandler:(void (^)(BOOL granted, NSError* error))handler;
- (void)setNotificationCategories:(NSSet<UNNotificationCategory*>*)categories;
- (void)addNotificationRequest:(UNNotificationRequest*)request withCompletionHandler:(void (^)(NSError* error))handler;
- (void)getPendingNotificationRequestsWithCompletionHandler:(void (^)(NSArray<UNNotificationRequest*>* requests))handler;
- (void)removePendingNotificationRequestsWithIdentifiers:(NSArray<NSString*>*)identifiers;
- (void)removeDeliveredNotificationsWithIdentifiers:(NSArray<NSString*>*)identifiers;
@end
