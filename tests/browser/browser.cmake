# The pages: their types follow the contract, their small parts compute rightly,
# and a real browser walks through them as a keeper does.
if(BAIZE_WEB)
  set(web ${CMAKE_SOURCE_DIR}/surfaces/web)
  add_test(NAME web_types COMMAND ${BAIZE_NPM} run --silent types:check WORKING_DIRECTORY ${web})
  add_test(NAME web_unit COMMAND ${BAIZE_NPM} run --silent test WORKING_DIRECTORY ${web})
  set_tests_properties(web_types web_unit PROPERTIES LABELS web TIMEOUT 600)
  # The core on the phone is compared with the native one (tests/phone).
  set_tests_properties(web_unit PROPERTIES
    ENVIRONMENT "BAIZE_CORE_WASM=${CMAKE_BINARY_DIR}/surfaces/wasm/core.wasm;BAIZE_CORE_CASES=${CMAKE_BINARY_DIR}/tests/phone_cases")

  find_program(BAIZE_CHROMIUM NAMES chromium chromium-browser)
  if(TARGET baize AND BAIZE_CHROMIUM)
    foreach(part field_visit field_photos field_page field_measure field_pair field_edition field_send https walk states access report bring evidence people)
      add_test(NAME browser_${part}
               COMMAND ${BAIZE_NODE} --test ${CMAKE_CURRENT_LIST_DIR}/${part}.test.mjs)
      set_tests_properties(browser_${part} PROPERTIES
        LABELS browser TIMEOUT 600 RUN_SERIAL ON
        ENVIRONMENT "BAIZE_PROGRAM=$<TARGET_FILE:baize>;BAIZE_CHROMIUM=${BAIZE_CHROMIUM}")
    endforeach()
  else()
    message(STATUS "No browser tests: the program or Chromium is missing")
  endif()
endif()
