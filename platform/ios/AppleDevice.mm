#include "ios/AppleDevice.h"

#import <AVFoundation/AVFoundation.h>
#import <Foundation/Foundation.h>
#import <UIKit/UIKit.h>

namespace firstdew::iosside
{

namespace
{

UIViewController* frontController()
{
    for (UIScene* scene in UIApplication.sharedApplication.connectedScenes)
        if ([scene isKindOfClass:UIWindowScene.class])
            for (UIWindow* window in ((UIWindowScene*)scene).windows)
                if (window.isKeyWindow)
                    return window.rootViewController;
    return nil;
}

} // namespace

bool AppleSharer::share(const std::string& file, const std::string&)
{
    UIViewController* front = frontController();
    NSString* path = [NSString stringWithUTF8String:file.c_str()];
    if (front == nil || ![NSFileManager.defaultManager isReadableFileAtPath:path])
        return false;
    UIActivityViewController* sheet = [[UIActivityViewController alloc] initWithActivityItems:@[ [NSURL fileURLWithPath:path] ]
                                                                        applicationActivities:nil];
    // A tablet hangs the sheet on something; a phone does not mind.
    sheet.popoverPresentationController.sourceView = front.view;
    [front presentViewController:sheet animated:YES completion:nil];
    return true;
}

void AppleWakeGuard::keepAwake(bool on)
{
    UIApplication.sharedApplication.idleTimerDisabled = on;
    AVAudioSession* session = AVAudioSession.sharedInstance;
    NSError* error = nil;
    if (on)
        [session setCategory:AVAudioSessionCategoryPlayback withOptions:AVAudioSessionCategoryOptionDuckOthers error:&error];
    [session setActive:on withOptions:AVAudioSessionSetActiveOptionNotifyOthersOnDeactivation error:&error];
    if (error != nil)
        NSLog(@"firstdew: audio session: %@", error);
}

} // namespace firstdew::iosside
