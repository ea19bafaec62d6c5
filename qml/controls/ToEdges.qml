import QtQuick
import Firstdew

// A background that fills its parent and reaches under notch and bars, where nothing else goes.
Rectangle {
    x: -Theme.safeLeft
    y: -Theme.safeTop
    width: parent.width + Theme.safeLeft + Theme.safeRight
    height: parent.height + Theme.safeTop + Theme.safeBottom
}
