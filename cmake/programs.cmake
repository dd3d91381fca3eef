# SPDX-License-Identifier: MIT
# The example programs that are tools, with one line on each for its manual page. Installed with `cmake --install` where the
# examples are built, together with manual pages and completions for bash, both written from what the program prints on --help.
set(bifolium_programs
    "audit_records|find what disagrees in records of early printed books"
    "check_copy|compare a copy of a book with its collation formula"
    "class_page|write a page that folds a sheet step by step, for a class"
    "describe_book|say what a short record tells of an early printed book"
    "find_fold|find how a sheet was folded from its pages"
    "fold_a_sheet|draw the two sides of a sheet to print, cut and fold"
    "name_format|name the bibliographic format of measured leaves"
    "read_formulas|read collation formulas and count their leaves and sheets"
    "reckon_paper|reckon sheets, reams and presswork of editions"
    "sheets_of_book|count the ways in which the remnants of a book were put on sheets"
    "show_formes|show where the pages of a folding scheme are in the formes")

find_program(bifolium_gzip gzip)
set(manual "${PROJECT_BINARY_DIR}/manual")
set(completions "${PROJECT_BINARY_DIR}/completions")
file(MAKE_DIRECTORY "${manual}" "${completions}")
set(pages "")
set(completed "")
foreach(row IN LISTS bifolium_programs)
  string(REGEX REPLACE "\\|.*" "" program "${row}")
  string(REGEX REPLACE ".*\\|" "" whatis "${row}")
  if(NOT TARGET ${program})
    continue()
  endif()
  set(page "${manual}/${program}.1")
  set(compress)
  if(bifolium_gzip)
    set(compress COMMAND ${bifolium_gzip} -9nf "${page}")
    string(APPEND page ".gz")
  endif()
  add_custom_command(
    OUTPUT "${page}"
    COMMAND ${CMAKE_COMMAND} -DPROGRAM=$<TARGET_FILE:${program}> "-DWHATIS=${whatis}" -DVERSION=${PROJECT_VERSION}
            "-DOUT=${manual}/${program}.1" -P "${PROJECT_SOURCE_DIR}/cmake/man.cmake"
    ${compress}
    DEPENDS ${program} "${PROJECT_SOURCE_DIR}/cmake/help.cmake" "${PROJECT_SOURCE_DIR}/cmake/man.cmake"
    VERBATIM)
  add_custom_command(
    OUTPUT "${completions}/${program}"
    COMMAND ${CMAKE_COMMAND} -DPROGRAM=$<TARGET_FILE:${program}> "-DOUT=${completions}/${program}" -P
            "${PROJECT_SOURCE_DIR}/cmake/complete.cmake"
    DEPENDS ${program} "${PROJECT_SOURCE_DIR}/cmake/complete.cmake" "${PROJECT_SOURCE_DIR}/cmake/help.cmake"
    VERBATIM)
  list(APPEND pages "${page}")
  list(APPEND completed "${completions}/${program}")
  install(TARGETS ${program} RUNTIME DESTINATION "${CMAKE_INSTALL_BINDIR}" COMPONENT programs)
endforeach()
add_custom_target(bifolium_manual ALL DEPENDS ${pages} ${completed})
install(FILES ${pages} DESTINATION "${CMAKE_INSTALL_MANDIR}/man1" COMPONENT programs)
install(FILES ${completed} DESTINATION "${CMAKE_INSTALL_DATADIR}/bash-completion/completions" COMPONENT programs)
