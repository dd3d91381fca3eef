# SPDX-License-Identifier: MIT
# Writes what bash completes after the name of a program, from what it prints on --help: its options, the words that an option
# takes where these are told (--omitted error|next|8), and the names of schemes where it takes one. Files are completed otherwise.
#   cmake -DPROGRAM=<path> -DOUT=<file> -P complete.cmake
cmake_minimum_required(VERSION 3.16)
include("${CMAKE_CURRENT_LIST_DIR}/help.cmake")
read_help("${PROGRAM}" name help)
string(REGEX MATCHALL "--[a-z][a-z-]*" options "${help}")
list(APPEND options --help)
list(REMOVE_DUPLICATES options)
list(SORT options)
list(JOIN options " " options)
string(REGEX MATCHALL "--[a-z][a-z-]* [a-z0-9-]+(\\|[a-z0-9-]+)+" taking "${help}")
list(REMOVE_DUPLICATES taking)
set(cases "")
foreach(one IN LISTS taking)
  string(REGEX REPLACE " .*" "" option "${one}")
  string(REGEX REPLACE "^[^ ]* " "" words "${one}")
  string(REPLACE "|" " " words "${words}")
  string(APPEND cases "  ${option}) words='${words}' ;;\n")
endforeach()
set(otherwise "    [[ $word == -* ]] && words='${options}'\n")
if(help MATCHES "(^|\n)(usage: | +)?${name} (SCHEME|--list)")
  string(APPEND otherwise "    [[ $word != -* && $COMP_CWORD == 1 ]] && words=$(show_formes --list 2>/dev/null)\n")
endif()
file(WRITE "${OUT}"
     "# SPDX-License-Identifier: MIT\n"
     "# Written by cmake/complete.cmake from ${name} --help.\n"
     "_bifolium_${name}() {\n"
     "  local word=\${COMP_WORDS[COMP_CWORD]} before=\${COMP_WORDS[COMP_CWORD - 1]} words=''\n"
     "  case $before in\n"
     "${cases}"
     "  *)\n"
     "${otherwise}"
     "    ;;\n"
     "  esac\n"
     "  mapfile -t COMPREPLY < <(compgen -W \"$words\" -- \"$word\")\n"
     "}\n"
     "complete -o default -F _bifolium_${name} ${name}\n")
