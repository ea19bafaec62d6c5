#include "protocol/CurrentAdvice.h"

#include "protocol/Limits.h"

#include <algorithm>

namespace firstdew::protocol {

namespace {

/// Step from one session to the next. Armpits 2-3 mA at most: common practice, no source; 1 mA direct and 2 mA pulsed:
/// our own choice.
double stepFor(Waveform waveform) { return waveform == Waveform::Direct ? 1 : 2; }

/// Where nothing is known: half of the limit (our own choice, cautious).
constexpr double kFirstShare = 0.5;

/// What the record tells of earlier sessions at that site with that waveform.
struct Before {
    const Session* last = nullptr;  ///< the latest of them
    LocalDate on;                   ///< its day
    std::optional<Milliamps> level; ///< of the latest that has a reading: the comfortable one, or else the peak
};

Before before(const Diary& diary, Site site, Waveform waveform)
{
    Before out;
    for (const auto& e : diary.sessions) {
        if (e.payload.site != site || e.payload.waveform != waveform)
            continue;
        out.last = &e.payload;
        out.on = e.happened.date;
        if (e.payload.comfortable || e.payload.peak)
            out.level = e.payload.comfortable ? e.payload.comfortable : e.payload.peak;
    }
    return out;
}

bool harmed(const SetOf<SkinFinding>& skin)
{
    return skin.contains(SkinFinding::Blister) || skin.contains(SkinFinding::Burn);
}

/// At the time, or on the skin afterwards.
bool hurt(const Diary& diary, Site site, const Before& b)
{
    if (b.last->comfort == Comfort::Unpleasant || b.last->comfort == Comfort::Painful || harmed(b.last->skin))
        return true;
    return std::any_of(diary.skin.begin(), diary.skin.end(), [&](const auto& e) {
        return e.happened.date >= b.on && treats(site).contains(e.payload.site) && harmed(e.payload.skin);
    });
}

/// On the person's word alone: a peak that nobody called comfortable is nothing to build on.
bool comfortable(const Session& s)
{
    if (s.comfort)
        return *s.comfort == Comfort::Comfortable || *s.comfort == Comfort::NothingFelt;
    return s.comfortable.has_value();
}

bool olderChild(const Diary& diary)
{
    if (!diary.person || !diary.person->birth)
        return false;
    const int age = ageInYears(*diary.person->birth, diary.today);
    return age >= kOlderChildYears && age < kAdultFromYears;
}

} // namespace

CurrentAdvice currentAdviceFor(const Diary& diary, Site site, Waveform waveform, Milliamps limit)
{
    CurrentAdvice out;
    const Before b = before(diary, site, waveform);
    if (!b.level) {
        out.target = {limit.mA * kFirstShare};
        out.reasons.push_back(CurrentReason::FirstTime);
        return out;
    }
    const Milliamps level = *b.level;
    out.last = level;
    const double step = stepFor(waveform);
    const bool afterHurt = hurt(diary, site, b);
    if (afterHurt) {
        out.target = {std::max(0.0, level.mA - step)};
        out.reasons.push_back(CurrentReason::AfterDiscomfort);
        if (waveform == Waveform::Direct && level <= kPoorlyTolerated)
            out.reasons.push_back(CurrentReason::TryPulsed);
    } else if (!b.last->completed) {
        out.target = level;
        out.reasons.push_back(CurrentReason::AfterInterruption);
    } else if (!comfortable(*b.last)) {
        out.target = level;
        out.reasons.push_back(CurrentReason::SameAgain);
    } else {
        out.target = {level.mA + step};
        out.reasons.push_back(CurrentReason::AfterComfortable);
    }
    if (out.target > limit) {
        out.target = limit;
        out.reasons.insert(out.reasons.begin(), CurrentReason::AtLimit);
    }
    const bool handsOrFeet = site != Site::Armpits;
    if (waveform == Waveform::Pulsed && handsOrFeet && !afterHurt && comfortable(*b.last) && level.mA >= 20 &&
        olderChild(diary))
        out.reasons.push_back(CurrentReason::TryDirect);
    return out;
}

} // namespace firstdew::protocol
