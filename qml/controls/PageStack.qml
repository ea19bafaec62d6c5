import QtQuick
import QtQuick.Templates as T
import Firstdew

// The pages that lie over a place, the last on top.
T.StackView {
    Accessible.ignored: true // each page has a name of its own
    function show(part) { return push(Router.documentOf(part), {}, T.StackView.Immediate) }
    function leave() { clear(T.StackView.Immediate) }
    function back() { if (depth > 1) pop(T.StackView.Immediate); else leave() }
}
