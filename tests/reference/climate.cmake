baize_test(NAME climate_reference_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/climate_fao56_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/climate_tables_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/climate_growth_test.cpp
           USES climate PARTS nlohmann_json::nlohmann_json)
