import Firstdew

// What stands on Today while nothing is in use.
SetUpFirst {
    title: qsTr("Welcome to Firstdew")
    purpose: qsTr("Firstdew leads you through treating sweating hands, feet or armpits with tap water and a small current, and tells you when the next bath is due. Setting it up takes two minutes and can be left at any point.")
}
