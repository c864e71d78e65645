baize_program(NAME pictures_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/pictures.cpp
              USES pictures entries_json PARTS benchmark::benchmark_main OpenSSL::Crypto)
target_include_directories(pictures_bench PRIVATE ${CMAKE_SOURCE_DIR}/tests)
