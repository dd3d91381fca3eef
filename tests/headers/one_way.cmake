# SPDX-License-Identifier: MIT
# Includes run one way: a folder knows those before it and never those beside or after it.
# What only declares, fwd.hpp, is open to all.
#   cmake -DINCLUDE=<include> -P one_way.cmake
cmake_minimum_required(VERSION 3.16)

# each folder and those it may include, itself apart
set(core "")
set(paper core)
set(leaf core)
set(fold core paper leaf)
set(imposition core paper leaf fold)
set(collation core paper leaf fold imposition)
set(edition core paper leaf fold imposition)
set(evidence core paper leaf fold imposition)
set(drawing core paper leaf fold imposition collation edition evidence)
set(folders core paper leaf fold imposition collation edition evidence drawing)

function(look folder text result)
  string(REGEX MATCHALL "#include <bifolium/[^>]*>" includes "${text}")
  set(wrong "")
  foreach(include IN LISTS includes)
    string(REGEX REPLACE "#include <bifolium/([^>]*)>" "\\1" header "${include}")
    string(REGEX REPLACE "/.*" "" from "${header}")
    if(NOT header STREQUAL "fwd.hpp" AND NOT from STREQUAL folder AND NOT from IN_LIST ${folder})
      list(APPEND wrong ${header})
    endif()
  endforeach()
  set(${result} "${wrong}" PARENT_SCOPE)
endfunction()

# the control: a header of edition/ that includes one of collation/, and the header of everything in a folder
look(edition "#include <bifolium/collation/formula.hpp>\n#include <bifolium/fold.hpp>\n#include <bifolium/fold/fold.hpp>" wrong)
if(NOT wrong STREQUAL "collation/formula.hpp;fold.hpp")
  message(FATAL_ERROR "what includes sideways is not found: ${wrong}")
endif()

set(found "")
foreach(folder IN LISTS folders)
  file(GLOB_RECURSE headers "${INCLUDE}/bifolium/${folder}/*.hpp")
  if(NOT headers)
    message(FATAL_ERROR "no headers in ${folder}/")
  endif()
  foreach(header IN LISTS headers)
    file(READ "${header}" text)
    look(${folder} "${text}" wrong)
    foreach(other IN LISTS wrong)
      string(APPEND found "${header} includes ${other}\n")
    endforeach()
  endforeach()
endforeach()
if(found)
  message(FATAL_ERROR "includes that do not run one way:\n${found}")
endif()
