baize_test(NAME observers_reference_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/observers_test.cpp USES observers)
