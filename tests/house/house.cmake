# The gates: what keeps the house as it is drawn.
foreach(gate layers sizes docs)
  baize_test(NAME ${gate} SOURCES ${CMAKE_CURRENT_LIST_DIR}/${gate}_test.cpp
             ${CMAKE_CURRENT_LIST_DIR}/tree.cpp)
  target_compile_definitions(${gate} PRIVATE BAIZE_BUILD_DIR="${CMAKE_BINARY_DIR}")
  set_tests_properties(${gate} PROPERTIES LABELS gate)
endforeach()
