baize_peer(NAME anova SOURCES ${CMAKE_CURRENT_LIST_DIR}/anova_peer.cpp USES stats SCRIPT anova.R)
baize_peer(NAME comparisons SOURCES ${CMAKE_CURRENT_LIST_DIR}/comparisons_peer.cpp USES stats
           SCRIPT comparisons.R)
baize_peer(NAME nonlinear SOURCES ${CMAKE_CURRENT_LIST_DIR}/nonlinear_peer.cpp USES stats
           SCRIPT nonlinear.R)
baize_peer(NAME power SOURCES ${CMAKE_CURRENT_LIST_DIR}/power_peer.cpp USES stats SCRIPT power.R)
