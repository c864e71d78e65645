baize_fuzz(NAME entries_fuzz SOURCES ${CMAKE_CURRENT_LIST_DIR}/entries.cpp USES entries_json)
