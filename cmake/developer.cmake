# SPDX-License-Identifier: MIT
# What the library's own programs are built with. Nothing here reaches a user: the target's interface carries no flags.
set(CMAKE_CXX_EXTENSIONS OFF)
if(NOT CMAKE_BUILD_TYPE AND NOT CMAKE_CONFIGURATION_TYPES)
  set(CMAKE_BUILD_TYPE Release)
endif()

option(BIFOLIUM_WERROR "Treat warnings in the library's own programs as errors" ON)
add_library(bifolium_developer INTERFACE)
target_link_libraries(bifolium_developer INTERFACE bifolium::bifolium)
set(bifolium_warnings)
if(CMAKE_CXX_COMPILER_ID MATCHES "GNU|Clang")
  set(bifolium_warnings -Wall -Wextra -Wpedantic -Wconversion -Wsign-conversion -Wshadow -Wold-style-cast -Wdouble-promotion
      -Wundef -Wcast-qual -Wzero-as-null-pointer-constant)
  if(BIFOLIUM_WERROR)
    list(APPEND bifolium_warnings -Werror)
  endif()
  if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
    # g++ 12 warns about std::string's own operator+ (GCC bug 105329): of an overlap; with -m32, in C++23 and where -O3 takes much of
    # it into one function, of an overflow and of bounds. tests/headers/optimized.sh looks for such warnings in the headers.
    list(APPEND bifolium_warnings -Wno-restrict -Wno-stringop-overflow -Wno-array-bounds)
    if(CMAKE_SIZEOF_VOID_P EQUAL 8) # where std::size_t has 32 bits, the cast that 64 bits need is useless
      list(APPEND bifolium_warnings -Wuseless-cast)
    endif()
  endif()
endif()
target_compile_options(bifolium_developer INTERFACE ${bifolium_warnings})
target_compile_options(bifolium_compiled PRIVATE ${bifolium_warnings})

# The programs and most tests have the largest functions compiled once for all of them, which takes half the time. What is there
# to show the library as headers alone, and what is measured, links bifolium_developer.
option(BIFOLIUM_COMPILED "Compile the largest functions once for the library's own programs and tests" ON)
add_library(bifolium_developer_compiled INTERFACE)
target_link_libraries(bifolium_developer_compiled INTERFACE bifolium_developer)
if(BIFOLIUM_COMPILED)
  target_link_libraries(bifolium_developer_compiled INTERFACE bifolium::compiled)
endif()

# The libraries of the tests and benchmarks are looked for first. A build that goes to the network unasked is a nuisance to
# whoever packages it, so what is missing is fetched only with BIFOLIUM_FETCH=ON, and then at the release named here.
option(BIFOLIUM_FETCH "Fetch doctest and Google Benchmark where they are not installed" OFF)
set(bifolium_doctest_release v2.4.9)
set(bifolium_benchmark_release v1.7.1)
macro(bifolium_fetch library repository)
  include(FetchContent)
  FetchContent_Declare(${library} GIT_REPOSITORY ${repository} GIT_TAG ${bifolium_${library}_release} GIT_SHALLOW ON)
  FetchContent_MakeAvailable(${library})
  if(NOT TARGET ${ARGV2}) # a disconnected machine fetches nothing and says nothing
    message(FATAL_ERROR "${library} ${bifolium_${library}_release} could not be fetched: install it (Debian: ${ARGV3})")
  endif()
endmacro()
