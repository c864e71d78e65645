baize_test(NAME stats_ordinal_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_ordinal_test.cpp
           USES stats)
baize_test(NAME stats_ordinal_observers_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_ordinal_observers_test.cpp
           USES stats)
