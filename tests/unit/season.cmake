baize_test(NAME season_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/season_evaluate_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/season_project_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/season_read_test.cpp
           USES season)
