baize_program(NAME observers_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/observers.cpp USES consistency
              PARTS benchmark::benchmark_main)
