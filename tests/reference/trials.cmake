baize_test(NAME trials_reference_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/trials_test.cpp
           USES sheets trials)
