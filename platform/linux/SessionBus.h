#pragma once

#include <QDBusConnection>
#include <optional>
#include <utility>

namespace firstdew::linuxside {

/// The bus of the person's session, or the one given; joined when it is first wanted, since joining waits for the bus
/// and most starts have no need of it. A connection stands for a bus already joined.
class SessionBus {
public:
    SessionBus() = default;
    SessionBus(QDBusConnection bus) : m_given(std::move(bus)) {}
    [[nodiscard]] QDBusConnection operator*() const { return m_given ? *m_given : QDBusConnection::sessionBus(); }

private:
    std::optional<QDBusConnection> m_given;
};

} // namespace firstdew::linuxside
