#include "late/Parts.h"
#include "linux/QtVoice.h"

#include <QFile>
#include <QFileInfo>
#include <dlfcn.h>

namespace {

firstdew::ports::Voice* make();

} // namespace

FIRSTDEW_PART(Sound, {make});

namespace {

/// The program that speaks with the device's voice stands beside this part, where it was built.
firstdew::ports::Voice* make()
{
    Dl_info self{};
    QString speaker;
    if (dladdr(&firstdewPart, &self) != 0)
        speaker = QFileInfo(QFile::decodeName(self.dli_fname)).path() + QStringLiteral("/firstdew-speaker");
    return new firstdew::linuxside::QtVoice(speaker);
}

} // namespace
