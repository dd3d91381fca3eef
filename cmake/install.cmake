# SPDX-License-Identifier: MIT
# The package: headers, a config for find_package, a .pc file. Everything is relative to the prefix, so an installed tree
# can be moved; nothing depends on the architecture, so it goes below share/ and one package serves all.
include(GNUInstallDirs)
include(CMakePackageConfigHelpers)

set(BIFOLIUM_INSTALL_CMAKEDIR "${CMAKE_INSTALL_DATADIR}/cmake/bifolium" CACHE STRING "where the package config goes")
set(BIFOLIUM_INSTALL_PKGCONFIGDIR "${CMAKE_INSTALL_DATADIR}/pkgconfig" CACHE STRING "where the .pc file goes")

# A file set names the headers to the build (each can be compiled alone, see tests/); the include directory stands beside
# it, as consumers older than CMake 3.23 read nothing else. The list is globbed: a header that exists is installed.
if(CMAKE_VERSION VERSION_GREATER_EQUAL 3.23)
  file(GLOB_RECURSE bifolium_headers CONFIGURE_DEPENDS "${PROJECT_SOURCE_DIR}/include/bifolium/*.hpp")
  target_sources(bifolium INTERFACE FILE_SET HEADERS BASE_DIRS "${PROJECT_SOURCE_DIR}/include" FILES ${bifolium_headers})
  install(TARGETS bifolium EXPORT bifolium-targets FILE_SET HEADERS DESTINATION "${CMAKE_INSTALL_INCLUDEDIR}"
          INCLUDES DESTINATION "${CMAKE_INSTALL_INCLUDEDIR}")
else()
  install(TARGETS bifolium EXPORT bifolium-targets INCLUDES DESTINATION "${CMAKE_INSTALL_INCLUDEDIR}")
  install(DIRECTORY "${PROJECT_SOURCE_DIR}/include/bifolium" DESTINATION "${CMAKE_INSTALL_INCLUDEDIR}")
endif()
install(EXPORT bifolium-targets NAMESPACE bifolium:: DESTINATION "${BIFOLIUM_INSTALL_CMAKEDIR}")

# While the version is 0.x a new minor version may change the interface.
write_basic_package_version_file(
  "${PROJECT_BINARY_DIR}/bifolium-config-version.cmake"
  VERSION ${PROJECT_VERSION}
  COMPATIBILITY SameMinorVersion
  ARCH_INDEPENDENT)
install(FILES cmake/bifolium-config.cmake "${PROJECT_BINARY_DIR}/bifolium-config-version.cmake"
        DESTINATION "${BIFOLIUM_INSTALL_CMAKEDIR}")
# The build tree can be used in place of an installed one, by add_subdirectory's dependents too.
export(EXPORT bifolium-targets NAMESPACE bifolium:: FILE "${PROJECT_BINARY_DIR}/bifolium-targets.cmake")
configure_file(cmake/bifolium-config.cmake "${PROJECT_BINARY_DIR}/bifolium-config.cmake" COPYONLY)

# The .pc file finds the prefix from where it lies; an absolute include directory is written as it is.
if(IS_ABSOLUTE "${CMAKE_INSTALL_INCLUDEDIR}")
  set(bifolium_pc_includedir "${CMAKE_INSTALL_INCLUDEDIR}")
else()
  set(bifolium_pc_includedir "\${prefix}/${CMAKE_INSTALL_INCLUDEDIR}")
endif()
if(IS_ABSOLUTE "${BIFOLIUM_INSTALL_PKGCONFIGDIR}")
  set(bifolium_pc_prefix "${CMAKE_INSTALL_PREFIX}")
else()
  string(REGEX REPLACE "[^/]+" ".." bifolium_pc_up "${BIFOLIUM_INSTALL_PKGCONFIGDIR}")
  set(bifolium_pc_prefix "\${pcfiledir}/${bifolium_pc_up}")
endif()
configure_file(cmake/bifolium.pc.in "${PROJECT_BINARY_DIR}/bifolium.pc" @ONLY)
install(FILES "${PROJECT_BINARY_DIR}/bifolium.pc" DESTINATION "${BIFOLIUM_INSTALL_PKGCONFIGDIR}")

if(bifolium_top_level)
  set(CPACK_GENERATOR DEB)
  set(CPACK_PACKAGE_NAME bifolium)
  set(CPACK_PACKAGE_VENDOR "bifolium")
  set(CPACK_PACKAGE_CONTACT "The bifolium maintainers <maintainers@bifolium.invalid>")
  set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
  set(CPACK_DEBIAN_PACKAGE_NAME libbifolium-dev)
  set(CPACK_DEBIAN_PACKAGE_ARCHITECTURE all)
  set(CPACK_DEBIAN_PACKAGE_SECTION libdevel)
  set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
  include(CPack)
endif()
