baize_program(NAME speed_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/speed.cpp USES speed
              PARTS benchmark::benchmark_main)
