baize_test(NAME consistency_reference_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/consistency_test.cpp USES consistency)
