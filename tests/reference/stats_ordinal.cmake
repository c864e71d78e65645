baize_test(NAME stats_ordinal_reference_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_ordinal_test.cpp
           USES stats PARTS nlohmann_json::nlohmann_json)
