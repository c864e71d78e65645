baize_test(NAME compare_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/compare_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/compare_grouping_test.cpp
           USES compare PARTS rapidcheck)
