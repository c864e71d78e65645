baize_test(NAME journal_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/journal_entry_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/journal_fold_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/journal_pictures_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/journal_records_test.cpp
           USES entries_json)
