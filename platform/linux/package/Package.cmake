# What is installed, and the Debian package of it; `sh platform/linux/package.sh` makes one.
include(GNUInstallDirs)
find_program(RSVG_CONVERT rsvg-convert)
find_program(GZIP gzip)
set(CMAKE_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
set(here ${CMAKE_CURRENT_LIST_DIR})
set(made ${CMAKE_BINARY_DIR}/package-files)
file(MAKE_DIRECTORY ${made})

install(TARGETS firstdew firstdew-cli RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
install(FILES assets/desktop/firstdew.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES assets/appstream/org.firstdew.firstdew.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
# What the app lock asks of the system's own accounts. The administrator may change it.
install(FILES ${here}/firstdew.pam DESTINATION /etc/pam.d RENAME firstdew)
file(WRITE ${made}/conffiles "/etc/pam.d/firstdew\n")
set(CPACK_DEBIAN_PACKAGE_CONTROL_EXTRA ${made}/conffiles)
install(FILES assets/desktop/firstdew.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)

set(package_files)
# Where there is no rsvg-convert the scalable icon stands alone.
if(RSVG_CONVERT)
  foreach(size 48 64 128 256)
    set(png ${made}/firstdew-${size}.png)
    add_custom_command(OUTPUT ${png} DEPENDS assets/desktop/firstdew.svg
      COMMAND ${RSVG_CONVERT} -w ${size} -h ${size} -o ${png} ${CMAKE_SOURCE_DIR}/assets/desktop/firstdew.svg)
    list(APPEND package_files ${png})
    install(FILES ${png} DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/${size}x${size}/apps RENAME firstdew.png)
  endforeach()
endif()
# -n: the same bytes whenever it is built.
function(install_compressed file folder name)
  set(gz ${made}/${name}.gz)
  add_custom_command(OUTPUT ${gz} DEPENDS ${file} COMMAND ${GZIP} -9nc ${file} > ${gz})
  set(package_files ${package_files} ${gz} PARENT_SCOPE)
  install(FILES ${gz} DESTINATION ${folder})
endfunction()
install_compressed(${CMAKE_SOURCE_DIR}/assets/man/firstdew.1 ${CMAKE_INSTALL_MANDIR}/man1 firstdew.1)
install_compressed(${CMAKE_SOURCE_DIR}/assets/man/firstdew-cli.1 ${CMAKE_INSTALL_MANDIR}/man1 firstdew-cli.1)
install_compressed(${here}/changelog ${CMAKE_INSTALL_DATADIR}/doc/firstdew changelog.Debian)
install(FILES ${here}/copyright DESTINATION ${CMAKE_INSTALL_DATADIR}/doc/firstdew)
# What it is made of: package.sh writes it once everything is built.
if(NOT FIRSTDEW_PACKAGE_ARCHITECTURE)
  install(FILES ${made}/firstdew.cdx.json DESTINATION ${CMAKE_INSTALL_DATADIR}/doc/firstdew)
endif()
add_custom_target(package_files ALL DEPENDS ${package_files})

set(FIRSTDEW_MAINTAINER "Firstdew maintainers <maintainers@firstdew.org>" CACHE STRING "Who answers for the package")
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME firstdew)
set(CPACK_PACKAGE_VERSION ${PROJECT_VERSION})
set(CPACK_PACKAGE_CONTACT ${FIRSTDEW_MAINTAINER})
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "tap-water iontophoresis at home, led and kept in time")
set(CPACK_PACKAGE_DESCRIPTION "A phone app for somebody who treats sweating hands, feet or armpits at home\nwith tap-water iontophoresis, and for the nurse who teaches them. It runs\nthe sessions aloud, keeps a clamminess diary of one tap a day, notices early\ndampness in time for a top-up, and hands the prescriber one clear page.\n\nNothing leaves the device unless the person shares it; it never controls the\nmachine and makes no diagnosis. firstdew-cli does the same without a screen.")
set(CPACK_PACKAGING_INSTALL_PREFIX ${CMAKE_INSTALL_PREFIX})
set(CPACK_STRIP_FILES ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_RELEASE 1)
set(CPACK_DEBIAN_PACKAGE_SECTION utils)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
set(FIRSTDEW_PACKAGE_ARCHITECTURE "" CACHE STRING "Of a package that is built on another machine; empty for this one's own")
if(FIRSTDEW_PACKAGE_ARCHITECTURE)
  # dpkg-shlibdeps asks about installed packages, and those of another architecture are not: the libraries by name.
  set(CPACK_DEBIAN_PACKAGE_ARCHITECTURE ${FIRSTDEW_PACKAGE_ARCHITECTURE})
  set(libraries libc6 libfmt9 libgcc-s1 libpam0g libpulse0 libqpdf29 libqrencode4 libqt6core6 libqt6dbus6 libqt6gui6 libqt6multimedia6 libqt6qml6 libqt6quick6
    libqt6svg6 librnp0 libsndfile1 libsqlite3-0 libstdc++6 zlib1g)
else()
  set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
endif()
# The QML modules that the pages import are found at run time, so no library names them;
# tests/package/deb_test.py loads every page with these alone.
set(qml_modules qml6-module-qtquick qml6-module-qtquick-layouts qml6-module-qtquick-templates qml6-module-qtqml
  qml6-module-qtqml-models qml6-module-qtqml-workerscript)
list(JOIN qml_modules ", " CPACK_DEBIAN_PACKAGE_DEPENDS)
string(APPEND CPACK_DEBIAN_PACKAGE_DEPENDS ", libpam-runtime") # common-auth, which /etc/pam.d/firstdew includes
if(libraries)
  list(JOIN libraries ", " named)
  string(APPEND CPACK_DEBIAN_PACKAGE_DEPENDS ", ${named}")
endif()
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "qt6-wayland, xdg-utils")
set(CPACK_DEBIAN_PACKAGE_SUGGESTS "espeak-ng, qt6-speech-speechd-plugin, speech-dispatcher") # a voice of the device
include(CPack)
