baize_test(NAME answers_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/answers_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/answers_words_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/answers_observers_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/api_contract.cpp
           USES answers PARTS yaml-cpp)
