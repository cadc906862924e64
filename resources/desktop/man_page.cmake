# Fills the verbs of the man page in from what the program itself says, so that the two cannot differ.
#   cmake -DPROGRAM=... -DTEMPLATE=... -DOUT=... -P man_page.cmake
cmake_minimum_required(VERSION 3.25)
execute_process(COMMAND "${PROGRAM}" help OUTPUT_VARIABLE help COMMAND_ERROR_IS_FATAL ANY)
string(REPLACE ";" "," help "${help}")  # a semicolon would part a list
string(REGEX MATCHALL "\n  [a-z-]+  +[^\n]*" lines "${help}")
set(VERBS "")
foreach(line IN LISTS lines)
  string(REGEX REPLACE "^\n  ([a-z-]+) .*" "\\1" verb "${line}")
  if(verb STREQUAL "help")
    continue()
  endif()
  execute_process(COMMAND "${PROGRAM}" help ${verb} OUTPUT_VARIABLE text COMMAND_ERROR_IS_FATAL ANY)
  string(REPLACE "\\" "\\e" text "${text}")
  string(REPLACE "-" "\\-" text "${text}")
  string(REGEX REPLACE "\n([.'])" "\n\\\\&\\1" text "${text}")
  string(APPEND VERBS ".SS ${verb}\n.nf\n${text}.fi\n")
endforeach()
configure_file("${TEMPLATE}" "${OUT}" @ONLY)
