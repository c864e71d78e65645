baize_test(NAME stats_state_space_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_state_space_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_local_level_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_ljung_box_test.cpp
           USES stats PARTS rapidcheck)
