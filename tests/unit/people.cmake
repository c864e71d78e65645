set(people_world ${CMAKE_CURRENT_LIST_DIR}/people_world.cpp)
baize_test(NAME roles_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/roles_test.cpp USES services)
baize_test(NAME secrets_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/secrets_test.cpp
           USES secrets scan_code)
baize_test(NAME people_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/people_test.cpp ${people_world}
           USES store_sqlite)
baize_test(NAME api_people_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/api_people_test.cpp ${people_world}
                   ${CMAKE_SOURCE_DIR}/tests/attack/fortress.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/api_fakes.cpp ${CMAKE_CURRENT_LIST_DIR}/api_club.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/api_contract.cpp
           USES api store_sqlite sheets weather_files pictures PARTS yaml-cpp OpenSSL::Crypto)
baize_test(NAME cli_people_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/cli_people_test.cpp ${people_world}
           USES cli store_sqlite)
