#include "words/Prompts.h"

#include <QCoreApplication>

namespace firstdew::words {

namespace {

struct Prompts {
    Q_DECLARE_TR_FUNCTIONS(Prompts)
};

} // namespace

// The same sentences as in assets/voice/prompts.json, from which the English clips are made; a test holds them
// together.
QString promptText(protocol::Prompt prompt)
{
    using protocol::Prompt;
    switch (prompt) {
    case Prompt::CheckEverything: return Prompts::tr("Check everything on the list. Machine off, current at zero.");
    case Prompt::HandsInSoon: return Prompts::tr("Hands in, in fifteen seconds. Keep them still under the water.");
    case Prompt::RaiseSlowly: return Prompts::tr("Raise the current slowly. It may prickle. It must not hurt.");
    case Prompt::HoldStill: return Prompts::tr("Hold still. Everything stays under water.");
    case Prompt::LowerToZero: return Prompts::tr("Lower the current to zero. Slowly.");
    case Prompt::SwapLeads: return Prompts::tr("Current at zero? Now swap the two leads.");
    case Prompt::FlipSwitch: return Prompts::tr("Current at zero? Now flip the polarity switch.");
    case Prompt::SoakPads: return Prompts::tr("Current at zero? Soak the pads again, and swap polarity.");
    case Prompt::ChangeSide: return Prompts::tr("Current at zero? Now change to the other side.");
    case Prompt::LiftOut: return Prompts::tr("Machine off. Now lift out, and dry your skin.");
    case Prompt::LookAtMeter: return Prompts::tr("Look at the meter.");
    case Prompt::HalfWay: return Prompts::tr("Half way.");
    case Prompt::OneMinute: return Prompts::tr("One minute left.");
    case Prompt::TenSeconds: return Prompts::tr("Ten seconds.");
    case Prompt::Done: return Prompts::tr("Done.");
    case Prompt::TooHigh: return Prompts::tr("Too high! Lower the current now.");
    case Prompt::MachineOff: return Prompts::tr("Machine off. Now.");
    case Prompt::StartAgain: return Prompts::tr("Check the list. Then start again from the beginning.");
    case Prompt::LowerALittle: return Prompts::tr("Lower it a little, until it is comfortable.");
    case Prompt::Stopped: return Prompts::tr("Stopped. Current at zero, machine off, then lift out.");
    }
    return {};
}

QString promptText(const std::string& token)
{
    if (const auto prompt = facts::fromWord<protocol::Prompt>(token))
        return promptText(*prompt);
    return token == "volume-check" ? Prompts::tr("This is how loud I am. Can you hear me over the water?") : QString();
}

} // namespace firstdew::words
