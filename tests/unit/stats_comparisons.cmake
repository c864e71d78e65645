baize_test(NAME stats_comparisons_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_bootstrap_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_power_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_nonlinear_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_mean_comparisons_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_random_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_trial_anova_test.cpp
           USES stats PARTS rapidcheck)
