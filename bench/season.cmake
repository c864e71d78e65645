baize_program(NAME season_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/season.cpp
              USES season demo PARTS benchmark::benchmark)
# By hand: does its time grow as the clubs do?
baize_program(NAME season_clubs SOURCES ${CMAKE_CURRENT_LIST_DIR}/season_clubs.cpp USES season demo)
