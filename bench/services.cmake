baize_program(NAME services_bench SOURCES ${CMAKE_CURRENT_LIST_DIR}/services.cpp
              USES demo services PARTS benchmark::benchmark)
