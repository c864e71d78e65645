baize_fuzz(NAME csv_fuzz SOURCES ${CMAKE_CURRENT_LIST_DIR}/csv.cpp USES sheets)
baize_fuzz(NAME csv_club_fuzz SOURCES ${CMAKE_CURRENT_LIST_DIR}/csv_club.cpp USES sheets)
