#pragma once

#include "print/SummaryPdf.h"

#include <catch2/catch.hpp>

#include <QGuiApplication>

namespace firstdew::tests {

/// One application for the program; offscreen, since pictures are all that is wanted.
inline void needApplication()
{
    static int count = 1;
    static char name[] = "qml_pages";
    static char* arguments[] = {name, nullptr};
    static const bool prepared = [] {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        // Documents kept from an earlier build hold the numbers that enumerations had then.
        qputenv("QML_DISABLE_DISK_CACHE", "1");
        return true;
    }();
    // Never taken down: the libraries' own statics go first at exit.
    static const auto* program = new QGuiApplication(count, arguments);
    static const bool typefaces = (firstdew::print::loadTypefaces(), true);
    REQUIRE(prepared);
    REQUIRE(program != nullptr);
    REQUIRE(typefaces);
}

} // namespace firstdew::tests
