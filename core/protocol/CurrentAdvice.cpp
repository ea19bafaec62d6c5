#include "protocol/CurrentAdvice.h"

#include "protocol/Limits.h"

#include <algorithm>

namespace firstdew::protocol
{

namespace
{

/// Step from one session to the next. Armpits 2-3 mA at most: common practice, no source; 1 mA direct and 2 mA pulsed:
/// our own choice.
double stepFor(Waveform waveform)
{
    return waveform == Waveform::Direct ? 1 : 2;
}

/// Where nothing is known: half of the limit (our own choice, cautious).
constexpr double kFirstShare = 0.5;

const Session* lastAt(const Record& record, Site site, Waveform waveform, LocalDate day)
{
    const Session* last = nullptr;
    for (const auto& e : record.all<Session>())
        if (e.happened.date <= day && e.payload.site == site && e.payload.waveform == waveform &&
            (e.payload.comfortable || e.payload.peak))
            last = &e.payload;
    return last;
}

bool hurt(const Session& s)
{
    return s.comfort == Comfort::Unpleasant || s.comfort == Comfort::Painful || s.skin.contains(SkinFinding::Blister) ||
           s.skin.contains(SkinFinding::Burn);
}

bool olderChild(const Record& record, LocalDate day)
{
    const auto* person = record.latest<Person>();
    if (person == nullptr || !person->payload.birth)
        return false;
    const int age = ageInYears(*person->payload.birth, day);
    return age >= kOlderChildYears && age < kAdultFromYears;
}

} // namespace

CurrentAdvice currentAdviceFor(const Record& record, Site site, Waveform waveform, Milliamps limit, LocalDate day)
{
    CurrentAdvice out;
    const Session* last = lastAt(record, site, waveform, day);
    if (last == nullptr) {
        out.target = {limit.mA * kFirstShare};
        out.reasons.push_back(CurrentReason::FirstTime);
        return out;
    }
    const Milliamps level = last->comfortable.value_or(*last->peak);
    out.last = level;
    const double step = stepFor(waveform);
    if (hurt(*last)) {
        out.target = {std::max(0.0, level.mA - step)};
        out.reasons.push_back(CurrentReason::AfterDiscomfort);
        if (waveform == Waveform::Direct && level <= kPoorlyTolerated)
            out.reasons.push_back(CurrentReason::TryPulsed);
    } else if (!last->completed) {
        out.target = level;
        out.reasons.push_back(CurrentReason::AfterInterruption);
    } else {
        out.target = {level.mA + step};
        out.reasons.push_back(CurrentReason::AfterComfortable);
    }
    if (out.target > limit) {
        out.target = limit;
        out.reasons.insert(out.reasons.begin(), CurrentReason::AtLimit);
    }
    const bool handsOrFeet = site != Site::Armpits;
    if (waveform == Waveform::Pulsed && handsOrFeet && !hurt(*last) && level.mA >= 20 && olderChild(record, day))
        out.reasons.push_back(CurrentReason::TryDirect);
    return out;
}

} // namespace firstdew::protocol
