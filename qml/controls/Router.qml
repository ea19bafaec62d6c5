pragma Singleton
import QtQuick

// Where pages ask to go; Main listens.
QtObject {
    signal place(string name)
    signal page(string name, var properties)
    signal back()
    /// The first picture was on the screen: what it had no need of may be made.
    property bool drawn: false
    /// The site a bath was asked for from elsewhere; "" when none.
    property string bathSite: ""
    function startBath(site) { bathSite = site; place("bath") }
}
