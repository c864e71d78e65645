baize_test(NAME stats_survival_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_turnbull_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_kaplan_meier_test.cpp
           USES stats PARTS rapidcheck)
