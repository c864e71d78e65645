baize_fuzz(NAME pictures_fuzz SOURCES ${CMAKE_CURRENT_LIST_DIR}/pictures.cpp USES pictures)
