baize_fuzz(NAME weather_dly_fuzz SOURCES ${CMAKE_CURRENT_LIST_DIR}/weather_dly.cpp
           USES weather_files)
baize_fuzz(NAME weather_ghcn_csv_fuzz SOURCES ${CMAKE_CURRENT_LIST_DIR}/weather_ghcn_csv.cpp
           USES weather_files)
baize_fuzz(NAME weather_delimited_fuzz SOURCES ${CMAKE_CURRENT_LIST_DIR}/weather_delimited.cpp
           USES weather_files)
