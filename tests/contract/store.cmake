set(contract ${CMAKE_CURRENT_LIST_DIR})
baize_test(NAME store_contract_test SOURCES ${contract}/store_contract.cpp
           ${contract}/store_contract_entries.cpp ${contract}/store_contract_threads.cpp
           ${contract}/store_contract_together.cpp ${contract}/store_sqlite_test.cpp
           ${contract}/sample_club.cpp USES store_sqlite)
baize_test(NAME store_maintenance_test SOURCES ${contract}/store_maintenance_test.cpp
           ${contract}/sample_club.cpp USES store_sqlite)
baize_test(NAME store_together_test SOURCES ${contract}/store_together_test.cpp
           ${contract}/sample_club.cpp USES store_sqlite)
baize_test(NAME store_inside_test SOURCES ${contract}/store_inside_test.cpp USES store_sqlite)
baize_test(NAME store_people_test SOURCES ${contract}/store_people_test.cpp
           ${CMAKE_SOURCE_DIR}/tests/unit/people_world.cpp USES store_sqlite)
baize_test(NAME store_photos_test SOURCES ${contract}/store_photos_test.cpp
           USES store_sqlite PARTS PkgConfig::turbojpeg OpenSSL::Crypto)
# These look inside the library, at what its headers do not show.
foreach(test store_contract_test store_maintenance_test store_together_test
             store_inside_test store_people_test store_photos_test)
  target_include_directories(${test} PRIVATE ${CMAKE_SOURCE_DIR}/adapters/store_sqlite/src)
endforeach()
