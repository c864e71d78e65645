baize_test(NAME stats_mixed_reference_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_mixed_test.cpp
           USES stats PARTS nlohmann_json::nlohmann_json)
