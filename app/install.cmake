# What `cmake --install` and the Debian package (`cpack -G DEB`) hold.
include(GNUInstallDirs)
set(desktop "${CMAKE_SOURCE_DIR}/resources/desktop")

set(man_page "${CMAKE_CURRENT_BINARY_DIR}/zygapose.1")
add_custom_command(TARGET zygapose POST_BUILD VERBATIM BYPRODUCTS "${man_page}"
  COMMAND "${CMAKE_COMMAND}" "-DPROGRAM=$<TARGET_FILE:zygapose>" "-DTEMPLATE=${desktop}/zygapose.1"
    "-DOUT=${man_page}" -P "${desktop}/man_page.cmake")

install(TARGETS zygapose RUNTIME DESTINATION "${CMAKE_INSTALL_BINDIR}")
install(FILES "${CMAKE_SOURCE_DIR}/samples/high_browser.csv" "${CMAKE_SOURCE_DIR}/samples/low_browser.csv"
  "${CMAKE_SOURCE_DIR}/samples/wide_gauge.csv"
  DESTINATION "${CMAKE_INSTALL_DATADIR}/zygapose/samples")
install(DIRECTORY "${CMAKE_SOURCE_DIR}/samples/scans" DESTINATION "${CMAKE_INSTALL_DATADIR}/zygapose/samples"
  FILES_MATCHING PATTERN "*.ply" PATTERN "*.csv")
install(FILES "${desktop}/zygapose.desktop" DESTINATION "${CMAKE_INSTALL_DATADIR}/applications")
install(FILES "${desktop}/zygapose.svg" DESTINATION "${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps")
install(FILES "${desktop}/zygapose.xml" DESTINATION "${CMAKE_INSTALL_DATADIR}/mime/packages")
install(FILES "${man_page}" DESTINATION "${CMAKE_INSTALL_MANDIR}/man1")

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME zygapose)
set(CPACK_PACKAGE_CONTACT "the Zygapose maintainers <maintainers@zygapose.example>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "poses a sauropod skeleton and judges each joint by its bones")
set(CPACK_PACKAGE_DESCRIPTION "Builds a skeleton at the right size from a table of measurements, lets it be posed by
hand and tells joint by joint whether the bones support the pose, and why not.")
set(CPACK_STRIP_FILES ON)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# Pictures in the window are SVG, drawn by a plug-in that no library dependency names.
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libqt6svg6, qt6-qpa-plugins")
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "fonts-dejavu-core, libgl1-mesa-dri")
include(CPack)
