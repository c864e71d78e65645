baize_program(NAME recovery_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/recovery.cpp
              USES recovery PARTS benchmark::benchmark)
