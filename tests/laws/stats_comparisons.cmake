baize_test(NAME stats_comparisons_laws
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_trial_anova_law.cpp
           USES stats PARTS rapidcheck)
