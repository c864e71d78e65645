baize_test(NAME assets_test SOURCES ${CMAKE_CURRENT_LIST_DIR}/assets_test.cpp USES assets)
target_compile_definitions(assets_test PRIVATE BAIZE_HAS_PAGES=$<BOOL:${BAIZE_WEB}>)
