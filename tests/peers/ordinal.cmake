baize_peer(NAME ordinal SOURCES ${CMAKE_CURRENT_LIST_DIR}/ordinal_peer.cpp USES stats
           SCRIPT ordinal.R)
