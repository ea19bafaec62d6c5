import QtQuick

// A sheet that is made when it is first opened: few of them ever are.
Loader {
    id: late
    property Component sheet
    active: false
    visible: false // takes no room where it is declared; the sheet stands over the page
    sourceComponent: sheet
    function open() { active = true; item.open() }
    function close() { if (item) item.close() }
}
