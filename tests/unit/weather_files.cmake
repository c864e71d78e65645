baize_test(NAME weather_files_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/weather_files_delimited_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/weather_files_ghcn_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/weather_files_guess_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/weather_files_mapping_test.cpp
           USES weather_files PARTS rapidcheck)
