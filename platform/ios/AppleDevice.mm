#include "ios/AppleDevice.h"
#include "ios/AppleText.h"

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
    NSString* path = toApple(file);
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
    NSString* name = toApple(path);
    BOOL folder = NO;
    if (front == nil || ![NSFileManager.defaultManager fileExistsAtPath:name isDirectory:&folder])
        return false;
    if (folder) {
        NSURLComponents* files = [[NSURLComponents alloc] init];
        files.scheme = @"shareddocuments";
        files.host = @"";
        files.path = name;
        NSURL* url = files.URL;
        if (url != nil)
            [UIApplication.sharedApplication openURL:url options:@{} completionHandler:nil];
        return url != nil;
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
    UIAccessibilityPostNotification(UIAccessibilityAnnouncementNotification, toApple(text));
}

void AppleAnnouncer::page(const std::string& title)
{
    UIAccessibilityPostNotification(UIAccessibilityScreenChangedNotification, toApple(title));
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

struct AppleWakeGuard::Bed {
    NSData* sound = nil;
    AVAudioPlayer* player = nil;
    bool wanted = false;
};

namespace
{

void startBed(AVAudioPlayer* __strong& player, NSData* sound)
{
    AVAudioSession* session = AVAudioSession.sharedInstance;
    NSError* error = nil;
    [session setCategory:AVAudioSessionCategoryPlayback withOptions:AVAudioSessionCategoryOptionDuckOthers error:&error];
    if (error == nil)
        [session setActive:YES withOptions:AVAudioSessionSetActiveOptionNotifyOthersOnDeactivation error:&error];
    if (player == nil)
        player = [[AVAudioPlayer alloc] initWithData:sound error:&error];
    player.numberOfLoops = -1; // without end
    if (player == nil || ![player play])
        NSLog(@"firstdew: the session may fall silent behind a locked screen: %@", error);
}

} // namespace

// A call or an alarm clock takes the sound, and a restart of the system's audio service takes the player, too.
AppleWakeGuard::AppleWakeGuard(const std::string& bed) : m_bed(std::make_shared<Bed>())
{
    m_bed->sound = [NSData dataWithBytes:bed.data() length:bed.size()];
    const std::weak_ptr<Bed> of = m_bed;
    NSNotificationCenter* center = NSNotificationCenter.defaultCenter;
    [center addObserverForName:AVAudioSessionInterruptionNotification object:nil queue:NSOperationQueue.mainQueue usingBlock:^(NSNotification* told) {
        const auto now = of.lock();
        NSNumber* kind = told.userInfo[AVAudioSessionInterruptionTypeKey];
        if (now && now->wanted && kind.unsignedIntegerValue == AVAudioSessionInterruptionTypeEnded)
            startBed(now->player, now->sound);
    }];
    [center addObserverForName:AVAudioSessionMediaServicesWereResetNotification object:nil queue:NSOperationQueue.mainQueue usingBlock:^(NSNotification*) {
        const auto now = of.lock();
        if (!now || !now->wanted)
            return;
        now->player = nil;
        startBed(now->player, now->sound);
    }];
}

void AppleWakeGuard::keepAwake(bool on)
{
    UIApplication.sharedApplication.idleTimerDisabled = on;
    m_bed->wanted = on;
    if (on) {
        startBed(m_bed->player, m_bed->sound);
        return;
    }
    [m_bed->player stop];
    m_bed->player = nil;
    NSError* error = nil;
    [AVAudioSession.sharedInstance setActive:NO withOptions:AVAudioSessionSetActiveOptionNotifyOthersOnDeactivation error:&error];
    if (error != nil)
        NSLog(@"firstdew: audio session: %@", error);
}

} // namespace firstdew::iosside
