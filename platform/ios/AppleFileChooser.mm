#include "ios/AppleFileChooser.h"
#include "ios/AppleText.h"

#import <Foundation/Foundation.h>
#import <UIKit/UIKit.h>
#import <UniformTypeIdentifiers/UniformTypeIdentifiers.h>

#include "journal/OwnFile.h"

#include <iostream>
#include <utility>

@interface FirstdewPicking : NSObject <UIDocumentPickerDelegate>
- (void)tell:(NSURL*)url;
@end

@implementation FirstdewPicking {
@public
    firstdew::ports::FileChooser::Chosen chosen;
    firstdew::ports::FileChooser::Saved saved;
    std::string copy; // of a single file that is saved
}
- (void)tell:(NSURL*)url
{
    using firstdew::iosside::fromApple;
    using firstdew::ports::SavedAs;
    if (const auto save = std::exchange(saved, {})) {
        NSURL* place = copy.empty() ? url.URLByDeletingLastPathComponent : url;
        save(url == nil ? std::nullopt : std::optional(SavedAs{fromApple(place.lastPathComponent), copy}));
        return;
    }
    const auto tell = std::exchange(chosen, {});
    if (tell)
        tell(url == nil ? std::nullopt : std::optional(fromApple(url.path)));
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

namespace
{

UIViewController* front()
{
    for (UIScene* scene in UIApplication.sharedApplication.connectedScenes)
        if ([scene isKindOfClass:UIWindowScene.class])
            for (UIWindow* window in ((UIWindowScene*)scene).windows)
                if (window.isKeyWindow)
                    return window.rootViewController;
    return nil;
}

/// The picker keeps no reference to whom it tells, so the last one is kept here.
FirstdewPicking* picking(FirstdewPicking* now)
{
    static FirstdewPicking* last;
    last = now;
    return last;
}

NSURL* outgoing()
{
    return [NSURL fileURLWithPath:[NSTemporaryDirectory() stringByAppendingPathComponent:@"outgoing"]];
}

} // namespace

// Back-ups have a type that no other app declares, so the picker shows all files.
bool AppleFileChooser::choose(const std::string&, const std::string&, Chosen chosen)
{
    UIViewController* over = front();
    if (over == nil)
        return false;
    FirstdewPicking* telling = picking([[FirstdewPicking alloc] init]);
    telling->chosen = std::move(chosen);
    UIDocumentPickerViewController* picker = [[UIDocumentPickerViewController alloc] initForOpeningContentTypes:@[ UTTypeItem ] asCopy:YES];
    picker.delegate = telling;
    picker.allowsMultipleSelection = NO;
    [over presentViewController:picker animated:YES completion:nil];
    return true;
}

// The system copies the files itself, and says so where it cannot.
bool AppleFileChooser::save(const std::string&, std::vector<ports::OutFile> files, Saved saved)
{
    UIViewController* over = front();
    const std::string folder = fromApple(outgoing().path);
    if (over == nil || !journal::emptyOwnFolder(folder))
        return false;
    NSMutableArray<NSURL*>* urls = [NSMutableArray array];
    std::string copy;
    for (const auto& file : files) {
        copy = folder + "/" + file.name;
        if (!journal::writeNewFile(copy, file.content))
            return false;
        [urls addObject:[NSURL fileURLWithPath:toApple(copy)]];
    }
    FirstdewPicking* telling = picking([[FirstdewPicking alloc] init]);
    telling->saved = std::move(saved);
    telling->copy = files.size() == 1 ? copy : std::string();
    UIDocumentPickerViewController* picker = [[UIDocumentPickerViewController alloc] initForExportingURLs:urls asCopy:YES];
    picker.delegate = telling;
    [over presentViewController:picker animated:YES completion:nil];
    return true;
}

void AppleFileChooser::dropCopies()
{
    if (!journal::emptyOwnFolder(fromApple(outgoing().path)))
        std::clog << "firstdew: copies of saved files may still be there\n";
}

} // namespace firstdew::iosside
