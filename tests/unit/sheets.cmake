baize_test(NAME sheets_test SOURCES
           ${CMAKE_CURRENT_LIST_DIR}/sheets_csv_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/sheets_read_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/sheets_bad_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/sheets_write_test.cpp
           ${CMAKE_CURRENT_LIST_DIR}/sheets_files.cpp
           USES sheets)
