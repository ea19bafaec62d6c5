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
    case Prompt::SwitchOnDirect:
        return Prompts::tr("Switch the machine on. Is the meter at zero, and is it set to direct current? Then tap.");
    case Prompt::SwitchOnPulsed:
        return Prompts::tr(
            "Switch the machine on. Is the meter at zero, and is the light for pulsed current on? Then tap.");
    case Prompt::HandsInSoon: return Prompts::tr("Hands in, in fifteen seconds. Keep them still under the water.");
    case Prompt::RaiseSlowly: return Prompts::tr("Raise the current slowly. It may prickle. It must not hurt.");
    case Prompt::RaiseByRemote:
        return Prompts::tr("Raise the current slowly with the remote. It may prickle. It must not hurt.");
    case Prompt::HoldStill: return Prompts::tr("Hold still. Everything stays under water.");
    case Prompt::HoldPads: return Prompts::tr("Hold still. Both pads stay where they are.");
    case Prompt::LowerToZero: return Prompts::tr("Lower the current to zero. Slowly.");
    case Prompt::LowerByRemote: return Prompts::tr("Lower the current to zero with the remote. Slowly.");
    case Prompt::HandsOut:
        return Prompts::tr("Is the meter at zero? Only then take your hands out. Dry them, and tap.");
    case Prompt::HandsOutLast:
        return Prompts::tr(
            "Is the meter at zero? Only then take your hands out. Dry them, switch the machine off, and tap.");
    case Prompt::SwapLeads:
        return Prompts::tr("Current at zero? Now swap the two leads. Cover small cuts again. Then tap.");
    case Prompt::FlipSwitch:
        return Prompts::tr("Current at zero? Now flip the polarity switch. Cover small cuts again. Then tap.");
    case Prompt::SoakPadsLeads:
        return Prompts::tr("Current at zero? Soak the pads again, and swap the two leads. Then tap.");
    case Prompt::SoakPadsSwitch:
        return Prompts::tr("Current at zero? Soak the pads again, and flip the polarity switch. Then tap.");
    case Prompt::SoakPadsExchange:
        return Prompts::tr("Current at zero? Soak the pads again, and exchange them, right with left. Then tap.");
    case Prompt::ChangeSide:
        return Prompts::tr("Current at zero? Now change to the other side. Cover small cuts again. Then tap.");
    case Prompt::LiftOut: return Prompts::tr("Machine off. Now take your hands or feet out, and dry your skin.");
    case Prompt::TakePadsOff: return Prompts::tr("Machine off. Now take the pads off, and dry your skin.");
    case Prompt::DryAll: return Prompts::tr("Dry your skin and the kit.");
    case Prompt::LookAtMeter: return Prompts::tr("Look at the meter.");
    case Prompt::HalfWay: return Prompts::tr("Half way.");
    case Prompt::OneMinute: return Prompts::tr("One minute left.");
    case Prompt::TenSeconds: return Prompts::tr("Ten seconds.");
    case Prompt::Done: return Prompts::tr("Done.");
    case Prompt::TooHigh: return Prompts::tr("Too high! Lower the current now.");
    case Prompt::MachineOff: return Prompts::tr("Machine off. Now.");
    case Prompt::StartAgain: return Prompts::tr("Check the list. Then start again from the beginning.");
    case Prompt::LowerALittle: return Prompts::tr("Lower it a little, until it is comfortable.");
    case Prompt::WhatDidItDo:
        return Prompts::tr(
            "I was away. What did the machine do? If you do not know, machine off. Then answer on the screen.");
    case Prompt::EnoughForToday: return Prompts::tr("It is enough for today.");
    case Prompt::TooLongAgo: return Prompts::tr("That was too long ago. This session is over. What you did is kept.");
    case Prompt::Stopped:
        return Prompts::tr("Stopped. Current at zero, machine off. Then take your hands or feet out.");
    case Prompt::StoppedPads: return Prompts::tr("Stopped. Current at zero, machine off, then take the pads off.");
    case Prompt::PracticeSwitchOn:
        return Prompts::tr("Practice: the machine stays off. In a real session you switch it on now. Then tap.");
    case Prompt::PracticeRaise:
        return Prompts::tr("Practice: no current. In a real session you turn it up slowly now.");
    case Prompt::PracticeLower:
        return Prompts::tr("Practice: no current. In a real session you turn it down to zero now.");
    }
    return {};
}

QString promptText(const std::string& token)
{
    if (const auto prompt = facts::fromToken<protocol::Prompt>(token))
        return promptText(*prompt);
    return token == "volume-check" ? Prompts::tr("This is how loud I am. Can you hear me over the water?") : QString();
}

} // namespace firstdew::words
