// Declarations of Apple's, as few as platform/ios uses. ../../declarations.py holds them against the objc2 crates.
#pragma once
#import <Foundation/Foundation.h>

NS_ASSUME_NONNULL_BEGIN

FOUNDATION_EXPORT NSString* const AVAudioSessionCategoryPlayback;
typedef NS_OPTIONS(NSUInteger, AVAudioSessionCategoryOptions) {
    AVAudioSessionCategoryOptionMixWithOthers = 1,
    AVAudioSessionCategoryOptionDuckOthers = 2
};
typedef NS_OPTIONS(NSUInteger, AVAudioSessionSetActiveOptions) {
    AVAudioSessionSetActiveOptionNotifyOthersOnDeactivation = 1
};

@interface AVAudioSession : NSObject
+ (AVAudioSession*)sharedInstance;
- (BOOL)setCategory:(NSString*)category
        withOptions:(AVAudioSessionCategoryOptions)options
              error:(NSError* _Nullable* _Nullable)error;
- (BOOL)setActive:(BOOL)active
      withOptions:(AVAudioSessionSetActiveOptions)options
            error:(NSError* _Nullable* _Nullable)error;
@end

FOUNDATION_EXPORT NSString* const AVAudioSessionInterruptionNotification;
FOUNDATION_EXPORT NSString* const AVAudioSessionInterruptionTypeKey;
FOUNDATION_EXPORT NSString* const AVAudioSessionMediaServicesWereResetNotification;
typedef NS_ENUM(NSUInteger, AVAudioSessionInterruptionType) {
    AVAudioSessionInterruptionTypeBegan = 1,
    AVAudioSessionInterruptionTypeEnded = 0
};

@interface AVAudioPlayer : NSObject
- (nullable instancetype)initWithData:(NSData*)data error:(NSError* _Nullable* _Nullable)error;
@property NSInteger numberOfLoops;
- (BOOL)play;
- (void)stop;
@end

typedef uint32_t AVAudioFrameCount;
typedef NS_ENUM(NSUInteger, AVAudioCommonFormat) { AVAudioPCMFormatFloat32 = 1, AVAudioPCMFormatInt16 = 3 };

@interface AVAudioFormat : NSObject
@property(readonly) NSDictionary<NSString*, id>* settings;
@property(readonly) AVAudioCommonFormat commonFormat;
@property(readonly, getter=isInterleaved) BOOL interleaved;
@end

@interface AVAudioBuffer : NSObject
@property(readonly) AVAudioFormat* format;
@end

@interface AVAudioPCMBuffer : AVAudioBuffer
@property AVAudioFrameCount frameLength;
@end

@interface AVAudioFile : NSObject
- (nullable instancetype)initForWriting:(NSURL*)url
                               settings:(NSDictionary<NSString*, id>*)settings
                           commonFormat:(AVAudioCommonFormat)format
                            interleaved:(BOOL)interleaved
                                  error:(NSError* _Nullable* _Nullable)error;
- (BOOL)writeFromBuffer:(AVAudioPCMBuffer*)buffer error:(NSError* _Nullable* _Nullable)error;
@end

@interface AVSpeechSynthesisVoice : NSObject
+ (nullable AVSpeechSynthesisVoice*)voiceWithLanguage:(nullable NSString*)code;
@end

@interface AVSpeechUtterance : NSObject
+ (instancetype)speechUtteranceWithString:(NSString*)string;
@property(nullable, retain) AVSpeechSynthesisVoice* voice;
@end

typedef NS_ENUM(NSInteger, AVSpeechBoundary) { AVSpeechBoundaryImmediate, AVSpeechBoundaryWord };

@interface AVSpeechSynthesizer : NSObject
- (void)writeUtterance:(AVSpeechUtterance*)utterance toBufferCallback:(void (^)(AVAudioBuffer* buffer))callback;
- (BOOL)stopSpeakingAtBoundary:(AVSpeechBoundary)boundary;
@end

NS_ASSUME_NONNULL_END
