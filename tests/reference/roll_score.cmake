baize_test(NAME roll_score_reference_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/roll_score_test.cpp
           USES green PARTS nlohmann_json::nlohmann_json)
