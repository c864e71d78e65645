baize_test(NAME journal_law
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/journal_law.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/journal_photo_law.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/journal_model.cpp
           USES journal PARTS rapidcheck)
