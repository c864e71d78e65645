baize_program(NAME entries_load SOURCES ${CMAKE_CURRENT_LIST_DIR}/entries_load.cpp
              ${CMAKE_SOURCE_DIR}/tests/unit/api_club.cpp
              ${CMAKE_SOURCE_DIR}/tests/unit/api_fakes.cpp
              USES api store_sqlite PARTS GTest::gtest)
target_include_directories(entries_load PRIVATE ${CMAKE_SOURCE_DIR}/tests)
target_compile_definitions(entries_load PRIVATE BAIZE_SOURCE_DIR="${CMAKE_SOURCE_DIR}")
