#include "words/Errors.h"

#include "words/Names.h"

#include <QCoreApplication>
#include <algorithm>
#include <cstdlib>
#include <optional>

namespace firstdew::words {

namespace {

/// Marks and translates in one; the tool that gathers texts reads the class name here.
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

bool oneOf(const std::string& code, std::initializer_list<std::string_view> codes)
{
    return std::find(codes.begin(), codes.end(), code) != codes.end();
}

std::optional<QString> ofSession(const std::string& code)
{
    if (code == "session-today")
        return Words::tr("This skin had its session today. Let it rest. Next session: tomorrow at the earliest.");
    if (oneOf(code, {"screening-due", "short-question-due"}))
        return Words::tr("The health questions are due. Leave the machine off until they are answered.");
    if (oneOf(code, {"screening-stops", "screening-asks"}))
        return Words::tr(
            "A health question stands in the way. Leave the machine off until a clinician has approved treatment.");
    if (code == "skin-bars")
        return Words::tr(
            "A blister or burn was noted there. Leave the machine off until a clinician has looked at it.");
    if (code == "birth-date-missing")
        return Words::tr("Enter the date of birth first. The limit of the current depends on it.");
    if (code == "waveform-prescribed")
        return Words::tr("Your care sheet prescribes the other current here. Choose that one.");
    if (code == "machine-unsuited")
        return Words::tr("Your machine has only direct current, which must not be used at the armpits.");
    if (code == "machine-lacks-waveform")
        return Words::tr("Your machine does not have this current. Choose the one it has.");
    if (code == "armpits-pulsed-only")
        return Words::tr("Armpits are treated with pulsed current only");
    if (code == "above-limit")
        return Words::tr("The meter is above the limit. Turn it down, then enter what it shows.");
    if (oneOf(code, {"reading-not-a-number", "reading-negative", "reading-implausible"}))
        return Words::tr("No meter shows that. Read it again; if in doubt, lower the current.");
    if (code == "way-needs-remote")
        return Words::tr(
            "With both hands in the water you need a remote control, and none is entered for your machine. "
            "Ask somebody to stay beside you.");
    if (code == "way-not-spoken")
        return Words::tr("With both hands in the water you go by what you hear, and no voice here is known to speak "
                         "your language. Ask somebody to stay beside you.");
    if (code == "way-screen-reader")
        return Words::tr("With a screen reader on, a tap anywhere does not stop the session. Ask somebody to stay "
                         "beside you, or use a pedal or a switch.");
    if (code == "way-adults-only")
        return Words::tr("A child is never alone with both hands in the water. Somebody stays beside the child.");
    if (code == "way-not-for-site")
        return Words::tr("Choose who can tap the phone.");
    if (oneOf(code, {"no-code", "picture-unusable"}))
        return Words::tr("There is no code in this picture that can be read. Take it straight from the front, near and "
                         "in good light.");
    if (code == "enough-for-today")
        return Words::tr(
            "It is enough for today. Leave the machine off; the next session is for tomorrow at the earliest.");
    if (code == "starting-again")
        return Words::tr("Machine off. The session starts again once you confirm the list.");
    if (code == "taught-invalid")
        return Words::tr("Say who watched, and tick what was seen.");
    if (code == "voice-needed")
        return Words::tr(
            "With both hands in the water you go by what you hear, and the voice cannot be made ready. Ask "
            "somebody to stay beside you.");
    if (oneOf(code, {"not-now", "not-raising", "no-current", "already-begun", "awaiting-answer", "nothing-to-resume",
                     "session-ended", "unknown-event"}))
        return Words::tr("That does not belong to this step. Do what the screen says now. If in doubt, lower the "
                         "current to zero and switch the machine off.");
    if (code == "current-flows")
        return Words::tr("The current may still be flowing. Lower it to zero first.");
    return std::nullopt;
}

std::optional<QString> ofFile(const facts::Error& error)
{
    const std::string& code = error.code;
    if (code == "back-up-damaged")
        return Words::tr("This is no back-up, or it was cut short or changed. Take another one.");
    if (code == "passphrase-wrong")
        return Words::tr("It does not open with this passphrase, or is damaged. Try again, or take another back-up.");
    if (code == "passphrase-too-long")
        return Words::tr("This passphrase is too long. Choose one of fewer than 250 characters.");
    if (code == "passphrase-short")
        return Words::tr("This passphrase is too short. Choose one of at least eight characters.");
    if (oneOf(code, {"person-differs", "person-unsure"}))
        return Words::tr("This file may be about somebody else: name or birth date differ, or are missing. Nothing was "
                         "added.");
    if (code == "file-exists")
        return Words::tr("A file of that name is there already. It was left as it is.");
    if (code == "store-replaced")
        return Words::tr(
            "The file with your record was moved, deleted or replaced while Firstdew was open. Nothing was "
            "saved. Close Firstdew, put the file back and open it again.");
    if (code == "care-sheet-future")
        return Words::tr("This care sheet is dated in the future. Ask for one with the right date.");
    if (code == "save-failed")
        return Words::tr("It could not be saved there. Choose another place, or make room first.");
    if (code == "disk-full")
        return Words::tr("There is no room left; nothing was written. Make room and try again.");
    if (oneOf(code, {"file-missing", "file-failed", "store-missing", "store-unreadable", "store-read-only"}))
        return Words::tr(
            "A file could not be read or written. Look whether it is still there and whether there is room.");
    if (code == "move-incomplete")
        return Words::tr("Not everything came over. Your back-up is as it was. Try again with the same file.");
    if (code == "file-too-large")
        return Words::tr("This file is too large to be the right one.");
    if (code == "store-busy")
        return Words::tr("Another program is using the record. Close it and try again.");
    if (oneOf(code, {"store-damaged", "fact-damaged"}))
        return Words::tr("The record is damaged. Keep the file and restore a back-up.");
    if (oneOf(code, {"format-newer", "store-newer", "fact-newer", "care-sheet-newer"}))
        return Words::tr("This is from a newer Firstdew. Update the app first.");
    if (code == "sound-missing")
        return Words::tr("No sound comes from here, so you would not hear the alarm. Switch the sound on, then begin.");
    if (oneOf(code, {"format-unknown", "not-json", "not-an-object", "kind-unknown", "care-sheet-invalid",
                     "field-invalid", "field-missing", "field-unknown", "field-twice", "csv-invalid", "column-missing",
                     "column-twice", "column-unknown", "not-a-table", "not-a-record", "store-foreign"}))
        return Words::tr("This file is not what is needed here (%1). Ask whoever made it.").arg(asWritten(error.input));
    return std::nullopt;
}

} // namespace

QString errorSentence(const facts::Error& error)
{
    if (error.code == "taught-above-limit") // its input is the limit
        return Words::tr("This is above the limit of %1 there. Agree on a level up to the limit.")
            .arg(milliamps(std::strtod(error.input.c_str(), nullptr)));
    if (const auto said = ofSession(error.code))
        return *said;
    if (const auto said = ofFile(error))
        return *said;
    // What core says of an error is English, and meant for the command line.
    return Words::tr("That did not work. Try again. If it happens again, end any session first, then close Firstdew "
                     "and open it again.");
}

} // namespace firstdew::words
