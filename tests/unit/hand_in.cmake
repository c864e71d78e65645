baize_test(NAME hand_in_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/hand_in_test.cpp USES store_sqlite)
