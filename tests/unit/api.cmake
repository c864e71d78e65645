set(made ${CMAKE_CURRENT_LIST_DIR}/api_club.cpp ${CMAKE_CURRENT_LIST_DIR}/api_fakes.cpp
         ${CMAKE_CURRENT_LIST_DIR}/api_contract.cpp)
baize_test(NAME api_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/api_answer_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/api_cache_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/api_import_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/api_refusal_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/api_target_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/api_weather_test.cpp ${made}
           USES api PARTS rapidcheck yaml-cpp)
baize_test(NAME api_entries_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/api_entries_test.cpp ${made}
           USES api store_sqlite PARTS yaml-cpp)
baize_test(NAME api_doorway_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/api_doorway_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/api_club.cpp ${CMAKE_CURRENT_LIST_DIR}/api_fakes.cpp
           USES api)
target_include_directories(api_doorway_test PRIVATE ${CMAKE_SOURCE_DIR}/surfaces/api/src)
baize_test(NAME api_tls_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/api_tls_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/api_wire.cpp ${CMAKE_CURRENT_LIST_DIR}/tls_client.cpp
           USES api certificates)
baize_test(NAME api_server_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/api_server_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/api_server_limits_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/api_wire.cpp
           USES api)
