baize_peer(NAME agreement SOURCES ${CMAKE_CURRENT_LIST_DIR}/agreement_peer.cpp USES stats
           SCRIPT agreement.R)
baize_peer(NAME level SOURCES ${CMAKE_CURRENT_LIST_DIR}/level_peer.cpp USES stats SCRIPT level.R)
baize_peer(NAME figures SOURCES ${CMAKE_CURRENT_LIST_DIR}/figures_peer.cpp USES stats
           SCRIPT figures.py)
