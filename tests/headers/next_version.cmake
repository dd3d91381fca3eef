# SPDX-License-Identifier: MIT
# The headers as a later version would have them: in the inline namespace v1.
#   cmake -DINCLUDE=... -DOUT=... -P next_version.cmake
cmake_minimum_required(VERSION 3.16)
file(GLOB_RECURSE headers RELATIVE "${INCLUDE}" "${INCLUDE}/bifolium/*.hpp")
foreach(header IN LISTS headers)
  file(READ "${INCLUDE}/${header}" text)
  string(REPLACE "inline namespace v0 {" "inline namespace v1 {" text "${text}")
  string(REPLACE "define BIFOLIUM_VERSION_MAJOR 0" "define BIFOLIUM_VERSION_MAJOR 1" text "${text}")
  file(WRITE "${OUT}/${header}" "${text}")
endforeach()
file(TOUCH "${OUT}/written")
