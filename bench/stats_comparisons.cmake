baize_program(NAME stats_comparisons_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_comparisons.cpp
              USES stats PARTS benchmark::benchmark_main)
