baize_test(NAME green_speed_reference_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/green_speed_slope_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/green_speed_rolling_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/green_speed_protocol_test.cpp
           USES speed PARTS nlohmann_json::nlohmann_json)
