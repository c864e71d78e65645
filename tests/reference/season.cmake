baize_test(NAME season_reference_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/season_level_test.cpp
           USES season PARTS nlohmann_json::nlohmann_json)
