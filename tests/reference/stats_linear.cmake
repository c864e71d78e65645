baize_test(NAME stats_linear_reference_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_linear_test.cpp
           USES stats PARTS nlohmann_json::nlohmann_json)
