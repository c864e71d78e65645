baize_test(NAME stats_agreement_reference_test
           SOURCES ${CMAKE_CURRENT_LIST_DIR}/stats_agreement_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_binomial_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_distributions_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_studentized_range_test.cpp
                   ${CMAKE_CURRENT_LIST_DIR}/stats_univariate_test.cpp
           USES stats PARTS nlohmann_json::nlohmann_json)
