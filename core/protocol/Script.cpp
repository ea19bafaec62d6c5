#include "protocol/Script.h"

#include "protocol/Limits.h"

#include <fmt/format.h>

namespace firstdew::protocol {

namespace {

// What a person needs where nothing is timed; for the estimate of the whole only (our own choice).
constexpr Seconds kCheckListEstimate{60};
constexpr Seconds kAnnounce{15};
constexpr Seconds kFinishEstimate{15};

std::optional<Error> refusal(const ScriptRequest& q)
{
    for (const auto& [allowance, name] :
         {std::pair{q.raise, "raising"}, {q.lower, "lowering"}, {q.swapping, "swapping"}})
        if (allowance < kLeastAllowance || allowance > kMostAllowance)
            return Error{"allowance-out-of-range", name,
                         fmt::format("{} s for {} is outside {} to {} s; choose a time in between", allowance.s, name,
                                     kLeastAllowance.s, kMostAllowance.s)};
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
        for (m_phase = 1; m_phase <= plan.phases; ++m_phase) {
            m_polarity = m_phase % 2 == 1 ? 1 : -1;
            if (sided)
                m_side = (m_phase <= 2) == (m_q.firstSide == Side::Right) ? Side::Right : Side::Left;
            if (m_phase > 1)
                change(sided && m_phase == 3);
            phase(plan.hold);
        }
        m_phase = 0;
        m_polarity = 0;
        m_side.reset();
        add(StepKind::Finish, kFinishEstimate, false, Prompt::LiftOut);
        return {m_q, std::move(m_steps)};
    }

private:
    void phase(Seconds hold)
    {
        if (m_under && m_phase == 1)
            add(StepKind::Announce, kAnnounce, true, Prompt::HandsInSoon);
        add(StepKind::Raise, m_q.raise, m_under, Prompt::RaiseSlowly);
        add(StepKind::Hold, hold, true, Prompt::HoldStill);
        add(StepKind::Lower, m_q.lower, m_under, Prompt::LowerToZero);
    }

    /// At zero current, between two phases: the step bears the number of the phase it leads to, no polarity.
    void change(bool side)
    {
        const int polarity = m_polarity;
        m_polarity = 0;
        if (side)
            add(StepKind::MoveSide, m_q.swapping, m_under, Prompt::ChangeSide);
        else
            add(StepKind::Swap, m_q.swapping, m_under, swapPrompt());
        m_polarity = polarity;
    }

    [[nodiscard]] Prompt swapPrompt() const
    {
        if (m_q.site == Site::Armpits)
            return Prompt::SoakPads;
        return m_q.swap == PolaritySwap::Leads ? Prompt::SwapLeads : Prompt::FlipSwitch;
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

// Feet leave both hands free; hand + foot leaves one; armpit pads leave both; hands-only leaves none.
std::vector<WayOfWorking> waysFor(Site site)
{
    if (site == Site::Hands)
        return {WayOfWorking::HandsUnder, WayOfWorking::Helper};
    return {WayOfWorking::FreeHand, WayOfWorking::Helper};
}

} // namespace firstdew::protocol
