set(cli_parts ${CMAKE_CURRENT_LIST_DIR}/cli_bench.cpp
    ${CMAKE_SOURCE_DIR}/tests/contract/sample_club.cpp)
baize_test(NAME cli_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/cli_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/cli_records_test.cpp ${cli_parts} USES cli)
