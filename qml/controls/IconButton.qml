import QtQuick
import Firstdew

// A button that shows an icon alone.
ActionButton {
    kind: ButtonFace.Bare
    wordless: true
}
