baize_test(NAME certificates_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/certificates_test.cpp
           USES certificates)
# It looks inside the library, at what its headers do not show.
target_include_directories(certificates_test PRIVATE ${CMAKE_SOURCE_DIR}/adapters/certificates/src)
