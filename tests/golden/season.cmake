baize_test(NAME season_golden_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/season_golden_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/season_estimates.cpp
           USES services demo)
baize_program(NAME season_golden_print
              SOURCES ${CMAKE_CURRENT_LIST_DIR}/season_golden_print.cpp
                      ${CMAKE_CURRENT_LIST_DIR}/season_estimates.cpp
              USES services demo)
target_include_directories(season_golden_print PRIVATE ${CMAKE_SOURCE_DIR}/tests)
