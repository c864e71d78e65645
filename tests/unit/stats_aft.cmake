baize_test(NAME stats_aft_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_aft_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_aft_clusters_test.cpp
           USES stats PARTS rapidcheck)
