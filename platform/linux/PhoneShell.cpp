#include "linux/PhoneShell.h"

#include <QDBusMessage>
#include <QGuiApplication>
#include <QInputMethod>
#include <QInputMethodQueryEvent>
#include <QPointerEvent>

namespace firstdew::linuxside {

namespace {

// The keyboard of phone shells, as they all name it on the bus.
const QString kKeyboard = QStringLiteral("sm.puri.OSK0");
const QString kPath = QStringLiteral("/sm/puri/OSK0");

void setUnlessSet(const char* name, const char* value)
{
    if (!qEnvironmentVariableIsSet(name))
        qputenv(name, value);
}

bool takesText(QObject* object)
{
    if (object == nullptr)
        return false;
    QInputMethodQueryEvent query(Qt::ImEnabled | Qt::ImReadOnly);
    QCoreApplication::sendEvent(object, &query);
    return query.value(Qt::ImEnabled).toBool() && !query.value(Qt::ImReadOnly).toBool();
}

bool isOnField(QPointF inWindow)
{
    const auto* method = QGuiApplication::inputMethod();
    return method->inputItemTransform().mapRect(method->inputItemRectangle()).contains(inWindow);
}

} // namespace

bool isPhoneShell() { return qgetenv("XDG_CURRENT_DESKTOP").split(':').contains("Phosh"); }

void preparePhoneShell()
{
    if (!isPhoneShell())
        return;
    if (qEnvironmentVariableIsSet("WAYLAND_DISPLAY"))
        setUnlessSet("QT_QPA_PLATFORM", "wayland;xcb");
    setUnlessSet("QT_WAYLAND_DISABLE_WINDOWDECORATION", "1"); // a title bar takes a twentieth of the screen
    // Qt 6.8 work-around: by the third version it asks for the keyboard with every touch.
    setUnlessSet("QT_WAYLAND_TEXT_INPUT_PROTOCOL", "zwp_text_input_v2");
}

PhoneKeyboard::PhoneKeyboard(QDBusConnection bus, QObject* parent) : QObject(parent), m_bus(std::move(bus)) {}

void PhoneKeyboard::follow()
{
    connect(qGuiApp, &QGuiApplication::focusObjectChanged, this, &PhoneKeyboard::followFocus);
    connect(qGuiApp, &QGuiApplication::aboutToQuit, this, [this] { ask(false); });
    qGuiApp->installEventFilter(this);
    followFocus();
}

/// Who put the keyboard away and touches the field again wants it back; its focus has not changed.
bool PhoneKeyboard::eventFilter(QObject* watched, QEvent* event)
{
    const bool touched = event->type() == QEvent::TouchEnd || event->type() == QEvent::MouseButtonRelease;
    if (touched && watched->isWindowType() && takesText(QGuiApplication::focusObject()) &&
        isOnField(static_cast<QPointerEvent*>(event)->point(0).position())) {
        m_visible = false;
        ask(true);
    }
    return QObject::eventFilter(watched, event);
}

void PhoneKeyboard::followFocus() { ask(takesText(QGuiApplication::focusObject())); }

void PhoneKeyboard::ask(bool visible)
{
    if (m_visible == visible)
        return;
    m_visible = visible;
    QDBusMessage message = QDBusMessage::createMethodCall(kKeyboard, kPath, kKeyboard, QStringLiteral("SetVisible"));
    message.setAutoStartService(false);
    message << visible;
    m_bus.send(message);
}

} // namespace firstdew::linuxside
