baize_test(NAME entries_kill_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/entries_kill_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/entries_kill.cpp
           USES store_sqlite)
target_compile_definitions(entries_kill_test PRIVATE BAIZE_PROGRAM="$<TARGET_FILE:baize>")
add_dependencies(entries_kill_test baize)
set_tests_properties(entries_kill_test PROPERTIES LABELS slow TIMEOUT 300)

baize_test(NAME serve_stop_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/serve_stop_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/entries_kill.cpp ${CMAKE_CURRENT_LIST_DIR}/api_wire.cpp
           USES api)
target_compile_definitions(serve_stop_test PRIVATE BAIZE_PROGRAM="$<TARGET_FILE:baize>")
add_dependencies(serve_stop_test baize)
