# SPDX-License-Identifier: MIT
# What a program prints on --help. Its manual page and its completion are made of this.

# Sets NAME to the name of the program and HELP to its help.
function(read_help program name help)
  get_filename_component(called "${program}" NAME_WE)
  execute_process(COMMAND "${program}" --help OUTPUT_VARIABLE text RESULT_VARIABLE failed)
  if(failed OR text STREQUAL "")
    message(FATAL_ERROR "${program} --help: ${failed}")
  endif()
  set(${name} "${called}" PARENT_SCOPE)
  set(${help} "${text}" PARENT_SCOPE)
endfunction()
