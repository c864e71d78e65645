baize_test(NAME stats_state_space_reference_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_state_space_test.cpp
           USES stats PARTS nlohmann_json::nlohmann_json)
