#include "SecondTouch.h"

#include <QPointerEvent>

#include <cmath>

namespace firstdew::controls {

void SecondTouch::watch(QObject* window)
{
    if (window == m_window)
        return;
    if (m_window != nullptr)
        m_window->removeEventFilter(this);
    m_window = window;
    if (window != nullptr)
        window->installEventFilter(this);
    emit changed();
}

bool SecondTouch::eventFilter(QObject* /*window*/, QEvent* event)
{
    const bool pressed = event->type() == QEvent::MouseButtonPress || event->type() == QEvent::MouseButtonDblClick ||
                         event->type() == QEvent::TouchBegin;
    if (!pressed || m_stands.isEmpty())
        return false;
    const auto* touch = static_cast<const QPointerEvent*>(event);
    const Touch now{touch->points().constFirst().position(), touch->timestamp(), m_stands};
    if (m_last) {
        const QPointF by = now.at - m_last->at;
        const auto within = static_cast<quint64>(now.stood == m_last->stood ? kBounceMs : kNewMs);
        if (std::hypot(by.x(), by.y()) <= kNear && now.ms >= m_last->ms && now.ms - m_last->ms <= within)
            return true; // and the first one stays the one that later touches are compared with
    }
    m_last = now;
    return false;
}

} // namespace firstdew::controls
