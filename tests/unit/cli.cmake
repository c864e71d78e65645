set(cli_parts ${CMAKE_CURRENT_LIST_DIR}/cli_bench.cpp
    ${CMAKE_SOURCE_DIR}/tests/contract/sample_club.cpp)
baize_test(NAME cli_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/cli_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/cli_records_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/cli_observers_test.cpp ${cli_parts} USES cli)
baize_test(NAME cli_scenarios_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/cli_scenarios_test.cpp
           ${cli_parts} ${CMAKE_SOURCE_DIR}/tests/scenarios/expectations.cpp
           ${CMAKE_SOURCE_DIR}/tests/scenarios/records.cpp
           ${CMAKE_SOURCE_DIR}/tests/scenarios/scenario.cpp
           ${CMAKE_SOURCE_DIR}/tests/scenarios/table.cpp
           ${CMAKE_SOURCE_DIR}/tests/scenarios/told.cpp
           ${CMAKE_SOURCE_DIR}/tests/scenarios/visits.cpp USES cli)
baize_test(NAME cli_program_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/cli_program_test.cpp
           PARTS nlohmann_json::nlohmann_json)
target_compile_definitions(cli_program_test PRIVATE BAIZE_PROGRAM="$<TARGET_FILE:baize>")
add_dependencies(cli_program_test baize)
baize_test(NAME cli_methods_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/cli_methods_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/cli_season_model_test.cpp ${cli_parts} USES cli demo)
