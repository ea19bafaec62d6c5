pragma Singleton
import QtQuick

// Where pages ask to go; Main listens.
QtObject {
    signal place(string name)
    signal page(string name, var properties)
    signal back()
    /// The site a bath was asked for from elsewhere; "" when none.
    property string bathSite: ""
    function startBath(site) { bathSite = site; place("bath") }
}
