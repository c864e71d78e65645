baize_peer(NAME mixed SOURCES ${CMAKE_CURRENT_LIST_DIR}/mixed_peer.cpp USES stats SCRIPT mixed.R)
