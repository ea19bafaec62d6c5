#include "ios/AppleOwnerCheck.h"
#include "ios/AppleText.h"

#import <Foundation/Foundation.h>
#import <LocalAuthentication/LocalAuthentication.h>

#include <utility>

namespace firstdew::iosside
{

namespace
{

ports::OwnerCheck::Verdict verdictOf(BOOL confirmed, NSError* error)
{
    using Verdict = ports::OwnerCheck::Verdict;
    if (confirmed)
        return Verdict::Confirmed;
    switch (error.code) {
    case LAErrorUserCancel:
    case LAErrorSystemCancel:
    case LAErrorAppCancel: return Verdict::Dropped;
    case LAErrorPasscodeNotSet: return Verdict::Unable;
    default: return Verdict::Refused;
    }
}

} // namespace

struct AppleOwnerCheck::Inside {
    LAContext* context = nil; ///< of the dialog that may still answer
    Asking asking;
};

AppleOwnerCheck::AppleOwnerCheck() : m_inside(std::make_shared<Inside>()) {}
AppleOwnerCheck::~AppleOwnerCheck() { drop(); }

bool AppleOwnerCheck::available() const
{
    return [[[LAContext alloc] init] canEvaluatePolicy:LAPolicyDeviceOwnerAuthentication error:nil] == YES;
}

// The system answers in a thread of its own. An answer of a dialog that was dropped counts no more.
void AppleOwnerCheck::ask(const std::string& why, Asking asking)
{
    drop();
    LAContext* context = [[LAContext alloc] init];
    m_inside->context = context;
    m_inside->asking = std::move(asking);
    const std::weak_ptr<Inside> of = m_inside;
    [context evaluatePolicy:LAPolicyDeviceOwnerAuthentication
            localizedReason:toApple(why)
                      reply:^(BOOL confirmed, NSError* error) {
                          const auto verdict = verdictOf(confirmed, error);
                          dispatch_async(dispatch_get_main_queue(), ^{
                              const auto now = of.lock();
                              if (!now || now->context != context)
                                  return;
                              now->context = nil;
                              std::exchange(now->asking, {}).done(verdict);
                          });
                      }];
}

void AppleOwnerCheck::drop()
{
    LAContext* before = m_inside->context;
    m_inside->context = nil;
    [before invalidate];
}

} // namespace firstdew::iosside
