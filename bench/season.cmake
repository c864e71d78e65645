baize_program(NAME season_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/season.cpp
              USES season demo PARTS benchmark::benchmark)
