set(made ${CMAKE_SOURCE_DIR}/tests/unit/api_club.cpp ${CMAKE_SOURCE_DIR}/tests/unit/api_fakes.cpp)
baize_fuzz(NAME api_target_fuzz SOURCES ${CMAKE_CURRENT_LIST_DIR}/api_target.cpp ${made} USES api)
baize_fuzz(NAME api_import_fuzz SOURCES ${CMAKE_CURRENT_LIST_DIR}/api_import.cpp USES api)
