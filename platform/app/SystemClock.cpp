#include "SystemClock.h"

#include <QDateTime>

namespace firstdew::app {

SystemClock::SystemClock(std::optional<facts::LocalTime> start, double sessionSpeed)
    : m_start(start), m_speed(sessionSpeed), m_wallStartMs(QDateTime::currentMSecsSinceEpoch())
{
    m_since.start();
}

facts::LocalTime SystemClock::localNow() const
{
    if (m_start)
        return m_start->plusMinutes(static_cast<int>(m_since.elapsed() / 60'000));
    const QDateTime now = QDateTime::currentDateTime();
    static const QDate epoch(1970, 1, 1);
    return {facts::LocalDate(static_cast<int>(epoch.daysTo(now.date()))),
            {now.time().hour() * 60 + now.time().minute()}};
}

facts::Instant SystemClock::instant() const
{
    if (m_speed == 1)
        return {QDateTime::currentMSecsSinceEpoch(), m_since.msecsSinceReference() + m_since.elapsed()};
    const auto fast = [this](qint64 ms) { return static_cast<long long>(static_cast<double>(ms) * m_speed); };
    // The whole of it, so that a test can tell when an event really was.
    return {m_wallStartMs + fast(m_since.elapsed()), fast(m_since.msecsSinceReference() + m_since.elapsed())};
}

} // namespace firstdew::app
