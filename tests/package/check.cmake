# SPDX-License-Identifier: MIT
# One check of the package: cmake -DCASE=... -DSOURCE=... -DWORK=... -DCXX=... [-DVERSION=...] -P check.cmake
#   stage       configures the tree with nothing built, installs it and moves the result away from its prefix
#   consume     a project finds the moved package (WANTED may ask for a version)
#   refuse      the same must fail, and say which version was considered
#   subproject, fetched   projects that build the source along
#   pkg_config  compiles with the flags pkg-config gives
#   deb         builds the Debian package, unpacks it into a scratch root and consumes it from there
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
elseif(CASE STREQUAL "consume")
  set(wanted)
  if(DEFINED WANTED)
    set(wanted "-DWANTED=${WANTED}")
  endif()
  string(MAKE_C_IDENTIFIER "consume_${WANTED}" name)
  consume(${name} consumer "-DCMAKE_PREFIX_PATH=${moved}" ${wanted})
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
elseif(CASE STREQUAL "subproject")
  consume(subproject subproject "-DBIFOLIUM_SOURCE=${SOURCE}")
elseif(CASE STREQUAL "fetched")
  consume(fetched fetched "-DFETCHCONTENT_SOURCE_DIR_BIFOLIUM=${SOURCE}" -DFETCHCONTENT_FULLY_DISCONNECTED=ON)
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
elseif(CASE STREQUAL "deb")
  execute_process(COMMAND ${CMAKE_CPACK_COMMAND} -G DEB WORKING_DIRECTORY "${WORK}/unbuilt" RESULT_VARIABLE failed
                  OUTPUT_VARIABLE out ERROR_VARIABLE out)
  file(GLOB package "${WORK}/unbuilt/libbifolium-dev_${VERSION}_all.deb")
  if(failed OR NOT package)
    message(FATAL_ERROR "no Debian package for all architectures came of it:\n${out}")
  endif()
  file(REMOVE_RECURSE "${WORK}/root")
  run(dpkg-deb -x "${package}" "${WORK}/root")
  consume(from_deb consumer "-DCMAKE_PREFIX_PATH=${WORK}/root/usr")
else()
  message(FATAL_ERROR "there is no case '${CASE}'")
endif()
