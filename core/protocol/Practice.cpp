#include "protocol/Practice.h"

#include <algorithm>

namespace firstdew::protocol {

Prompt inPractice(Prompt prompt)
{
    switch (prompt) {
    case Prompt::SwitchOnDirect:
    case Prompt::SwitchOnPulsed: return Prompt::PracticeSwitchOn;
    case Prompt::RaiseSlowly:
    case Prompt::RaiseByRemote: return Prompt::PracticeRaise;
    case Prompt::LowerToZero:
    case Prompt::LowerByRemote: return Prompt::PracticeLower;
    default: return prompt;
    }
}

Script practiceOf(const Script& session)
{
    Script out = session;
    for (Step& step : out.steps) {
        step.prompt = inPractice(step.prompt);
        if (step.timed)
            step.length = std::min(step.length, kPracticeStep);
    }
    return out;
}

bool isPractice(const Script& script)
{
    return std::ranges::any_of(script.steps, [](const Step& s) { return s.prompt == Prompt::PracticeSwitchOn; });
}

std::optional<Seconds> realLength(const Script& practice, std::size_t step)
{
    const auto session = scriptFor(practice.request);
    if (!session || step >= session->steps.size() || !session->steps[step].timed)
        return std::nullopt;
    const Seconds real = session->steps[step].length;
    return real > practice.steps[step].length ? std::optional(real) : std::nullopt;
}

} // namespace firstdew::protocol
