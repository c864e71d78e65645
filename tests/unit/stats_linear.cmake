baize_test(NAME stats_linear_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_linear_test.cpp
           USES stats PARTS rapidcheck)
