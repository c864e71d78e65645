baize_test(NAME observers_laws SOURCES ${CMAKE_CURRENT_LIST_DIR}/observers_law.cpp
           USES observers PARTS rapidcheck)
