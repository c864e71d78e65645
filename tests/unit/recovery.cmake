baize_test(NAME recovery_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/recovery_series_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/recovery_loss_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/recovery_ledger_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/recovery_missed_test.cpp
           USES recovery)
