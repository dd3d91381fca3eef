# SPDX-License-Identifier: MIT
# One check of the package: cmake -DCASE=... -DSOURCE=... -DWORK=... -DCXX=... [-DVERSION=...] -P check.cmake
#   stage       configures the tree with nothing built, installs it and moves the result away from its prefix
#   consume     a project finds the moved package
#   compiled    a project that has the largest functions compiled once, by a component of the package
#   accept      a project asks for a version and finds the package; it is not built
#   refuse      the same must fail, and say which version was considered
#   component   a component that there is not must fail, and say which there is
#   carried     a project that builds the source along (HOW: add_subdirectory or FetchContent), exports, and is depended on
#   old_cmake   the package read as CMake 3.16 would, which knows no file sets (simulated)
#   absolute    installs headers into a directory given as a whole path
#   missing     says what to install where a library of the tests or the benchmarks is not there
#   left_out    says of programs, tests and benchmarks that they are left out, and how they are built
#   fetch       the opt-in fallback for libraries of the tests
#   pkg_config  compiles with the flags pkg-config gives
#   single      the library written as one file used in place of all headers, in two units
#   vcpkg       runs the port for vcpkg with stand-ins for the functions of vcpkg, and finds what it installed
#   deb         builds the Debian package, installs it into a scratch root, consumes it from there and removes it
cmake_minimum_required(VERSION 3.16)
set(ENV{LC_ALL} C)
set(moved "${WORK}/moved")

function(run)
  execute_process(COMMAND ${ARGN} RESULT_VARIABLE failed OUTPUT_VARIABLE out ERROR_VARIABLE out)
  if(failed)
    list(JOIN ARGN " " line)
    message(FATAL_ERROR "${line}\n${out}")
  endif()
endfunction()

# Configures, builds and tests a project below tests/package.
function(consume name project)
  set(build "${WORK}/${name}")
  file(REMOVE_RECURSE "${build}")
  run(${CMAKE_COMMAND} -S "${SOURCE}/tests/package/${project}" -B "${build}" "-DCMAKE_CXX_COMPILER=${CXX}"
      "-DCMAKE_CXX_FLAGS=${CXX_FLAGS}" ${ARGN})
  run(${CMAKE_COMMAND} --build "${build}")
  # ctest is run in the build tree and must find a test there
  execute_process(COMMAND ${CMAKE_CTEST_COMMAND} WORKING_DIRECTORY "${build}" RESULT_VARIABLE failed OUTPUT_VARIABLE out)
  if(failed OR NOT out MATCHES "100% tests passed, 0 tests failed out of 1")
    message(FATAL_ERROR "${out}")
  endif()
endfunction()

if(CASE STREQUAL "stage")
  file(REMOVE_RECURSE "${WORK}")
  run(${CMAKE_COMMAND} -S "${SOURCE}" -B "${WORK}/unbuilt" "-DCMAKE_CXX_COMPILER=${CXX}" -DBUILD_TESTING=OFF
      "-DCMAKE_INSTALL_PREFIX=${WORK}/stage")
  run(${CMAKE_COMMAND} --install "${WORK}/unbuilt")
  file(RENAME "${WORK}/stage" "${moved}")
  # Headers, all of them, and the package's own files; no program, nothing below an architecture's folder.
  file(GLOB_RECURSE headers RELATIVE "${SOURCE}" "${SOURCE}/include/*.hpp")
  set(share share/cmake/bifolium/bifolium-config.cmake share/cmake/bifolium/bifolium-config-version.cmake
            share/cmake/bifolium/bifolium-targets.cmake share/cmake/bifolium/bifolium.cppm
            share/cmake/bifolium/compiled.cmake share/cmake/bifolium/compiled.cpp share/pkgconfig/bifolium.pc
            share/doc/libbifolium-dev/copyright share/bifolium/bifolium_gdb.py share/bifolium/bifolium.natvis)
  file(GLOB_RECURSE installed RELATIVE "${moved}" "${moved}/*")
  set(expected ${headers} ${share})
  set(more ${installed})
  list(REMOVE_ITEM more ${expected})
  list(REMOVE_ITEM expected ${installed})
  if(more OR expected OR NOT headers)
    message(FATAL_ERROR "installed beyond what should be: ${more}\nnot installed: ${expected}")
  endif()
elseif(CASE STREQUAL "consume")
  consume(consume consumer "-DCMAKE_PREFIX_PATH=${moved}")
elseif(CASE STREQUAL "accept")
  string(MAKE_C_IDENTIFIER "accept_${WANTED}" name)
  run(${CMAKE_COMMAND} -S "${SOURCE}/tests/package/consumer" -B "${WORK}/${name}" "-DCMAKE_CXX_COMPILER=${CXX}"
      "-DCMAKE_PREFIX_PATH=${moved}" "-DWANTED=${WANTED}")
elseif(CASE STREQUAL "compiled")
  consume(compiled consumer "-DCMAKE_PREFIX_PATH=${moved}" -DCOMPILED=ON)
elseif(CASE STREQUAL "refuse")
  string(MAKE_C_IDENTIFIER "refuse_${WANTED}" name)
  execute_process(
    COMMAND ${CMAKE_COMMAND} -S "${SOURCE}/tests/package/consumer" -B "${WORK}/${name}" "-DCMAKE_CXX_COMPILER=${CXX}"
            "-DCMAKE_PREFIX_PATH=${moved}" "-DWANTED=${WANTED}"
    RESULT_VARIABLE failed
    OUTPUT_VARIABLE out
    ERROR_VARIABLE out)
  if(NOT failed OR NOT out MATCHES "bifolium-config.cmake, version: ${VERSION}")
    message(FATAL_ERROR "version ${WANTED} was not refused as it should be:\n${out}")
  endif()
elseif(CASE STREQUAL "component")
  foreach(component IN ITEMS compild Compiled headers)
    execute_process(
      COMMAND ${CMAKE_COMMAND} -S "${SOURCE}/tests/package/consumer" -B "${WORK}/component_${component}" "-DCMAKE_CXX_COMPILER=${CXX}"
              "-DCMAKE_PREFIX_PATH=${moved}" -DCOMPONENT=${component} -DHOW_MUCH=REQUIRED
      RESULT_VARIABLE failed
      OUTPUT_VARIABLE out
      ERROR_VARIABLE out)
    string(REGEX REPLACE "[ \n]+" " " out "${out}")
    if(NOT failed OR NOT out MATCHES "bifolium has no component '${component}': it has one, 'compiled'")
      message(FATAL_ERROR "component ${component} was not refused as it should be:\n${out}")
    endif()
  endforeach()
elseif(CASE STREQUAL "carried")
  set(source "-DBIFOLIUM_SOURCE=${SOURCE}")
  if(HOW STREQUAL "FetchContent")
    set(source "-DFETCHCONTENT_SOURCE_DIR_BIFOLIUM=${SOURCE}" -DFETCHCONTENT_FULLY_DISCONNECTED=ON)
  endif()
  # as it comes: nothing of the library is installed
  consume(${HOW} carried -DHOW=${HOW} ${source})
  run(${CMAKE_COMMAND} --install "${WORK}/${HOW}" --prefix "${WORK}/${HOW}/stage")
  file(GLOB_RECURSE installed "${WORK}/${HOW}/stage/*bifolium*")
  if(installed)
    message(FATAL_ERROR "carried along, the library installs itself unasked: ${installed}")
  endif()
  # asked to install: the dependent exports its own target, and a third project finds that from where it was moved to
  run(${CMAKE_COMMAND} -S "${SOURCE}/tests/package/carried" -B "${WORK}/${HOW}_exported" "-DCMAKE_CXX_COMPILER=${CXX}"
      -DHOW=${HOW} ${source} -DBIFOLIUM_INSTALL=ON)
  file(REMOVE_RECURSE "${WORK}/${HOW}_stage" "${WORK}/${HOW}_moved")
  run(${CMAKE_COMMAND} --install "${WORK}/${HOW}_exported" --prefix "${WORK}/${HOW}_stage")
  file(RENAME "${WORK}/${HOW}_stage" "${WORK}/${HOW}_moved")
  consume(${HOW}_dependent dependent "-DCMAKE_PREFIX_PATH=${WORK}/${HOW}_moved")
elseif(CASE STREQUAL "old_cmake")
  file(REMOVE_RECURSE "${WORK}/old")
  file(COPY "${moved}/" DESTINATION "${WORK}/old")
  set(targets "${WORK}/old/share/cmake/bifolium/bifolium-targets.cmake")
  file(READ "${targets}" text)
  string(REPLACE "CMAKE_VERSION" "simulated_version" old "${text}")
  if(old STREQUAL text)
    message(FATAL_ERROR "the package does not ask for a version of CMake: there is nothing to simulate")
  endif()
  file(WRITE "${targets}" "set(simulated_version 3.16.3)\n${old}")
  consume(old_cmake consumer "-DCMAKE_PREFIX_PATH=${WORK}/old")
elseif(CASE STREQUAL "absolute")
  # Staged below DESTDIR, as packagers do: CMake forbids a path inside the source tree, where the build may lie.
  set(include /opt/headers/include)
  run(${CMAKE_COMMAND} -S "${SOURCE}" -B "${WORK}/absolute" "-DCMAKE_CXX_COMPILER=${CXX}" -DBUILD_TESTING=OFF
      -DCMAKE_INSTALL_PREFIX=/usr "-DCMAKE_INSTALL_INCLUDEDIR=${include}")
  set(root "${WORK}/absolute_root")
  file(REMOVE_RECURSE "${root}")
  run(${CMAKE_COMMAND} -E env "DESTDIR=${root}" ${CMAKE_COMMAND} --install "${WORK}/absolute")
  file(STRINGS "${root}/usr/share/pkgconfig/bifolium.pc" line REGEX "^includedir=")
  file(STRINGS "${root}/usr/share/cmake/bifolium/bifolium-targets.cmake" property REGEX "INTERFACE_INCLUDE_DIRECTORIES")
  if(NOT line STREQUAL "includedir=${include}" OR NOT property MATCHES "\"${include}")
    message(FATAL_ERROR "headers are in ${include}, and the package says\n${line}\n${property}")
  endif()
  if(NOT EXISTS "${root}${include}/bifolium/bifolium.hpp")
    message(FATAL_ERROR "no headers were installed in ${include}")
  endif()
elseif(CASE STREQUAL "missing")
  foreach(library IN ITEMS doctest pugixml)
    execute_process(
      COMMAND ${CMAKE_COMMAND} -S "${SOURCE}" -B "${WORK}/without_${library}" "-DCMAKE_CXX_COMPILER=${CXX}"
              -DCMAKE_DISABLE_FIND_PACKAGE_${library}=ON -DBIFOLIUM_BUILD_EXAMPLES=OFF -DBIFOLIUM_BUILD_BENCH=OFF
      RESULT_VARIABLE failed OUTPUT_VARIABLE out ERROR_VARIABLE out)
    string(REGEX REPLACE "[ \n]+" " " out "${out}")
    if(failed OR NOT out MATCHES "${library} \\(Debian: [a-z-]*${library}[a-z-]*\\) is not installed, so ")
      message(FATAL_ERROR "without ${library} the build should say what is left out and what to install, and says:\n${out}")
    endif()
  endforeach()
  execute_process(
    COMMAND ${CMAKE_COMMAND} -S "${SOURCE}" -B "${WORK}/without_benchmark" "-DCMAKE_CXX_COMPILER=${CXX}"
            -DCMAKE_DISABLE_FIND_PACKAGE_benchmark=ON -DBIFOLIUM_BUILD_TESTS=OFF -DBIFOLIUM_BUILD_EXAMPLES=OFF
    RESULT_VARIABLE failed OUTPUT_VARIABLE out ERROR_VARIABLE out)
  if(failed OR NOT out MATCHES "libbenchmark-dev\\) is not installed: no benchmarks are built")
    message(FATAL_ERROR "without Google Benchmark the build should go on and say so, and says:\n${out}")
  endif()
elseif(CASE STREQUAL "left_out")
  # BUILD_TESTING=OFF leaves all three out, and says of each what builds it; what is built is not said to be left out.
  foreach(options IN ITEMS "" "-DBIFOLIUM_BUILD_EXAMPLES=ON")
    execute_process(COMMAND ${CMAKE_COMMAND} -S "${SOURCE}" -B "${WORK}/left_out${options}" "-DCMAKE_CXX_COMPILER=${CXX}"
                            -DBUILD_TESTING=OFF ${options} RESULT_VARIABLE failed OUTPUT_VARIABLE out ERROR_VARIABLE out)
    foreach(option IN ITEMS EXAMPLES TESTS BENCH)
      string(FIND "${out}" "are left out; -DBIFOLIUM_BUILD_${option}=ON builds them" said)
      if(options MATCHES "${option}")
        set(expected FALSE)
      else()
        set(expected TRUE)
      endif()
      if(failed OR (expected AND said EQUAL -1) OR (NOT expected AND NOT said EQUAL -1))
        message(FATAL_ERROR "with BUILD_TESTING=OFF ${options} the build should say what is left out, and says:\n${out}")
      endif()
    endforeach()
  endforeach()
elseif(CASE STREQUAL "fetch")
  # Unconnected, the fallback says what could not be had. Given a tree of doctest, it builds with that.
  set(options "-DCMAKE_CXX_COMPILER=${CXX}" -DCMAKE_DISABLE_FIND_PACKAGE_doctest=ON -DBIFOLIUM_BUILD_EXAMPLES=OFF
              -DBIFOLIUM_BUILD_BENCH=OFF -DFETCHCONTENT_FULLY_DISCONNECTED=ON -DBIFOLIUM_FETCH=ON)
  execute_process(COMMAND ${CMAKE_COMMAND} -S "${SOURCE}" -B "${WORK}/unconnected" ${options} RESULT_VARIABLE failed
                  OUTPUT_VARIABLE out ERROR_VARIABLE out)
  string(REGEX REPLACE "[ \n]+" " " out "${out}")
  if(NOT failed OR NOT out MATCHES "doctest v[0-9.]+ could not be fetched: install it \\(Debian: doctest-dev\\)")
    message(FATAL_ERROR "without a network the fallback should say what to install, and says:\n${out}")
  endif()
  set(tree "${WORK}/doctest")
  file(COPY "${DOCTEST_DIR}/doctest.cmake" "${DOCTEST_DIR}/doctestAddTests.cmake" DESTINATION "${tree}/scripts/cmake")
  file(WRITE "${tree}/CMakeLists.txt" "add_library(doctest INTERFACE)\nadd_library(doctest::doctest ALIAS doctest)\n"
                                      "target_include_directories(doctest INTERFACE ${DOCTEST_INCLUDE})\n")
  run(${CMAKE_COMMAND} -S "${SOURCE}" -B "${WORK}/given" ${options} "-DFETCHCONTENT_SOURCE_DIR_DOCTEST=${tree}")
  if(NOT EXISTS "${WORK}/given/CMakeCache.txt")
    message(FATAL_ERROR "the fallback configured nothing")
  endif()
elseif(CASE STREQUAL "pkg_config")
  set(ENV{PKG_CONFIG_PATH} "${moved}/share/pkgconfig")
  execute_process(COMMAND "${PKG_CONFIG}" --cflags bifolium RESULT_VARIABLE failed OUTPUT_VARIABLE flags
                  OUTPUT_STRIP_TRAILING_WHITESPACE)
  if(failed OR NOT flags MATCHES "^-I")
    message(FATAL_ERROR "pkg-config gives no include path: ${flags}")
  endif()
  execute_process(COMMAND "${PKG_CONFIG}" --modversion bifolium OUTPUT_VARIABLE version OUTPUT_STRIP_TRAILING_WHITESPACE)
  if(NOT version STREQUAL VERSION)
    message(FATAL_ERROR "pkg-config says version ${version}")
  endif()
  separate_arguments(flags UNIX_COMMAND "${CXX_FLAGS} ${flags}")
  run("${CXX}" -std=c++20 ${flags} "${SOURCE}/tests/package/consumer/one.cpp" "${SOURCE}/tests/package/consumer/two.cpp" -o
      "${WORK}/by_pkg_config")
  run("${WORK}/by_pkg_config")
elseif(CASE STREQUAL "single")
  # under the name of the header that the two units include
  run(${CMAKE_COMMAND} "-DOUT=${WORK}/single/bifolium/imposition.hpp" -P "${SOURCE}/cmake/single.cmake")
  separate_arguments(flags UNIX_COMMAND "${CXX_FLAGS}")
  run("${CXX}" -std=c++20 ${flags} -Wall -Wextra -Wpedantic -Werror "-I${WORK}/single" "${SOURCE}/tests/package/consumer/one.cpp"
      "${SOURCE}/tests/package/consumer/two.cpp" -o "${WORK}/single/program")
  run("${WORK}/single/program")
elseif(CASE STREQUAL "vcpkg")
  set(CURRENT_PACKAGES_DIR "${WORK}/vcpkg/package")
  file(REMOVE_RECURSE "${WORK}/vcpkg")
  function(vcpkg_cmake_configure)
    cmake_parse_arguments(GIVEN "" "SOURCE_PATH" "OPTIONS" ${ARGN})
    run(${CMAKE_COMMAND} -S "${GIVEN_SOURCE_PATH}" -B "${WORK}/vcpkg/build" "-DCMAKE_CXX_COMPILER=${CXX}"
        "-DCMAKE_INSTALL_PREFIX=${CURRENT_PACKAGES_DIR}" ${GIVEN_OPTIONS})
  endfunction()
  function(vcpkg_cmake_install)
    run(${CMAKE_COMMAND} --install "${WORK}/vcpkg/build")
  endfunction()
  function(vcpkg_cmake_config_fixup) # it looks in share/<port> unless told, and takes out what is elsewhere
    if(ARGN OR NOT EXISTS "${CURRENT_PACKAGES_DIR}/share/bifolium/bifolium-config.cmake")
      message(FATAL_ERROR "the configuration is not where vcpkg looks for it")
    endif()
  endfunction()
  function(vcpkg_fixup_pkgconfig)
  endfunction()
  function(vcpkg_install_copyright)
    cmake_parse_arguments(GIVEN "" "" "FILE_LIST" ${ARGN})
    file(COPY ${GIVEN_FILE_LIST} DESTINATION "${CURRENT_PACKAGES_DIR}/share/bifolium")
  endfunction()
  include("${SOURCE}/cmake/recipes/vcpkg/bifolium/portfile.cmake")
  run(${CMAKE_COMMAND} -S "${SOURCE}/tests/package/consumer" -B "${WORK}/vcpkg/consumer" "-DCMAKE_CXX_COMPILER=${CXX}"
      "-DCMAKE_PREFIX_PATH=${CURRENT_PACKAGES_DIR}" "-DWANTED=${VERSION}")
  file(GLOB_RECURSE installed RELATIVE "${CURRENT_PACKAGES_DIR}" "${CURRENT_PACKAGES_DIR}/*")
  list(FILTER installed EXCLUDE REGEX "^(include/bifolium|share/bifolium|share/pkgconfig)/")
  if(installed OR NOT EXISTS "${CURRENT_PACKAGES_DIR}/include/bifolium/bifolium.hpp")
    message(FATAL_ERROR "the port installs elsewhere: ${installed}")
  endif()
  file(READ "${SOURCE}/cmake/recipes/vcpkg/bifolium/vcpkg.json" manifest)
  if(NOT manifest MATCHES "\"version\": \"${VERSION}\"")
    message(FATAL_ERROR "the version in vcpkg.json is not ${VERSION}")
  endif()
elseif(CASE STREQUAL "deb")
  execute_process(COMMAND ${CMAKE_CPACK_COMMAND} -G DEB WORKING_DIRECTORY "${WORK}/unbuilt" RESULT_VARIABLE failed
                  OUTPUT_VARIABLE out ERROR_VARIABLE out)
  file(GLOB package "${WORK}/unbuilt/libbifolium-dev_${VERSION}_all.deb")
  if(failed OR NOT package)
    message(FATAL_ERROR "no Debian package for all architectures came of it:\n${out}")
  endif()
  find_program(lintian lintian)
  if(lintian)
    run(${lintian} --allow-root --fail-on error,warning "${package}")
  endif()
  # Installed into a root of its own by dpkg, consumed from there, verified and removed without a trace.
  set(root "${WORK}/root")
  file(REMOVE_RECURSE "${root}")
  foreach(folder IN ITEMS info updates triggers)
    file(MAKE_DIRECTORY "${root}/var/lib/dpkg/${folder}")
  endforeach()
  file(WRITE "${root}/var/lib/dpkg/status" "")
  set(dpkg dpkg "--root=${root}" --force-not-root --log=/dev/null)
  run(${dpkg} --install "${package}")
  execute_process(COMMAND ${dpkg} --status libbifolium-dev OUTPUT_VARIABLE status ERROR_VARIABLE status)
  if(NOT status MATCHES "Status: install ok installed.*Architecture: all.*Version: ${VERSION}")
    message(FATAL_ERROR "the installed package says\n${status}")
  endif()
  file(GLOB_RECURSE installed RELATIVE "${root}/usr" "${root}/usr/*")
  if(NOT "include/bifolium/bifolium.hpp" IN_LIST installed OR installed MATCHES "(^|;)(lib|bin)/")
    message(FATAL_ERROR "the package installs ${installed}")
  endif()
  consume(from_deb consumer "-DCMAKE_PREFIX_PATH=${root}/usr")
  run(${dpkg} --verify libbifolium-dev)
  run(${dpkg} --purge libbifolium-dev)
  if(EXISTS "${root}/usr/include/bifolium" OR EXISTS "${root}/usr/share/cmake/bifolium")
    message(FATAL_ERROR "the package leaves files behind")
  endif()
else()
  message(FATAL_ERROR "there is no case '${CASE}'")
endif()
