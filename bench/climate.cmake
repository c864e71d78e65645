baize_program(NAME climate_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/climate.cpp
              USES climate PARTS benchmark::benchmark_main)
baize_program(NAME climate_files_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/climate_files.cpp
              USES weather_files PARTS benchmark::benchmark_main)
target_compile_definitions(climate_files_bench PRIVATE BAIZE_SOURCE_DIR="${CMAKE_SOURCE_DIR}")
