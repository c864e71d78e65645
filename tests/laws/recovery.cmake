baize_test(NAME recovery_laws
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/recovery_given.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/recovery_law.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/recovery_meaning_law.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/recovery_truth_law.cpp
           USES recovery PARTS rapidcheck)
