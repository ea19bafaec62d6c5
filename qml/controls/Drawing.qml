import QtQuick
import Firstdew

// A picture that tells what hands do, in the theme and reading direction of the rest.
Sketch {
    implicitWidth: Theme.drawing
    implicitHeight: Theme.drawing
    dark: Appearance.dark
    mirrored: Appearance.rightToLeft
    Accessible.role: Accessible.Graphic
    Accessible.name: Appearance.phrases.drawing(subject)
}
