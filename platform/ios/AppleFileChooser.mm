#include "ios/AppleFileChooser.h"

#import <Foundation/Foundation.h>
#import <UIKit/UIKit.h>
#import <UniformTypeIdentifiers/UniformTypeIdentifiers.h>

#include <utility>

@interface FirstdewPicking : NSObject <UIDocumentPickerDelegate>
@end

@implementation FirstdewPicking {
@public
    firstdew::ports::FileChooser::Chosen chosen;
}
- (void)tell:(NSURL*)url
{
    const auto tell = std::exchange(chosen, {});
    if (tell)
        tell(url == nil ? std::nullopt : std::optional(std::string(url.path.UTF8String)));
}
- (void)documentPicker:(UIDocumentPickerViewController*)picker didPickDocumentsAtURLs:(NSArray<NSURL*>*)urls
{
    (void)picker;
    [self tell:urls.firstObject];
}
- (void)documentPickerWasCancelled:(UIDocumentPickerViewController*)picker
{
    (void)picker;
    [self tell:nil];
}
@end

namespace firstdew::iosside
{

// Back-ups have a type that no other app declares, so the picker shows all files.
bool AppleFileChooser::choose(const std::string&, const std::string&, Chosen chosen)
{
    UIViewController* front = nil;
    for (UIScene* scene in UIApplication.sharedApplication.connectedScenes)
        if ([scene isKindOfClass:UIWindowScene.class])
            for (UIWindow* window in ((UIWindowScene*)scene).windows)
                if (window.isKeyWindow)
                    front = window.rootViewController;
    if (front == nil)
        return false;
    // Kept until the next call, because the picker keeps no reference to it.
    static FirstdewPicking* picking;
    picking = [[FirstdewPicking alloc] init];
    picking->chosen = std::move(chosen);
    UIDocumentPickerViewController* picker = [[UIDocumentPickerViewController alloc] initForOpeningContentTypes:@[ UTTypeItem ] asCopy:YES];
    picker.delegate = picking;
    picker.allowsMultipleSelection = NO;
    [front presentViewController:picker animated:YES completion:nil];
    return true;
}

} // namespace firstdew::iosside
