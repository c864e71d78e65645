# A library and everything below it as one WebAssembly module, made by a second
# compiler inside the normal build: object by object, so that a change compiles
# what it touches.
#
#   baize_wasm_module(NAME core USES wasm SOURCES module/exports.cpp HEADERS nlohmann tl)
#
# makes NAME.wasm in the current build folder (target NAME_module; its path in
# the variable NAME_wasm of the caller). HEADERS are folders of header-only parts
# in the system's include path: only they are let in, for the rest of that path
# belongs to the native C library. The sources are compiled without exceptions,
# so what they use must not throw; and for size, except libraries that use Eigen:
# -Os keeps templates of matrix arithmetic from being inlined, 20 times slower.
find_program(BAIZE_WASM_CXX clang++-19)

set(BAIZE_WASM_FLAGS --target=wasm32-wasi -std=c++20 -DNDEBUG -DJSON_NOEXCEPTION
    -fno-exceptions -fno-rtti -ffp-contract=off -ffunction-sections -fdata-sections
    -fvisibility=hidden -Wall -Wextra)
if(BAIZE_WERROR)
  list(APPEND BAIZE_WASM_FLAGS -Werror)
endif()

# Links to HEADERS in a folder of their own.
function(baize_wasm_headers folder)
  file(MAKE_DIRECTORY ${folder})
  foreach(part IN LISTS ARGN)
    find_path(BAIZE_HEADERS_${part} ${part} REQUIRED)
    mark_as_advanced(BAIZE_HEADERS_${part})
    file(CREATE_LINK ${BAIZE_HEADERS_${part}}/${part} ${folder}/${part} SYMBOLIC)
  endforeach()
endfunction()

# One object for each source.
function(baize_wasm_objects out level includes)
  set(objects "")
  foreach(source IN LISTS ARGN)
    cmake_path(RELATIVE_PATH source BASE_DIRECTORY ${CMAKE_SOURCE_DIR} OUTPUT_VARIABLE short)
    string(MAKE_C_IDENTIFIER ${short} stem)
    set(object ${CMAKE_CURRENT_BINARY_DIR}/${stem}.o)
    add_custom_command(
      OUTPUT ${object}
      COMMAND ${CMAKE_CXX_COMPILER_LAUNCHER} ${BAIZE_WASM_CXX} ${BAIZE_WASM_FLAGS} ${level} ${includes}
              -MD -MF ${object}.d -c ${source} -o ${object}
      DEPENDS ${source} DEPFILE ${object}.d
      COMMENT "For phones: ${short}" VERBATIM)
    list(APPEND objects ${object})
  endforeach()
  set(${out} ${objects} PARENT_SCOPE)
endfunction()

function(baize_wasm_module)
  cmake_parse_arguments(ARG "" "NAME" "USES;SOURCES;HEADERS" ${ARGN})
  if(NOT BAIZE_WASM_CXX)
    message(FATAL_ERROR "clang++-19 is missing: it builds the core for phones. Install the "
      "packages of packages.txt, section [run], or configure with -DBAIZE_WEB=OFF.")
  endif()
  set(headers ${CMAKE_CURRENT_BINARY_DIR}/include)
  baize_wasm_headers(${headers} ${ARG_HEADERS})
  baize_closure(all ${ARG_USES})
  set(includes -isystem ${headers})
  foreach(name IN LISTS all)
    get_property(folder GLOBAL PROPERTY BAIZE_FOLDER_${name})
    list(APPEND includes -I${CMAKE_SOURCE_DIR}/${folder}/include)
  endforeach()
  baize_wasm_objects(objects -Os "${includes}" ${ARG_SOURCES})
  foreach(name IN LISTS all)
    get_target_property(sources baize_${name} SOURCES)
    list(FILTER sources INCLUDE REGEX "\\.cpp$")
    get_target_property(parts baize_${name} LINK_LIBRARIES)
    if("Eigen3::Eigen" IN_LIST parts)
      baize_wasm_objects(of_library -O2 "${includes}" ${sources})
    else()
      baize_wasm_objects(of_library -Os "${includes}" ${sources})
    endif()
    list(APPEND objects ${of_library})
  endforeach()
  set(module ${CMAKE_CURRENT_BINARY_DIR}/${ARG_NAME}.wasm)
  # The stack comes first, so that running out of it stops and overwrites nothing.
  add_custom_command(
    OUTPUT ${module}
    COMMAND ${BAIZE_WASM_CXX} --target=wasm32-wasi -mexec-model=reactor -O2 ${objects} -o ${module}
            -Wl,--strip-all -Wl,--stack-first -Wl,-z,stack-size=262144 -Wl,--max-memory=268435456
    DEPENDS ${objects}
    COMMENT "For phones: ${ARG_NAME}.wasm" VERBATIM)
  add_custom_target(${ARG_NAME}_module ALL DEPENDS ${module})
  set(${ARG_NAME}_wasm ${module} PARENT_SCOPE)
endfunction()
