#include "ios/AppleClipMaker.h"
#include "ios/AppleText.h"

#import <AVFoundation/AVFoundation.h>
#import <Foundation/Foundation.h>

#include <algorithm>
#include <atomic>
#include <utility>

namespace firstdew::iosside
{

struct AppleClipMaker::Inside {
    AVSpeechSynthesizer* synthesizer = nil;
    std::function<void(bool)> answer;
    std::atomic<int> number = 0; ///< of the text that is wanted
};

namespace
{

/// In the app's own thread, and only if that text is still wanted.
template <class Inside>
void answerLater(const std::weak_ptr<Inside>& of, int number, bool written)
{
    dispatch_async(dispatch_get_main_queue(), ^{
        const auto inside = of.lock();
        if (!inside || inside->number != number)
            return;
        if (const auto answer = std::exchange(inside->answer, nullptr))
            answer(written);
    });
}

} // namespace

AppleClipMaker::AppleClipMaker() : m_inside(std::make_shared<Inside>()) {}
AppleClipMaker::~AppleClipMaker() { drop(); }

void AppleClipMaker::speak(const std::string& language, const std::string& text, const std::string& file, std::function<void(bool)> answer)
{
    drop();
    const int number = ++m_inside->number;
    const std::weak_ptr<Inside> inside = m_inside;
    m_inside->answer = std::move(answer);
    std::string tag = language;
    std::replace(tag.begin(), tag.end(), '_', '-');
    AVSpeechSynthesisVoice* voice = [AVSpeechSynthesisVoice voiceWithLanguage:toApple(tag)];
    if (voice == nil) {
        answerLater(inside, number, false);
        return;
    }
    AVSpeechUtterance* utterance = [AVSpeechUtterance speechUtteranceWithString:toApple(text)];
    utterance.voice = voice;
    NSURL* url = [NSURL fileURLWithPath:toApple(file)];
    m_inside->synthesizer = [[AVSpeechSynthesizer alloc] init];
    // The first piece says in which form the voice speaks; the last one is empty. They come one after the other, in a
    // thread of the system.
    __block AVAudioFile* out = nil;
    [m_inside->synthesizer writeUtterance:utterance toBufferCallback:^(AVAudioBuffer* buffer) {
        const auto now = inside.lock();
        if (!now || now->number != number || ![buffer isKindOfClass:AVAudioPCMBuffer.class])
            return;
        AVAudioPCMBuffer* piece = (AVAudioPCMBuffer*)buffer;
        if (piece.frameLength == 0) {
            const bool written = out != nil;
            out = nil; // closes it
            answerLater(inside, number, written);
            return;
        }
        NSError* error = nil;
        if (out == nil)
            out = [[AVAudioFile alloc] initForWriting:url settings:piece.format.settings commonFormat:piece.format.commonFormat interleaved:piece.format.isInterleaved error:&error];
        if (out == nil || ![out writeFromBuffer:piece error:&error]) {
            NSLog(@"firstdew: a prompt could not be spoken into a file: %@", error);
            answerLater(inside, number, false);
        }
    }];
}

void AppleClipMaker::drop()
{
    ++m_inside->number;
    m_inside->answer = nullptr;
    [m_inside->synthesizer stopSpeakingAtBoundary:AVSpeechBoundaryImmediate];
    m_inside->synthesizer = nil;
}

} // namespace firstdew::iosside
