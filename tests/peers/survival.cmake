baize_peer(NAME survival SOURCES ${CMAKE_CURRENT_LIST_DIR}/survival_peer.cpp USES stats
           SCRIPT survival.R)
