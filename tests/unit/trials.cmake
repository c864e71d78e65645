baize_test(NAME trials_design_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/trials_design_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/trials_plan_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/trials_map_test.cpp
                   ${CMAKE_SOURCE_DIR}/tests/laws/trials_law.cpp
           USES trials PARTS rapidcheck)
baize_test(NAME trials_analysis_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/trials_analysis_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/trials_ordinal_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/trials_power_test.cpp
           USES trials)
baize_test(NAME trials_files_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/trials_files_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/trials_rolls_test.cpp
           USES services sheets)
baize_test(NAME trials_api_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/trials_api_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/api_club.cpp ${CMAKE_CURRENT_LIST_DIR}/api_fakes.cpp
           ${CMAKE_CURRENT_LIST_DIR}/api_contract.cpp
           USES api sheets PARTS yaml-cpp)
baize_test(NAME trials_cli_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/trials_cli_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/cli_bench.cpp ${CMAKE_SOURCE_DIR}/tests/contract/sample_club.cpp
           USES cli sheets)
