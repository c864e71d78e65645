set(unit ${CMAKE_SOURCE_DIR}/tests/unit)
baize_test(NAME attack_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/attack_test.cpp ${CMAKE_CURRENT_LIST_DIR}/fortress.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/attack_wire_test.cpp ${unit}/api_wire.cpp
                   ${unit}/people_world.cpp ${unit}/api_fakes.cpp ${unit}/api_club.cpp
                   ${unit}/api_contract.cpp
           USES api store_sqlite sheets weather_files pictures PARTS yaml-cpp OpenSSL::Crypto)
