# The scenario library is plain sources, so that tests of other strata can run the
# same files: give ${BAIZE_SCENARIO_SOURCES} beside your own sources and use recovery.
set(BAIZE_SCENARIO_FOLDER ${CMAKE_CURRENT_LIST_DIR})
set(BAIZE_SCENARIO_SOURCES
    ${CMAKE_CURRENT_LIST_DIR}/expectations.cpp
    ${CMAKE_CURRENT_LIST_DIR}/records.cpp
    ${CMAKE_CURRENT_LIST_DIR}/scenario.cpp
    ${CMAKE_CURRENT_LIST_DIR}/table.cpp
    ${CMAKE_CURRENT_LIST_DIR}/visits.cpp)
baize_test(NAME scenarios_core_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/scenarios_core_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/scenario_test.cpp
                   ${BAIZE_SCENARIO_SOURCES}
           USES recovery)
baize_test(NAME scenarios_http_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/scenarios_http_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/told.cpp
                   ${CMAKE_SOURCE_DIR}/tests/unit/api_club.cpp
                   ${CMAKE_SOURCE_DIR}/tests/unit/api_fakes.cpp
                   ${CMAKE_SOURCE_DIR}/tests/unit/api_wire.cpp
                   ${BAIZE_SCENARIO_SOURCES}
           USES api)
