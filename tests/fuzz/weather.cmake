baize_fuzz(NAME fuzz_weather_dly SOURCES ${CMAKE_CURRENT_LIST_DIR}/weather_dly.cpp
           USES weather_files)
baize_fuzz(NAME fuzz_weather_ghcn_csv SOURCES ${CMAKE_CURRENT_LIST_DIR}/weather_ghcn_csv.cpp
           USES weather_files)
baize_fuzz(NAME fuzz_weather_delimited SOURCES ${CMAKE_CURRENT_LIST_DIR}/weather_delimited.cpp
           USES weather_files)
