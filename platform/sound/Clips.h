#pragma once

#include "sound/Timeline.h"

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <atomic>
#include <map>
#include <memory>
#include <mutex>
#include <thread>

namespace firstdew::sound {

/// Samples in a second of everything that is played.
inline constexpr int kRate = 16'000;

/// A sound file of any kind that libsndfile reads, as samples of one channel at kRate. Empty if it cannot be read.
[[nodiscard]] Samples samplesOf(const QByteArray& file);

/// The sounds of the app, decoded once. Files that were fetched beforehand are there without delay.
class Clips {
public:
    Clips() = default;
    ~Clips();
    Clips(const Clips&) = delete;
    Clips& operator=(const Clips&) = delete;
    /// Decodes those files in another thread, unless one still decodes.
    void fetch(const QStringList& files);
    /// Decodes it now if it was not fetched. Never null; empty, and said once, if the file cannot be read.
    [[nodiscard]] std::shared_ptr<const Samples> get(const QString& file);
    /// Drops what was decoded of files in that folder.
    void forget(const QString& folder);

private:
    std::mutex m_mutex; // held for the map alone
    std::map<QString, std::shared_ptr<const Samples>> m_samples;
    std::thread m_fetching;
    std::atomic<bool> m_fetches = false;
    std::atomic<bool> m_ends = false;
};

} // namespace firstdew::sound
