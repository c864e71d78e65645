baize_test(NAME green_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/green_club_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/green_kinds_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/green_properties_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/green_records_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/green_remarks_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/green_roll_score_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/green_shared_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/green_tables_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/green_visit_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/green_work_test.cpp
                   ${CMAKE_SOURCE_DIR}/data/cells.cpp
                   ${CMAKE_SOURCE_DIR}/data/read_table.cpp
                   ${CMAKE_SOURCE_DIR}/data/tables.cpp
           USES green PARTS rapidcheck)
target_include_directories(green_test PRIVATE ${CMAKE_SOURCE_DIR}/data)
