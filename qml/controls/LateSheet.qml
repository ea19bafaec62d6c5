import QtQuick

// A sheet that is read and made when it is first opened: few of them ever are.
Loader {
    active: false
    visible: false // takes no room where it is declared; the sheet stands over the page
    function open() { active = true; item.open() }
    function close() { if (item) item.close() }
}
