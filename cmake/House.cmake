# The house: every library is an OBJECT library with its own include root, so a
# circle between libraries is refused by CMake itself, and what a library may
# include is exactly what it declares under USES.
#
#   baize_library(NAME speed FOLDER core/speed USES green stats PARTS fmt::fmt)
#   baize_program(NAME baize SOURCES main.cpp USES cli api)
#
# Sources are every .cpp under FOLDER/src; headers live in
# FOLDER/include/baize/<name>/. READ_FIRST names heavy headers of others that most
# sources of a library include (see baize_read_once).

# Headers of others that cost more than most sources that include them are compiled
# ahead, with those of the standard library that nearly all include; none of ours among
# them. Sources still include what they use: clang-tidy and the headers' own test read
# them without.
function(baize_read_once target)
  if(BAIZE_READ_ONCE AND ARGN)
    target_precompile_headers(${target} PRIVATE <algorithm> <functional> <map> <optional>
      <string> <string_view> <vector> <tl/expected.hpp> ${ARGN})
  endif()
endfunction()

function(baize_library)
  cmake_parse_arguments(ARG "" "NAME;FOLDER" "USES;PARTS;SOURCES;READ_FIRST" ${ARGN})
  set(root ${CMAKE_SOURCE_DIR}/${ARG_FOLDER})
  file(GLOB sources CONFIGURE_DEPENDS ${root}/src/*.cpp)
  file(GLOB headers CONFIGURE_DEPENDS ${root}/include/baize/${ARG_NAME}/*.h)
  list(APPEND sources ${ARG_SOURCES})
  set(target baize_${ARG_NAME})
  if(NOT sources)
    # A library that is headers only still gets a target, and its includes.
    file(WRITE ${CMAKE_BINARY_DIR}/headers_only/${ARG_NAME}.cpp "")
    set(sources ${CMAKE_BINARY_DIR}/headers_only/${ARG_NAME}.cpp)
  endif()
  add_library(${target} OBJECT ${sources} ${headers})
  target_include_directories(${target} PUBLIC ${root}/include PRIVATE ${root}/src)
  foreach(used IN LISTS ARG_USES)
    target_link_libraries(${target} PUBLIC baize_${used})
  endforeach()
  target_link_libraries(${target} PUBLIC ${ARG_PARTS})
  baize_read_once(${target} ${ARG_READ_FIRST})
  set_property(GLOBAL APPEND PROPERTY BAIZE_LIBRARIES ${ARG_NAME})
  set_property(GLOBAL PROPERTY BAIZE_USES_${ARG_NAME} "${ARG_USES}")
  set_property(GLOBAL PROPERTY BAIZE_FOLDER_${ARG_NAME} "${ARG_FOLDER}")
endfunction()

# The library and everything below it, without repeats.
function(baize_closure out)
  set(todo ${ARGN})
  set(seen "")
  while(todo)
    list(POP_FRONT todo name)
    if(name IN_LIST seen)
      continue()
    endif()
    list(APPEND seen ${name})
    get_property(uses GLOBAL PROPERTY BAIZE_USES_${name})
    list(APPEND todo ${uses})
  endwhile()
  set(${out} ${seen} PARENT_SCOPE)
endfunction()

function(baize_program)
  cmake_parse_arguments(ARG "" "NAME" "SOURCES;USES;PARTS" ${ARGN})
  add_executable(${ARG_NAME} ${ARG_SOURCES})
  baize_closure(all ${ARG_USES})
  foreach(used IN LISTS all)
    target_link_libraries(${ARG_NAME} PRIVATE baize_${used})
  endforeach()
  target_link_libraries(${ARG_NAME} PRIVATE ${ARG_PARTS})
endfunction()

# A GoogleTest program that becomes one CTest entry per program. It runs in the
# top folder and finds its data from there, so that no path of this machine is
# compiled in and a compiler cache serves every checkout.
function(baize_test)
  cmake_parse_arguments(ARG "" "NAME" "SOURCES;USES;PARTS" ${ARGN})
  baize_program(NAME ${ARG_NAME} SOURCES ${ARG_SOURCES} USES ${ARG_USES}
                PARTS ${ARG_PARTS} GTest::gtest_main GTest::gmock)
  target_include_directories(${ARG_NAME} PRIVATE ${CMAKE_SOURCE_DIR}/tests)
  target_compile_definitions(${ARG_NAME} PRIVATE
    BAIZE_SOURCE_DIR=".")
  if(BAIZE_READ_ONCE)
    if(NOT TARGET baize_test_headers)
      # A program, as what reads them is: libraries are compiled with another -fpie.
      file(WRITE ${CMAKE_BINARY_DIR}/headers_only/test_headers.cpp "int main() {}\n")
      add_executable(baize_test_headers ${CMAKE_BINARY_DIR}/headers_only/test_headers.cpp)
      target_link_libraries(baize_test_headers PRIVATE GTest::gmock nlohmann_json::nlohmann_json)
      baize_read_once(baize_test_headers <gtest/gtest.h> <nlohmann/json.hpp>)
    endif()
    target_precompile_headers(${ARG_NAME} REUSE_FROM baize_test_headers)
    # Its sources as one: what they all include and instantiate is then compiled once.
    set_target_properties(${ARG_NAME} PROPERTIES UNITY_BUILD ON UNITY_BUILD_BATCH_SIZE 0)
  endif()
  add_test(NAME ${ARG_NAME} COMMAND ${ARG_NAME} WORKING_DIRECTORY ${CMAKE_SOURCE_DIR})
endfunction()

# The headers of a library that no source of it includes before anything else, not even
# compiled ahead. The others are compiled alone, so to speak, with the program.
function(baize_headers_not_first out name folder)
  set(root ${CMAKE_SOURCE_DIR}/${folder})
  file(GLOB sources ${root}/src/*.cpp)
  set(first "")
  get_target_property(ahead baize_${name} PRECOMPILE_HEADERS)
  if(ahead)
    set(sources "")
  endif()
  foreach(source IN LISTS sources)
    file(STRINGS ${source} include REGEX "^#include" LIMIT_COUNT 1)
    list(APPEND first "${include}")
  endforeach()
  file(GLOB headers RELATIVE ${root}/include ${root}/include/baize/${name}/*.h)
  set(left "")
  foreach(header IN LISTS headers)
    if(NOT "#include \"${header}\"" IN_LIST first)
      list(APPEND left ${header})
    endif()
  endforeach()
  set(${out} ${left} PARENT_SCOPE)
endfunction()

# Writes what the gates read: the declared layers, one line a library, and one
# translation unit for each header that is not compiled alone already.
function(baize_finish_house)
  get_property(names GLOBAL PROPERTY BAIZE_LIBRARIES)
  set(lines "")
  set(alone "")
  foreach(name IN LISTS names)
    get_property(uses GLOBAL PROPERTY BAIZE_USES_${name})
    get_property(folder GLOBAL PROPERTY BAIZE_FOLDER_${name})
    baize_closure(all ${uses})
    string(JOIN "," used ${all})
    string(APPEND lines "${name} ${folder} ${used}\n")
    baize_headers_not_first(headers ${name} ${folder})
    set(units "")
    foreach(header IN LISTS headers)
      get_filename_component(stem ${header} NAME_WE)
      set(unit ${CMAKE_BINARY_DIR}/headers/${name}_${stem}.cpp)
      file(GENERATE OUTPUT ${unit} CONTENT "#include \"${header}\"\n")
      list(APPEND units ${unit})
    endforeach()
    if(units)
      add_library(headers_${name} OBJECT EXCLUDE_FROM_ALL ${units})
      target_link_libraries(headers_${name} PRIVATE baize_${name})
      list(APPEND alone headers_${name})
    endif()
  endforeach()
  file(WRITE ${CMAKE_BINARY_DIR}/layers.txt "${lines}")
  add_custom_target(headers_alone DEPENDS ${alone})
  if(BAIZE_TESTS)
    add_test(NAME headers COMMAND ${CMAKE_COMMAND} --build ${CMAKE_BINARY_DIR}
             --target headers_alone)
    set_tests_properties(headers PROPERTIES TIMEOUT 1200 LABELS gate)
  endif()
endfunction()
