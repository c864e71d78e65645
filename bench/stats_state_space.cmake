baize_program(NAME stats_state_space_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_state_space.cpp
              USES stats PARTS benchmark::benchmark_main)
