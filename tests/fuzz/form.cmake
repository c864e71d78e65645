baize_fuzz(NAME form_fuzz SOURCES ${CMAKE_CURRENT_LIST_DIR}/form.cpp USES api)
