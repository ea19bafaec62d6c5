// Declarations repeated from Apple's documentation, as few as platform/ios uses: for a check of syntax and types alone.
#pragma once
#import <Foundation/Foundation.h>

extern NSString* const AVAudioSessionCategoryPlayback;
typedef enum : NSUInteger { AVAudioSessionCategoryOptionMixWithOthers = 1, AVAudioSessionCategoryOptionDuckOthers = 2 } AVAudioSessionCategoryOptions;
typedef enum : NSUInteger { AVAudioSessionSetActiveOptionNotifyOthersOnDeactivation = 1 } AVAudioSessionSetActiveOptions;

@interface AVAudioSession : NSObject
+ (AVAudioSession*)sharedInstance;
- (BOOL)setCategory:(NSString*)category withOptions:(AVAudioSessionCategoryOptions)options error:(NSError**)error;
- (BOOL)setActive:(BOOL)active withOptions:(AVAudioSessionSetActiveOptions)options error:(NSError**)error;
@end
