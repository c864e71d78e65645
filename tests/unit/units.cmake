baize_test(NAME units_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/units_day_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/units_length_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/units_number_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/units_plain_digits_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/units_properties_test.cpp
           USES units PARTS rapidcheck)
target_include_directories(units_test PRIVATE ${CMAKE_SOURCE_DIR}/core/units/src)
