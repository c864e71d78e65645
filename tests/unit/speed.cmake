baize_test(NAME speed_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/speed_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/speed_error_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/speed_place_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/speed_properties_test.cpp
           USES speed PARTS rapidcheck)
