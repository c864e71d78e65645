baize_program(NAME trials_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/trials.cpp
              USES trials PARTS benchmark::benchmark_main)
