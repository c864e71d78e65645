# cmake -DNPM=... -DWEB=... -P packages.cmake: npm ci, once for all build folders.
file(LOCK ${WEB}/.packages.lock TIMEOUT 900)
set(stamp ${WEB}/node_modules/.baize-ready)
if(${stamp} IS_NEWER_THAN ${WEB}/package-lock.json AND EXISTS ${stamp})
  file(TOUCH ${stamp}) # another build brought them in while this one waited
  return()
endif()
execute_process(COMMAND ${NPM} ci --no-audit --no-fund --loglevel=error
                WORKING_DIRECTORY ${WEB} RESULT_VARIABLE result)
if(NOT result EQUAL 0)
  message(FATAL_ERROR "npm ci failed in ${WEB}; the lines above say why.")
endif()
file(TOUCH ${stamp})
