baize_test(NAME stats_mixed_laws
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_mixed_law.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_mixed_truth_law.cpp
           USES stats PARTS rapidcheck)
