import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    title: Words.place("bath")
}
