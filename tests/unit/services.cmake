baize_test(NAME services_greens_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/services_greens_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/services_season_test.cpp USES services)
baize_test(NAME services_works_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/services_works_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/services_work_lines_test.cpp USES services)
baize_test(NAME services_records_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/services_records_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/services_report_test.cpp USES services)
baize_test(NAME services_observers_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/services_observers_test.cpp USES services)
baize_test(NAME services_methods_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/services_methods_test.cpp USES services demo)
