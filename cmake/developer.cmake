# SPDX-License-Identifier: MIT
# What the library's own programs are built with. Nothing here reaches a user: the target's interface carries no flags.
set(CMAKE_CXX_EXTENSIONS OFF)
if(NOT CMAKE_BUILD_TYPE AND NOT CMAKE_CONFIGURATION_TYPES)
  set(CMAKE_BUILD_TYPE Release)
endif()

option(BIFOLIUM_WERROR "Treat warnings in the library's own programs as errors" ON)
add_library(bifolium_developer INTERFACE)
target_link_libraries(bifolium_developer INTERFACE bifolium::bifolium)
if(CMAKE_CXX_COMPILER_ID MATCHES "GNU|Clang")
  target_compile_options(
    bifolium_developer
    INTERFACE -Wall -Wextra -Wpedantic -Wconversion -Wsign-conversion -Wshadow -Wold-style-cast -Wdouble-promotion
              -Wundef -Wcast-qual $<$<BOOL:${BIFOLIUM_WERROR}>:-Werror>
              # g++ 12 warns about std::string's own operator+ (GCC bug 105329); the headers do not use it.
              $<$<CXX_COMPILER_ID:GNU>:-Wno-restrict>)
endif()
