baize_program(NAME stats_linear_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_linear.cpp
              USES stats PARTS benchmark::benchmark_main)
