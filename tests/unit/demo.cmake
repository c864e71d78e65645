baize_test(NAME demo_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/demo_club_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/demo_chance_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/demo_weather_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/demo_truth_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/demo_files_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/demo_print.cpp USES demo services sheets)
target_include_directories(demo_test PRIVATE ${CMAKE_SOURCE_DIR}/demo/src)
