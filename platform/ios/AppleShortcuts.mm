#include "ios/AppleShortcuts.h"
#include "ios/AppleText.h"

#import <UIKit/UIKit.h>

namespace
{

std::function<void(const std::string&)> listener;
// The shortcut that started the app is told before somebody listens.
NSString* waiting;

} // namespace

// Qt's application delegate (up to the versions that use scenes, whose delegate has a method of the same kind). It has no
// method for shortcuts, so this one does not replace any.
@interface QIOSApplicationDelegate : UIResponder <UIApplicationDelegate>
@end

@interface QIOSApplicationDelegate (FirstdewShortcuts)
@end

@implementation QIOSApplicationDelegate (FirstdewShortcuts)

- (void)application:(UIApplication*)application
    performActionForShortcutItem:(UIApplicationShortcutItem*)item
               completionHandler:(void (^)(BOOL))done
{
    (void)application;
    if (listener)
        listener(firstdew::iosside::fromApple(item.type));
    else
        waiting = item.type;
    done(YES);
}

@end

namespace firstdew::iosside
{

void hearOfShortcuts(std::function<void(const std::string& place)> opened)
{
    listener = std::move(opened);
    if (waiting != nil)
        listener(fromApple(waiting));
    waiting = nil;
}

} // namespace firstdew::iosside
