baize_test(NAME weather_files_reference_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/weather_files_ghcn_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/weather_files_tables_test.cpp
           USES weather_files PARTS nlohmann_json::nlohmann_json)
