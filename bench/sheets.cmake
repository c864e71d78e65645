baize_program(NAME sheets_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/sheets.cpp USES sheets
              PARTS benchmark::benchmark)
