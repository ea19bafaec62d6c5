#include "words/Prompts.h"
#include "protocol/Script.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QtEndian>
#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>

using namespace firstdew;

namespace {

constexpr int kHeaderBytes = 44; // of a WAV file
constexpr int kSamplesPerMs = 16;
constexpr int kLeadMs = 25; // what platform/sound/QtVoice.cpp leaves out of a clip behind a tone
constexpr int kQuiet = 100; // of 32767

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
    for (const auto& clip : QDir(QStringLiteral(":/firstdew/voice/en")).entryInfoList({"*.wav"})) {
        CAPTURE(clip.fileName().toStdString());
        CHECK(clip.size() > 4096); // a quarter of a second at the least
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
    for (const QString language : {"en", "de", "es"})
        clips += QDir(QStringLiteral(":/firstdew/voice/") + language).entryInfoList({"*.wav"});
    CHECK(clips.size() == 3 * 39);
    for (const auto& clip : clips) {
        CAPTURE(clip.filePath().toStdString());
        QFile file(clip.filePath());
        REQUIRE(file.open(QIODevice::ReadOnly));
        const QByteArray lead = file.read(kHeaderBytes + 2 * kSamplesPerMs * kLeadMs).mid(kHeaderBytes);
        REQUIRE(lead.size() == 2 * kSamplesPerMs * kLeadMs);
        int loudest = 0;
        for (int at = 0; at < lead.size(); at += 2)
            loudest = std::max(loudest, std::abs(static_cast<int>(qFromLittleEndian<qint16>(lead.constData() + at))));
        CHECK(loudest < kQuiet);
    }
}
