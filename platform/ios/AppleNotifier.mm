#include "ios/AppleNotifier.h"
#include "ios/AppleText.h"

#import <Foundation/Foundation.h>
#import <UserNotifications/UserNotifications.h>

using namespace firstdew;
using iosside::fromApple;
using iosside::toApple;

namespace
{

// Answers that the app has not written into the record yet.
NSString* const kAnswers = @"answers";
// Keys already shown, so that a dismissed notice is not shown again.
NSString* const kShown = @"shown";
NSString* const kCheckIn = @"check-in";
NSString* const kStart = @"start";
constexpr NSTimeInterval kLaterSeconds = 60 * 60;

NSString* localMinute(NSDate* date)
{
    NSDateFormatter* format = [[NSDateFormatter alloc] init];
    format.locale = [NSLocale localeWithLocaleIdentifier:@"en_US_POSIX"];
    format.dateFormat = @"yyyy-MM-dd'T'HH:mm";
    return [format stringFromDate:date];
}

UNMutableNotificationContent* contentOf(const ports::Notice& notice)
{
    UNMutableNotificationContent* content = [[UNMutableNotificationContent alloc] init];
    content.title = toApple(notice.title);
    content.body = toApple(notice.text);
    content.sound = UNNotificationSound.defaultSound;
    // iOS requires that buttons are registered by category beforehand.
    for (const ports::NoticeAction& a : notice.actions)
        if (a.id == "dry")
            content.categoryIdentifier = kCheckIn;
        else if (a.id == "start")
            content.categoryIdentifier = kStart;
    return content;
}

/// Has no time zone, so that it follows the person's clock when they travel.
UNNotificationTrigger* triggerAt(facts::LocalTime at)
{
    const std::string iso = at.iso();
    NSDateComponents* when = [[NSDateComponents alloc] init];
    when.year = std::stoi(iso.substr(0, 4));
    when.month = std::stoi(iso.substr(5, 2));
    when.day = std::stoi(iso.substr(8, 2));
    when.hour = std::stoi(iso.substr(11, 2));
    when.minute = std::stoi(iso.substr(14, 2));
    return [UNCalendarNotificationTrigger triggerWithDateMatchingComponents:when repeats:NO];
}

UNNotificationAction* action(NSString* id, const std::map<std::string, std::string>& words, UNNotificationActionOptions options)
{
    const auto word = words.find(fromApple(id));
    return [UNNotificationAction actionWithIdentifier:id title:word == words.end() ? id : toApple(word->second) options:options];
}

} // namespace

@interface FirstdewNoticeDelegate : NSObject <UNUserNotificationCenterDelegate> {
@public
    std::function<void(const std::string&)> opened;
}
@end

@implementation FirstdewNoticeDelegate

- (void)userNotificationCenter:(UNUserNotificationCenter*)center
       willPresentNotification:(UNNotification*)notification
         withCompletionHandler:(void (^)(UNNotificationPresentationOptions))done
{
    (void)center;
    (void)notification;
    // The open app shows due reminders on Today.
    done(UNNotificationPresentationOptionNone);
}

- (void)userNotificationCenter:(UNUserNotificationCenter*)center
    didReceiveNotificationResponse:(UNNotificationResponse*)response
             withCompletionHandler:(void (^)(void))done
{
    NSString* what = response.actionIdentifier;
    UNNotificationRequest* request = response.notification.request;
    if ([what isEqualToString:UNNotificationDefaultActionIdentifier]) {
        opened("today");
    } else if ([what isEqualToString:kStart]) {
        opened("bath");
    } else {
        NSUserDefaults* kept = NSUserDefaults.standardUserDefaults;
        NSMutableArray* answers = [NSMutableArray arrayWithArray:[kept arrayForKey:kAnswers] ?: @[]];
        [answers addObject:@{@"key" : request.identifier, @"answer" : what, @"at" : localMinute(NSDate.date)}];
        [kept setObject:answers forKey:kAnswers];
        if ([what isEqualToString:@"later"])
            [center addNotificationRequest:[UNNotificationRequest requestWithIdentifier:request.identifier
                                                                                content:request.content
                                                                                trigger:[UNTimeIntervalNotificationTrigger triggerWithTimeInterval:kLaterSeconds repeats:NO]]
                     withCompletionHandler:nil];
    }
    done();
}

@end

namespace firstdew::iosside
{

struct AppleNotifier::Inside {
    UNUserNotificationCenter* center = UNUserNotificationCenter.currentNotificationCenter;
    FirstdewNoticeDelegate* delegate = [[FirstdewNoticeDelegate alloc] init];

    /// A request with a known identifier replaces the old one, so that a repeated call is harmless.
    void add(NSString* key, UNNotificationContent* content, UNNotificationTrigger* trigger)
    {
        [center addNotificationRequest:[UNNotificationRequest requestWithIdentifier:key content:content trigger:trigger]
                 withCompletionHandler:nil];
    }
};

AppleNotifier::AppleNotifier(const std::map<std::string, std::string>& words, std::function<void(const std::string& place)> opened)
    : m_inside(std::make_unique<Inside>())
{
    m_inside->delegate->opened = std::move(opened);
    m_inside->center.delegate = m_inside->delegate;
    speak(words);
    [m_inside->center requestAuthorizationWithOptions:UNAuthorizationOptionAlert | UNAuthorizationOptionSound
                                    completionHandler:^(BOOL, NSError*) {
                                    }];
}

void AppleNotifier::speak(const std::map<std::string, std::string>& words)
{
    UNNotificationAction* later = action(@"later", words, UNNotificationActionOptionNone);
    NSMutableArray<UNNotificationAction*>* answers = [NSMutableArray array];
    for (NSString* answer in @[ @"dry", @"clammy", @"wet", @"dripping" ])
        [answers addObject:action(answer, words, UNNotificationActionOptionAuthenticationRequired)];
    [answers addObject:later];
    UNNotificationCategory* checkIn = [UNNotificationCategory categoryWithIdentifier:kCheckIn
                                                                             actions:answers
                                                                   intentIdentifiers:@[]
                                                                             options:UNNotificationCategoryOptionNone];
    UNNotificationCategory* start = [UNNotificationCategory categoryWithIdentifier:kStart
                                                                           actions:@[ action(kStart, words, UNNotificationActionOptionForeground), later ]
                                                                 intentIdentifiers:@[]
                                                                           options:UNNotificationCategoryOptionNone];
    [m_inside->center setNotificationCategories:[NSSet setWithArray:@[ checkIn, start ]]];
}

AppleNotifier::~AppleNotifier() { m_inside->center.delegate = nil; }

void AppleNotifier::show(const std::vector<ports::Notice>& due, const ports::Standing& standing)
{
    NSUserDefaults* kept = NSUserDefaults.standardUserDefaults;
    NSArray* before = [kept arrayForKey:kShown] ?: @[];
    NSMutableArray* now = [NSMutableArray array];
    for (const ports::Notice& notice : due) {
        NSString* key = toApple(notice.key);
        [now addObject:key];
        if (![before containsObject:key])
            m_inside->add(key, contentOf(notice), nil);
    }
    NSMutableArray* gone = [NSMutableArray array];
    for (NSString* key in before) {
        if ([now containsObject:key])
            continue;
        if (standing.contains(fromApple(key)))
            [now addObject:key];
        else
            [gone addObject:key];
    }
    [m_inside->center removeDeliveredNotificationsWithIdentifiers:gone];
    [kept setObject:now forKey:kShown];
}

void AppleNotifier::plan(std::vector<ports::PlannedNotice> upcoming)
{
    NSMutableSet* wanted = [NSMutableSet set];
    for (const ports::PlannedNotice& p : upcoming)
        [wanted addObject:toApple(p.notice.key)];
    UNUserNotificationCenter* center = m_inside->center;
    const auto planned = std::make_shared<std::vector<ports::PlannedNotice>>(std::move(upcoming));
    [center getPendingNotificationRequestsWithCompletionHandler:^(NSArray<UNNotificationRequest*>* held) {
        NSMutableArray* gone = [NSMutableArray array];
        for (UNNotificationRequest* request in held)
            if (![wanted containsObject:request.identifier])
                [gone addObject:request.identifier];
        [center removePendingNotificationRequestsWithIdentifiers:gone];
        for (const ports::PlannedNotice& p : *planned)
            [center addNotificationRequest:[UNNotificationRequest requestWithIdentifier:toApple(p.notice.key)
                                                                                content:contentOf(p.notice)
                                                                                trigger:triggerAt(p.at)]
                     withCompletionHandler:nil];
    }];
}

std::vector<ports::NoticeAnswer> AppleNotifier::answers()
{
    std::vector<ports::NoticeAnswer> out;
    for (NSDictionary* answer in [NSUserDefaults.standardUserDefaults arrayForKey:kAnswers]) {
        const auto at = facts::LocalTime::parse(fromApple(answer[@"at"]));
        out.push_back(at ? ports::NoticeAnswer{fromApple(answer[@"key"]), fromApple(answer[@"answer"]), *at} : ports::NoticeAnswer{});
    }
    return out;
}

void AppleNotifier::dropAnswers(std::size_t count)
{
    NSUserDefaults* kept = NSUserDefaults.standardUserDefaults;
    NSMutableArray* rest = [NSMutableArray arrayWithArray:[kept arrayForKey:kAnswers] ?: @[]];
    [rest removeObjectsInRange:NSMakeRange(0, count < rest.count ? count : rest.count)];
    [kept setObject:rest forKey:kAnswers];
}

} // namespace firstdew::iosside
