baize_test(NAME trials_design_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/trials_design_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/trials_plan_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/trials_map_test.cpp
                   ${CMAKE_SOURCE_DIR}/tests/laws/trials_law.cpp
           USES trials PARTS rapidcheck)
baize_test(NAME trials_analysis_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/trials_analysis_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/trials_power_test.cpp
           USES trials)
