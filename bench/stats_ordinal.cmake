baize_program(NAME stats_ordinal_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_ordinal.cpp
              USES stats PARTS benchmark::benchmark_main)
