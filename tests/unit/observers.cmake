baize_test(NAME observers_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/observers_table_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/observers_pair_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/observers_nearby_test.cpp
           USES observers)
