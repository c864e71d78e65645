baize_program(NAME stats_agreement_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_agreement.cpp
              USES stats PARTS benchmark::benchmark_main)
