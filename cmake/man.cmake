# SPDX-License-Identifier: MIT
# Writes the manual page of a program from what it prints on --help, so that the two cannot differ.
#   cmake -DPROGRAM=<path> -DWHATIS="one line" -DVERSION=0.2.0 -DOUT=<name.1> -P man.cmake
cmake_minimum_required(VERSION 3.16)
include("${CMAKE_CURRENT_LIST_DIR}/help.cmake")
read_help("${PROGRAM}" name help)
# The usage is what comes first, up to the first line that begins neither with the usage nor with blanks.
string(REGEX REPLACE "\\\\" "\\\\\\\\" help "${help}")   # a backslash is an escape in a manual page
string(REGEX REPLACE "(^|\n)([.'])" "\\1@amp@\\2" help "${help}") # and so are these at the beginning of a line
string(REPLACE "@amp@" "\\&" help "${help}")
string(REPLACE "-" "\\-" help "${help}")
string(REGEX REPLACE "^usage: *" "" help "${help}")
string(REGEX MATCH "^[^\n]*\n( [^\n]*\n|${name}[^\n]*\n)*" usage "${help}")
string(LENGTH "${usage}" length)
string(SUBSTRING "${help}" ${length} -1 rest)
string(TOUPPER "${name}" upper)
file(WRITE "${OUT}"
     ".TH ${upper} 1 \"\" \"bifolium ${VERSION}\" \"bifolium\"\n"
     ".SH NAME\n${name} \\- ${WHATIS}\n"
     ".SH SYNOPSIS\n.nf\n${usage}.fi\n"
     ".SH DESCRIPTION\n.nf\n${rest}.fi\n"
     ".SH EXIT STATUS\n"
     "0 when all input was processed (a row in error is told in the row), 1 when input could not be read or output not written, "
     "2 for wrong usage.\n")
