baize_test(NAME sheets_laws SOURCES
           ${CMAKE_CURRENT_LIST_DIR}/sheets_laws.cpp
           ${CMAKE_CURRENT_LIST_DIR}/generators.cpp
           ${CMAKE_CURRENT_LIST_DIR}/../unit/sheets_files.cpp
           USES sheets PARTS rapidcheck)
