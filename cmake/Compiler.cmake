# One place for what every translation unit is compiled with.
set(CMAKE_CXX_STANDARD 20)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON)
set(CMAKE_POSITION_INDEPENDENT_CODE ON)

option(BAIZE_WERROR "Treat warnings as errors" ON)
set(BAIZE_SANITIZE "" CACHE STRING "Sanitizers, as given to -fsanitize=")

find_program(BAIZE_CCACHE ccache)
if(BAIZE_CCACHE)
  # The cache cannot see a macro that is defined before a header compiled ahead; we
  # define none.
  set(CMAKE_CXX_COMPILER_LAUNCHER ${CMAKE_COMMAND} -E env
      CCACHE_SLOPPINESS=pch_defines,time_macros ${BAIZE_CCACHE})
endif()

# clang would write the time of day into them; at -O3 g++ 12 takes them for our own, and
# its false alarms there (as 105651 below) fail.
set(read_once OFF)
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND CMAKE_BUILD_TYPE STREQUAL "Debug" AND NOT BAIZE_SANITIZE)
  set(read_once ON)
endif()
option(BAIZE_READ_ONCE "Compile headers of others ahead, and a test program as one" ${read_once})

# The linker that the phone's core needs anyway links a test in a tenth of the
# time; where it is missing, the compiler's own does.
find_program(BAIZE_LLD ld.lld HINTS /usr/lib/llvm-19/bin)
if(BAIZE_LLD)
  cmake_path(GET BAIZE_LLD PARENT_PATH baize_lld_folder)
  add_link_options(-B${baize_lld_folder} -fuse-ld=lld)
endif()

add_compile_options(-Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wno-sign-conversion)
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND CMAKE_CXX_COMPILER_VERSION VERSION_LESS 13)
  # g++ 12 sees overlapping copies in plain string additions when it optimises
  # (its bug 105651, mended in 13).
  add_compile_options(-Wno-restrict)
endif()
if(CMAKE_CXX_COMPILER_ID STREQUAL "Clang")
  # The standard library of g++ 12 uses its own deprecated parts in stable_sort.
  add_compile_options(-Wno-deprecated-declarations)
endif()
if(BAIZE_WERROR)
  add_compile_options(-Werror)
endif()
if(BAIZE_SANITIZE)
  add_compile_options(-fsanitize=${BAIZE_SANITIZE} -fno-omit-frame-pointer
                      -fno-sanitize-recover=all)
  add_link_options(-fsanitize=${BAIZE_SANITIZE})
endif()
# Floating point must give the same digits on every build of the same source.
add_compile_options(-ffp-contract=off)
