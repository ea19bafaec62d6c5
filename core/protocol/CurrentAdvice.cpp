#include "protocol/CurrentAdvice.h"

#include "protocol/Limits.h"
#include "protocol/Skin.h"
#include "protocol/TeachBack.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace firstdew::protocol {

namespace {

/// Step from one session to the next. Armpits 2-3 mA at most: common practice, no source; 1 mA direct and 2 mA pulsed:
/// our own choice.
double stepFor(Waveform waveform) { return waveform == Waveform::Direct ? 1 : 2; }

/// Down after skin that was irritated the next day or harmed (our own choice, cautious).
double downAfterSkin(Waveform waveform) { return waveform == Waveform::Direct ? 2 : 4; }

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

bool unpleasant(const Session& s) { return s.comfort == Comfort::Unpleasant || s.comfort == Comfort::Painful; }

/// Harm at the time or on the skin afterwards, or irritation that was still there on a later day.
bool skinSuffered(const Diary& diary, Site site, const Before& b)
{
    return harms(b.last->skin) || std::any_of(diary.skin.begin(), diary.skin.end(), [&](const auto& e) {
               if (!treats(site).contains(e.payload.site) || e.happened.date < b.on)
                   return false;
               return harms(e.payload.skin) || (e.happened.date > b.on && irritates(e.payload.skin));
           });
}

/// The level of the latest direct session at the site, where that was unpleasant.
std::optional<Milliamps> unpleasantDirect(const Diary& diary, Site site)
{
    const Before b = before(diary, site, Waveform::Direct);
    if (b.last == nullptr || !unpleasant(*b.last))
        return std::nullopt;
    return b.level;
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

/// The first aim, as agreed or because of `otherwise`. Pulsed is felt about half as strongly as direct (common
/// practice, no source), so that pulsed after unpleasant direct current starts at twice that at most.
CurrentAdvice firstAdvice(const Diary& diary, Site site, Waveform waveform, Milliamps limit, CurrentReason otherwise)
{
    CurrentAdvice out;
    out.target = firstAim(site, waveform, limit);
    if (waveform == Waveform::Pulsed)
        if (const auto level = unpleasantDirect(diary, site))
            out.target = std::min(out.target, Milliamps{2 * level->mA});
    // Whoever taught the person saw what that skin bears, and may only have the first aim lower.
    const auto agreed = agreedLevel(diary, site, waveform);
    const bool lower = agreed && *agreed < out.target;
    if (lower)
        out.target = *agreed;
    out.reasons.push_back(lower ? CurrentReason::AsAgreed : otherwise);
    return out;
}

/// One step from the last level: the target and its reason.
std::pair<Milliamps, CurrentReason> nextLevel(const Before& b, bool suffered, Waveform waveform)
{
    const double level = b.level->mA;
    if (suffered)
        return {{std::max(0.0, level - downAfterSkin(waveform))}, CurrentReason::AfterIrritation};
    if (unpleasant(*b.last))
        return {{std::max(0.0, level - stepFor(waveform))}, CurrentReason::AfterDiscomfort};
    if (!b.last->completed)
        return {*b.level, CurrentReason::AfterInterruption};
    if (!comfortable(*b.last))
        return {*b.level, CurrentReason::SameAgain};
    return {{level + stepFor(waveform)}, CurrentReason::AfterComfortable};
}

/// Whether the site was ever treated, with whatever waveform.
bool treatedAt(const Diary& diary, Site site)
{
    return std::any_of(diary.sessions.begin(), diary.sessions.end(),
                       [&](const auto& e) { return e.payload.site == site; });
}

/// Days since the site was last treated, with whatever waveform.
int daysUntreated(const Diary& diary, Site site)
{
    const auto last = std::find_if(diary.sessions.rbegin(), diary.sessions.rend(),
                                   [&](const auto& e) { return e.payload.site == site; });
    return diary.today - last->happened.date;
}

} // namespace

Milliamps firstAim(Site site, Waveform waveform, Milliamps limit)
{
    const Milliamps usual = waveform == Waveform::Direct ? kFirstDirect
                            : site == Site::Armpits      ? kFirstPulsedArmpits
                                                         : kFirstPulsed;
    return std::min(usual, Milliamps{limit.mA / 2});
}

CurrentAdvice currentAdviceFor(const Diary& diary, Site site, Waveform waveform, Milliamps limit)
{
    const Before b = before(diary, site, waveform);
    if (!b.level)
        return firstAdvice(diary, site, waveform, limit,
                           treatedAt(diary, site) ? CurrentReason::NoReading : CurrentReason::FirstTime);
    const Milliamps level = *b.level;
    const bool suffered = skinSuffered(diary, site, b);
    CurrentAdvice out;
    out.last = level;
    const auto [target, reason] = nextLevel(b, suffered, waveform);
    out.target = target;
    out.reasons.push_back(reason);
    const double afterLapse = std::floor(level.mA * 2 / 3 * 2) / 2; // in steps that a meter shows
    if (daysUntreated(diary, site) >= kLapseDays && out.target.mA > afterLapse) {
        out.target = {afterLapse};
        out.reasons.front() = CurrentReason::AfterLapse;
    }
    if (daysUntreated(diary, site) >= kAnewDays) {
        const auto anew = firstAdvice(diary, site, waveform, limit, CurrentReason::StartAnew);
        if (anew.target < out.target)
            return anew;
    }
    const bool hurt = suffered || unpleasant(*b.last);
    if (hurt && waveform == Waveform::Direct && level <= kPoorlyTolerated)
        out.reasons.push_back(CurrentReason::TryPulsed);
    if (out.target > limit) {
        out.target = limit;
        out.reasons.insert(out.reasons.begin(), CurrentReason::AtLimit);
    }
    if (waveform == Waveform::Pulsed && site != Site::Armpits && !hurt && comfortable(*b.last) && level.mA >= 20 &&
        olderChild(diary))
        out.reasons.push_back(CurrentReason::TryDirect);
    return out;
}

} // namespace firstdew::protocol
