baize_test(NAME stats_survival_reference_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_survival_test.cpp
           USES stats PARTS nlohmann_json::nlohmann_json)
