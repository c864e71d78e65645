baize_program(NAME stats_mixed_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_mixed.cpp
              USES stats PARTS benchmark::benchmark_main)
# For bench/peers/mixed.R: the same table as R has.
baize_program(NAME mixed_times SOURCES ${CMAKE_CURRENT_LIST_DIR}/mixed_times.cpp USES stats)
target_include_directories(mixed_times PRIVATE ${CMAKE_SOURCE_DIR}/tests)
