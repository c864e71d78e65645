baize_test(NAME stats_mixed_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_mixed_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_mixed_dense_test.cpp
           USES stats)
