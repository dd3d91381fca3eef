# SPDX-License-Identifier: MIT
# The package: headers, a config for find_package, a .pc file, the licence; the example programs too where they are built. Everything is relative to the prefix, so an installed tree
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
          COMPONENT development INCLUDES DESTINATION "${CMAKE_INSTALL_INCLUDEDIR}")
else()
  install(TARGETS bifolium EXPORT bifolium-targets INCLUDES DESTINATION "${CMAKE_INSTALL_INCLUDEDIR}")
  install(DIRECTORY "${PROJECT_SOURCE_DIR}/include/bifolium" DESTINATION "${CMAKE_INSTALL_INCLUDEDIR}"
          COMPONENT development)
endif()
install(EXPORT bifolium-targets NAMESPACE bifolium:: DESTINATION "${BIFOLIUM_INSTALL_CMAKEDIR}"
        COMPONENT development)

# While the version is 0.x a new minor version may change the interface.
write_basic_package_version_file(
  "${PROJECT_BINARY_DIR}/bifolium-config-version.cmake"
  VERSION ${PROJECT_VERSION}
  COMPATIBILITY SameMinorVersion
  ARCH_INDEPENDENT)
# The module is compiled by whoever imports it: there is no compiled form that two compilers share.
install(FILES cmake/bifolium-config.cmake "${PROJECT_BINARY_DIR}/bifolium-config-version.cmake" cmake/bifolium.cppm
        cmake/compiled.cmake cmake/compiled.cpp
        DESTINATION "${BIFOLIUM_INSTALL_CMAKEDIR}" COMPONENT development)
# The build tree can be used in place of an installed one, by add_subdirectory's dependents too.
export(EXPORT bifolium-targets NAMESPACE bifolium:: FILE "${PROJECT_BINARY_DIR}/bifolium-targets.cmake")
configure_file(cmake/bifolium-config.cmake "${PROJECT_BINARY_DIR}/bifolium-config.cmake" COPYONLY)
configure_file(cmake/bifolium.cppm "${PROJECT_BINARY_DIR}/bifolium.cppm" COPYONLY)
configure_file(cmake/compiled.cmake "${PROJECT_BINARY_DIR}/compiled.cmake" COPYONLY)
configure_file(cmake/compiled.cpp "${PROJECT_BINARY_DIR}/compiled.cpp" COPYONLY)

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
install(FILES "${PROJECT_BINARY_DIR}/bifolium.pc" DESTINATION "${BIFOLIUM_INSTALL_PKGCONFIGDIR}" COMPONENT development)

# Views for debuggers are read by name: nothing on a path could load them for a library that has no file to load.
install(FILES cmake/debugger/bifolium_gdb.py cmake/debugger/bifolium.natvis DESTINATION "${CMAKE_INSTALL_DATADIR}/bifolium"
        COMPONENT development)

# The licence goes with the headers, where it is found by whoever copies them. In a Debian package it is called copyright.
install(FILES cmake/LICENSE DESTINATION "${CMAKE_INSTALL_DATADIR}/doc/libbifolium-dev" RENAME copyright COMPONENT development)

if(bifolium_top_level)
  # What changed, from the README's list, in the form that Debian asks for.
  find_program(bifolium_gzip gzip)
  file(READ README.md readme)
  string(REGEX MATCH "\n## Changes\n\n(\\* [^#]*)\n## " changes "${readme}")
  string(REGEX REPLACE "[ \n]+" " " words "${CMAKE_MATCH_1}")
  string(STRIP "${words}" words)
  string(REPLACE ";" "\t" words "${words}") # it parts the items of a list
  string(REPLACE " " ";" words "${words}")
  # Lines of at most 80 characters, as Debian asks; a star in the list begins one.
  set(changes "")
  set(line " ")
  foreach(word IN LISTS words)
    string(LENGTH "${line} ${word}" length)
    if(word STREQUAL "*" OR length GREATER 80)
      string(APPEND changes "${line}\n")
      set(line "   ")
    endif()
    if(word STREQUAL "*")
      set(line " ")
    endif()
    string(APPEND line " ${word}")
  endforeach()
  string(APPEND changes "${line}")
  string(REPLACE "\t" ";" changes "${changes}")
  string(REGEX REPLACE "^[ \n]+" "  " changes "${changes}")
  foreach(package IN ITEMS bifolium libbifolium-dev)
    set(log "${PROJECT_BINARY_DIR}/${package}.changelog")
    file(WRITE "${log}" "bifolium (${PROJECT_VERSION}) unstable; urgency=low\n\n${changes}\n\n"
                        " -- The bifolium maintainers <maintainers@bifolium.invalid>  Sun, 29 Nov 2026 00:00:00 +0000\n")
    if(bifolium_gzip)
      execute_process(COMMAND ${bifolium_gzip} -9nf "${log}")
      set(component development)
      if(package STREQUAL "bifolium")
        set(component programs)
      endif()
      install(FILES "${log}.gz" DESTINATION "${CMAKE_INSTALL_DATADIR}/doc/${package}" RENAME changelog.gz
              COMPONENT ${component} EXCLUDE_FROM_ALL)
    endif()
  endforeach()

  set(CPACK_GENERATOR DEB)
  set(CPACK_PACKAGE_NAME bifolium)
  set(CPACK_PACKAGE_VENDOR "bifolium")
  set(CPACK_PACKAGE_CONTACT "The bifolium maintainers <maintainers@bifolium.invalid>")
  set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
  set(CPACK_DEB_COMPONENT_INSTALL ON)
  set(CPACK_COMPONENTS_GROUPING IGNORE)
  set(CPACK_COMPONENTS_ALL development)
  set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
  set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
  set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ
                                                  WORLD_EXECUTE)
  set(CPACK_DEBIAN_DEVELOPMENT_PACKAGE_NAME libbifolium-dev)
  set(CPACK_DEBIAN_DEVELOPMENT_PACKAGE_ARCHITECTURE all)
  set(CPACK_DEBIAN_DEVELOPMENT_PACKAGE_SECTION libdevel)
  set(CPACK_COMPONENT_DEVELOPMENT_DESCRIPTION
      "Header-only C++20 library for early printed books: imposition and folding of
sheets, collation formulas, the format of measured leaves, paper and presswork
of editions.")
  if(BIFOLIUM_BUILD_EXAMPLES)
    list(APPEND CPACK_COMPONENTS_ALL programs)
    set(CPACK_DEBIAN_PROGRAMS_PACKAGE_NAME bifolium)
    set(CPACK_DEBIAN_PROGRAMS_PACKAGE_SECTION science)
    set(CPACK_DEBIAN_PROGRAMS_PACKAGE_SHLIBDEPS ON)
    set(CPACK_STRIP_FILES ON)
    set(CPACK_COMPONENT_PROGRAMS_DESCRIPTION
        "Filters and drawing programs for early printed books: read collation formulas,
name the format of measured leaves, check a copy, reckon paper and presswork,
audit catalogue records, show how a sheet is imposed and folded.")
    install(FILES cmake/LICENSE DESTINATION "${CMAKE_INSTALL_DATADIR}/doc/bifolium" RENAME copyright COMPONENT programs)
  endif()
  include(CPack)
endif()
