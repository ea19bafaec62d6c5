#include "ios/AppleDevice.h"

#import <AVFoundation/AVFoundation.h>
#import <AudioToolbox/AudioToolbox.h>
#import <Foundation/Foundation.h>
#import <UIKit/UIKit.h>

#include <functional>
#include <utility>

@interface FirstdewPreview : NSObject <UIDocumentInteractionControllerDelegate>
@property(strong) UIViewController* front;
@end

@implementation FirstdewPreview
- (UIViewController*)documentInteractionControllerViewControllerForPreview:(UIDocumentInteractionController*)controller
{
    (void)controller;
    return self.front;
}
@end

/// Nothing to see: the system tells a view in the window when the free area changes.
@interface FirstdewEdges : UIView
@end

@implementation FirstdewEdges {
@public
    std::function<void()> changed;
}
- (void)safeAreaInsetsDidChange
{
    [super safeAreaInsetsDidChange];
    if (changed)
        changed();
}
@end

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

bool stillWanted() { return UIAccessibilityIsReduceMotionEnabled() == YES; }

bool AppleSharer::share(const std::string& file, const std::string&)
{
    UIViewController* front = frontController();
    NSString* path = [NSString stringWithUTF8String:file.c_str()];
    if (front == nil || ![NSFileManager.defaultManager isReadableFileAtPath:path])
        return false;
    UIActivityViewController* sheet = [[UIActivityViewController alloc] initWithActivityItems:@[ [NSURL fileURLWithPath:path] ]
                                                                        applicationActivities:nil];
    // A tablet needs an anchor for the sheet. A phone ignores it.
    sheet.popoverPresentationController.sourceView = front.view;
    [front presentViewController:sheet animated:YES completion:nil];
    return true;
}

bool AppleOpener::open(const std::string& path)
{
    UIViewController* front = frontController();
    NSString* name = [NSString stringWithUTF8String:path.c_str()];
    BOOL folder = NO;
    if (front == nil || ![NSFileManager.defaultManager fileExistsAtPath:name isDirectory:&folder])
        return false;
    if (folder) {
        NSURLComponents* files = [[NSURLComponents alloc] init];
        files.scheme = @"shareddocuments";
        files.host = @"";
        files.path = name;
        [UIApplication.sharedApplication openURL:files.URL options:@{} completionHandler:nil];
        return true;
    }
    // Kept until the next call, because the system keeps a reference to neither.
    static UIDocumentInteractionController* shown;
    static FirstdewPreview* host;
    host = [[FirstdewPreview alloc] init];
    host.front = front;
    shown = [UIDocumentInteractionController interactionControllerWithURL:[NSURL fileURLWithPath:name]];
    shown.delegate = host;
    return [shown presentPreviewAnimated:YES];
}

bool AppleAnnouncer::listens() const { return UIAccessibilityIsVoiceOverRunning() == YES; }

void AppleAnnouncer::announce(const std::string& text, Urgency)
{
    UIAccessibilityPostNotification(UIAccessibilityAnnouncementNotification, [NSString stringWithUTF8String:text.c_str()]);
}

void AppleAnnouncer::page(const std::string& title)
{
    UIAccessibilityPostNotification(UIAccessibilityScreenChangedNotification, [NSString stringWithUTF8String:title.c_str()]);
}

bool AppleHaptics::present() const { return UIDevice.currentDevice.userInterfaceIdiom == UIUserInterfaceIdiomPhone; }

void AppleHaptics::pulse()
{
    [[[UIImpactFeedbackGenerator alloc] initWithStyle:UIImpactFeedbackStyleHeavy] impactOccurred];
}

void AppleHaptics::tick()
{
    [[[UIImpactFeedbackGenerator alloc] initWithStyle:UIImpactFeedbackStyleLight] impactOccurred];
}

void AppleHaptics::alarm() { AudioServicesPlaySystemSound(kSystemSoundID_Vibrate); }

ports::Insets AppleSafeArea::insets() const
{
    const UIEdgeInsets kept = frontController().view.safeAreaInsets;
    return {kept.left, kept.top, kept.right, kept.bottom};
}

// The window comes after this call, so the listening view joins it when the app is active.
void AppleSafeArea::onChange(std::function<void()> changed)
{
    static FirstdewEdges* edges;
    edges = [[FirstdewEdges alloc] initWithFrame:CGRect{}];
    edges.userInteractionEnabled = NO;
    edges->changed = std::move(changed);
    [NSNotificationCenter.defaultCenter addObserverForName:UIApplicationDidBecomeActiveNotification object:nil queue:nil usingBlock:^(NSNotification*) {
        [frontController().view addSubview:edges];
        edges->changed();
    }];
}

ports::Hours AppleClockFormat::hours() const
{
    NSString* format = [NSDateFormatter dateFormatFromTemplate:@"j" options:0 locale:NSLocale.currentLocale];
    return [format containsString:@"a"] ? ports::Hours::Twelve : ports::Hours::TwentyFour;
}

void AppleClockFormat::onChange(std::function<void()> changed)
{
    [NSNotificationCenter.defaultCenter addObserverForName:NSCurrentLocaleDidChangeNotification object:nil queue:NSOperationQueue.mainQueue usingBlock:^(NSNotification*) { changed(); }];
}

void coverWhenLeft()
{
    static UIView* cover;
    NSNotificationCenter* center = NSNotificationCenter.defaultCenter;
    [center addObserverForName:UIApplicationWillResignActiveNotification object:nil queue:nil usingBlock:^(NSNotification*) {
        UIView* front = frontController().view;
        cover = [[UIView alloc] initWithFrame:front.bounds];
        cover.backgroundColor = UIColor.systemBackgroundColor;
        [front addSubview:cover];
    }];
    [center addObserverForName:UIApplicationDidBecomeActiveNotification object:nil queue:nil usingBlock:^(NSNotification*) {
        [cover removeFromSuperview];
        cover = nil;
    }];
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
