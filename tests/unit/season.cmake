baize_test(NAME season_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/season_evaluate_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/season_project_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/season_bound_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/season_rate_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/season_read_test.cpp
           USES season)
target_include_directories(season_test PRIVATE ${CMAKE_SOURCE_DIR}/core/season/src)
baize_test(NAME season_truth_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/season_truth_test.cpp
           USES services demo)
baize_test(NAME season_answer_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/season_answer_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/api_contract.cpp
           USES answers demo PARTS yaml-cpp)
