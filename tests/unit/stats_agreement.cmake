baize_test(NAME stats_agreement_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_agreement_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_agreement_properties_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_kappa_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_refusals_test.cpp
           USES stats PARTS rapidcheck)
