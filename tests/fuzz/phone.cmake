baize_fuzz(NAME phone_fuzz SOURCES ${CMAKE_CURRENT_LIST_DIR}/phone.cpp USES wasm)
