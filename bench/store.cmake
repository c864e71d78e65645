baize_program(NAME store_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/store.cpp
              ${CMAKE_SOURCE_DIR}/tests/contract/sample_club.cpp USES store_sqlite
              PARTS benchmark::benchmark)
target_include_directories(store_bench PRIVATE ${CMAKE_SOURCE_DIR}/tests)
