baize_test(NAME stats_aft_reference_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_aft_test.cpp
           USES stats PARTS nlohmann_json::nlohmann_json)
