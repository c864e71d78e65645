baize_program(NAME stats_survival_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_survival.cpp
              USES stats PARTS benchmark::benchmark_main)
