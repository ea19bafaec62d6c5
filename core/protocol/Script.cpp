#include "protocol/Script.h"

#include "protocol/Limits.h"

#include <fmt/format.h>

namespace firstdew::protocol {

namespace {

// What a person needs where nothing is timed; for the estimate of the whole only (our own choice).
constexpr Seconds kCheckListEstimate{60};
constexpr Seconds kSwitchOnEstimate{15};
constexpr Seconds kHandsOutEstimate{30};
constexpr Seconds kFinishEstimate{15};

/// A way of working that leaves both hands under, where that is not to be.
std::optional<Error> refusal(Site site, WayOfWorking way, AgeGroup age)
{
    if (way != WayOfWorking::HandsUnder)
        return std::nullopt;
    if (site != Site::Hands)
        return Error{"way-not-for-site", "way",
                     "only both hands in the water leave no hand free; choose a free hand or a helper"};
    if (age == AgeGroup::Child)
        return Error{"way-adults-only", "way",
                     "a child is never alone with both hands in the water; choose a helper who stays beside the child"};
    return std::nullopt;
}

std::optional<Error> refusal(const ScriptRequest& q)
{
    if (auto error = refusal(q.site, q.way, q.age))
        return error;
    for (const auto& [allowance, name] :
         {std::pair{q.raise, "raising"}, {q.lower, "lowering"}, {q.swapping, "swapping"}})
        if (allowance < kLeastAllowance || allowance > kMostAllowance)
            return Error{"allowance-out-of-range", name,
                         fmt::format("{} s for {} is outside {} to {} s; choose a time in between", allowance.s, name,
                                     kLeastAllowance.s, kMostAllowance.s)};
    const Seconds whole = phasesFor(q.site).hold;
    if (q.hold && (*q.hold > whole || q.hold->s < kLeastHold * whole.s))
        return Error{"hold-out-of-range", "hold",
                     fmt::format("{} s of current in a phase are outside {:.0f} to {} s; choose a time in between",
                                 q.hold->s, kLeastHold * whole.s, whole.s)};
    const LimitAnswer trade = limitFor({q.site, q.waveform, q.age, {}, {}, {}});
    if (!trade.allowed)
        return Error{"armpits-pulsed-only", "waveform",
                     "armpits are treated with pulsed current only; choose pulsed, or leave the armpits out"};
    if (!(q.limit.mA > 0) || q.limit > trade.limit)
        return Error{
            "limit-out-of-range", "limit",
            fmt::format(
                "a limit of {} mA is not above 0 and at most {} mA; nothing may be raised above the trade's limit",
                q.limit.mA, trade.limit.mA)};
    return std::nullopt;
}

class Writer {
public:
    explicit Writer(const ScriptRequest& q) : m_q(q), m_under(q.way == WayOfWorking::HandsUnder) {}

    Script write()
    {
        const PhasePlan plan = phasesFor(m_q.site);
        const bool sided = m_q.site == Site::HandFoot;
        add(StepKind::CheckList, kCheckListEstimate, false, Prompt::CheckEverything);
        // Machines start in direct current at every switch-on (common practice, no source).
        add(StepKind::SwitchOn, kSwitchOnEstimate, false,
            m_q.waveform == Waveform::Direct ? Prompt::SwitchOnDirect : Prompt::SwitchOnPulsed);
        for (m_phase = 1; m_phase <= plan.phases; ++m_phase) {
            m_polarity = m_phase % 2 == 1 ? 1 : -1;
            if (sided)
                m_side = (m_phase <= 2) == (m_q.firstSide == Side::Right) ? Side::Right : Side::Left;
            if (m_phase > 1)
                change(sided && m_phase == 3);
            phase(m_q.hold.value_or(plan.hold));
        }
        m_phase = 0;
        m_polarity = 0;
        m_side.reset();
        add(StepKind::Finish, kFinishEstimate, false,
            m_under                     ? Prompt::DryAll
            : m_q.site == Site::Armpits ? Prompt::TakePadsOff
                                        : Prompt::LiftOut);
        return {m_q, std::move(m_steps)};
    }

private:
    void phase(Seconds hold)
    {
        if (m_under)
            atZero(StepKind::Announce, kHandsIn, true, Prompt::HandsInSoon);
        add(StepKind::Raise, m_q.raise, m_under, m_under ? Prompt::RaiseByRemote : Prompt::RaiseSlowly);
        add(StepKind::Hold, hold, true, holdPrompt(m_q));
        add(StepKind::Lower, m_q.lower, m_under, lowerPrompt(m_q));
        // Nobody has seen the meter yet: the person's word is waited for.
        if (m_under)
            add(StepKind::HandsOut, kHandsOutEstimate, false,
                m_phase == phasesFor(m_q.site).phases ? Prompt::HandsOutLast : Prompt::HandsOut);
    }

    /// Between two phases: the step bears the number of the phase it leads to.
    void change(bool side)
    {
        atZero(side ? StepKind::MoveSide : StepKind::Swap, m_q.swapping, false,
               side ? Prompt::ChangeSide : swapPrompt());
    }

    /// At zero current there is no polarity.
    void atZero(StepKind kind, Seconds length, bool timed, Prompt prompt)
    {
        const int polarity = m_polarity;
        m_polarity = 0;
        add(kind, length, timed, prompt);
        m_polarity = polarity;
    }

    [[nodiscard]] Prompt swapPrompt() const
    {
        const bool pads = m_q.site == Site::Armpits;
        switch (m_q.swap) {
        case PolaritySwap::Switch: return pads ? Prompt::SoakPadsSwitch : Prompt::FlipSwitch;
        case PolaritySwap::Pads: return pads ? Prompt::SoakPadsExchange : Prompt::SwapLeads;
        case PolaritySwap::Leads: break;
        }
        return pads ? Prompt::SoakPadsLeads : Prompt::SwapLeads;
    }

    void add(StepKind kind, Seconds length, bool timed, Prompt prompt)
    {
        m_steps.push_back({kind, length, timed, m_phase, m_polarity, m_side, m_q.limit, prompt});
    }

    const ScriptRequest& m_q;
    bool m_under;
    int m_phase = 0;
    int m_polarity = 0;
    std::optional<Side> m_side;
    std::vector<Step> m_steps;
};

} // namespace

Seconds Script::holdTotal() const
{
    Seconds sum;
    for (const Step& s : steps)
        if (s.kind == StepKind::Hold)
            sum.s += s.length.s;
    return sum;
}

Seconds Script::total() const
{
    Seconds sum;
    for (const Step& s : steps)
        sum.s += s.length.s;
    return sum;
}

Result<Script> scriptFor(const ScriptRequest& request)
{
    if (auto error = refusal(request))
        return *error;
    return Writer(request).write();
}

// Common practice, no source.
PhasePlan phasesFor(Site site)
{
    switch (site) {
    case Site::Hands: return {{10 * 60}, 2};
    case Site::Feet: return {{15 * 60}, 2};
    case Site::HandFoot: return {{10 * 60}, 4};
    case Site::Armpits: return {{10 * 60}, 2};
    }
    return {};
}

Prompt lowerPrompt(const ScriptRequest& request)
{
    return request.way == WayOfWorking::HandsUnder ? Prompt::LowerByRemote : Prompt::LowerToZero;
}

Prompt holdPrompt(const ScriptRequest& request)
{
    return request.site == Site::Armpits ? Prompt::HoldPads : Prompt::HoldStill;
}

Prompt stoppedPrompt(const ScriptRequest& request)
{
    return request.site == Site::Armpits ? Prompt::StoppedPads : Prompt::Stopped;
}

Tongue tongueFor(const Speakers& speakers)
{
    if (speakers.reader)
        return Tongue::Reader;
    if (speakers.recorded)
        return Tongue::Recorded;
    return speakers.device ? Tongue::Device : Tongue::Foreign;
}

// Feet leave both hands free; hand + foot leaves one; armpit pads leave both; hands-only leaves none, and needs a
// helper or a remote control within reach of the treated hands (common practice, no source). Adults only, and only
// where the prompts are in words that the person understands, because nobody looks or taps: our own choices.
std::optional<WayBar> barOf(Site site, WayOfWorking way, const Machine& machine, AgeGroup age, Phone phone)
{
    const bool hands = site == Site::Hands;
    switch (way) {
    case WayOfWorking::Helper: return std::nullopt;
    case WayOfWorking::FreeHand: return hands ? std::optional(WayBar::NotForSite) : std::nullopt;
    case WayOfWorking::HandsUnder:
        if (!hands)
            return WayBar::NotForSite;
        if (age == AgeGroup::Child)
            return WayBar::AdultsOnly;
        if (!machine.remote)
            return WayBar::NeedsRemote;
        if (phone.tongue == Tongue::Foreign)
            return WayBar::NotSpoken;
        return phone.touch == Touch::Plain ? std::nullopt : std::optional(WayBar::ScreenReader);
    }
    return WayBar::NotForSite;
}

std::optional<Error> refusalOfWay(Site site, WayOfWorking way, const Machine& machine, AgeGroup age, Phone phone)
{
    const auto bar = barOf(site, way, machine, age, phone);
    if (!bar)
        return std::nullopt;
    if (*bar == WayBar::NeedsRemote)
        return Error{"way-needs-remote", "way",
                     "with both hands in the water and nobody beside you, only a remote control can lower the current, "
                     "and none is recorded for this machine; ask somebody to stay beside you"};
    if (*bar == WayBar::NotSpoken)
        return Error{"way-not-spoken", "way",
                     "with both hands in the water you go by what you hear, and no voice of this device is known to "
                     "speak your language; ask somebody to stay beside you"};
    if (*bar == WayBar::ScreenReader)
        return Error{"way-screen-reader", "way",
                     "with a screen reader on, a tap anywhere does not stop the session; ask somebody to stay beside "
                     "you, or use a pedal or a switch"};
    if (auto error = refusal(site, way, age))
        return error;
    return Error{"way-not-for-site", "way", "both hands in the water leave none free; choose a helper"};
}

std::vector<WayAnswer> waysFor(Site site, const Machine& machine, AgeGroup age, Phone phone)
{
    std::vector<WayAnswer> out;
    for (const WayOfWorking way : allOf<WayOfWorking>())
        if (const auto bar = barOf(site, way, machine, age, phone); bar != WayBar::NotForSite)
            out.push_back({way, bar});
    return out;
}

} // namespace firstdew::protocol
