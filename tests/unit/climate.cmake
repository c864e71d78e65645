baize_test(NAME climate_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/climate_growth_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/climate_et0_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/climate_radiation_test.cpp
           USES climate PARTS rapidcheck)
