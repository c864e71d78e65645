baize_test(NAME pictures_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/pictures_test.cpp
           USES pictures entries_json PARTS OpenSSL::Crypto)
target_include_directories(pictures_test PRIVATE ${CMAKE_SOURCE_DIR}/adapters/pictures/src)
baize_test(NAME photos_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/photos_test.cpp
           USES pictures store_sqlite PARTS OpenSSL::Crypto)
baize_test(NAME api_photos_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/api_photos_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/api_club.cpp ${CMAKE_CURRENT_LIST_DIR}/api_fakes.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/api_contract.cpp
           USES api pictures store_sqlite PARTS yaml-cpp OpenSSL::Crypto)
baize_test(NAME cli_photos_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/cli_photos_test.cpp
           USES cli pictures store_sqlite PARTS OpenSSL::Crypto)
