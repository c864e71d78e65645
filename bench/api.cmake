baize_program(NAME api_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/api.cpp
              ${CMAKE_SOURCE_DIR}/tests/unit/api_club.cpp
              ${CMAKE_SOURCE_DIR}/tests/unit/api_fakes.cpp
              ${CMAKE_SOURCE_DIR}/tests/unit/api_wire.cpp
              USES api demo PARTS benchmark::benchmark_main)
target_include_directories(api_bench PRIVATE ${CMAKE_SOURCE_DIR}/tests)
