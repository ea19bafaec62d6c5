#include "words/Prompts.h"
#include "protocol/Script.h"
#include "sound/Clips.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>

using namespace firstdew;

namespace {

constexpr std::size_t kLeadMs = 25; // what platform/sound/QtVoice.cpp leaves out of a clip behind a tone
constexpr int kQuiet = 100;         // of 32767

QString idOf(protocol::Prompt prompt) { return QString::fromStdString(std::string(facts::token(prompt))); }

// The one clip that no session speaks: it is for trying the volume.
const QString kVolumeCheck = QStringLiteral("volume-check");

} // namespace

TEST_CASE("Every prompt has its text in the table and its clip in the app, and nothing is left over")
{
    QStringList wanted{kVolumeCheck};
    for (const auto prompt : facts::allOf<protocol::Prompt>())
        wanted.append(idOf(prompt));

    QFile table(QStringLiteral(SOURCE_DIR "/assets/voice/prompts.json"));
    REQUIRE(table.open(QIODevice::ReadOnly));
    QStringList written;
    for (const QJsonValue entry : QJsonDocument::fromJson(table.readAll())["prompts"].toArray()) {
        CAPTURE(entry["id"].toString().toStdString());
        CHECK_FALSE(entry["text"].toString().isEmpty());
        CHECK(words::promptText(entry["id"].toString().toStdString()) == entry["text"].toString());
        CHECK_FALSE(entry["when"].toString().isEmpty());
        written.append(entry["id"].toString());
    }

    QStringList spoken;
    for (const auto& clip : QDir(QStringLiteral(":/firstdew/voice/en")).entryInfoList({"*.opus"})) {
        CAPTURE(clip.fileName().toStdString());
        CHECK(clip.size() > 1024); // as large as nothing that is said
        spoken.append(clip.baseName());
    }
    for (auto* list : {&wanted, &written, &spoken})
        list->sort();
    CHECK(written == wanted);
    CHECK(spoken == wanted);
}

TEST_CASE("Every clip begins with silence, so that no word is lost where it follows a tone without a pause")
{
    QFileInfoList clips;
    for (const QString language : {"en", "de", "es", "fr"})
        clips += QDir(QStringLiteral(":/firstdew/voice/") + language).entryInfoList({"*.opus"});
    CHECK(clips.size() == 4 * 39);
    for (const auto& clip : clips) {
        CAPTURE(clip.filePath().toStdString());
        QFile file(clip.filePath());
        REQUIRE(file.open(QIODevice::ReadOnly));
        const sound::Samples samples = sound::samplesOf(file.readAll());
        REQUIRE(samples.size() > kLeadMs * sound::kRate / 100);
        int loudest = 0;
        for (std::size_t at = 0; at < kLeadMs * sound::kRate / 1000; ++at)
            loudest = std::max(loudest, std::abs(static_cast<int>(samples[at])));
        CHECK(loudest < kQuiet);
    }
}
