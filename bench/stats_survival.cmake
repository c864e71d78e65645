baize_program(NAME stats_survival_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_survival.cpp
              USES stats PARTS benchmark::benchmark_main)
target_compile_definitions(stats_survival_bench PRIVATE BAIZE_SOURCE_DIR="${CMAKE_SOURCE_DIR}")
