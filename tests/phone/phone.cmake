# The core on the phone: what each function answers, that it is as described,
# and that the WebAssembly module answers as the native library does.
set(here ${CMAKE_CURRENT_LIST_DIR})
set(cases ${here}/cases_known.cpp ${here}/cases_random.cpp ${here}/cases_entries.cpp)
foreach(part expectations records scenario table visits)
  list(APPEND cases ${CMAKE_SOURCE_DIR}/tests/scenarios/${part}.cpp)
endforeach()
baize_test(NAME phone_test
           SOURCES ${here}/functions_test.cpp ${here}/entries_test.cpp ${here}/described_test.cpp ${here}/described.cpp
                   ${cases}
           USES wasm recovery stats)
baize_program(NAME phone_cases SOURCES ${here}/cases_main.cpp ${cases} USES wasm recovery stats)
target_include_directories(phone_cases PRIVATE ${CMAKE_SOURCE_DIR}/tests)
target_compile_definitions(phone_cases PRIVATE BAIZE_SOURCE_DIR=".")

if(BAIZE_WEB OR BAIZE_WASM)
  find_program(BAIZE_NODE NAMES node nodejs REQUIRED)
  add_test(NAME phone_module_size
           COMMAND ${BAIZE_NODE} ${here}/module_size.mjs
                   ${CMAKE_BINARY_DIR}/surfaces/wasm/core.wasm 150)
  set_tests_properties(phone_module_size PROPERTIES LABELS web)
endif()
