import QtQuick.Templates as T

// The pages that lie over a place, the last on top.
T.StackView {
    function show(page, properties) { return push(page, properties, T.StackView.Immediate) }
    function leave() { clear(T.StackView.Immediate) }
    function back() { if (depth > 1) pop(T.StackView.Immediate); else leave() }
}
