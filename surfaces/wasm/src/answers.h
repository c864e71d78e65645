#pragma once

#include "baize/wasm/functions.h"
#include "json.h"

namespace baize::wasm {

// One function each, in a file of its own name; what it takes and gives stands
// in surfaces/wasm/functions.json.
#define BAIZE_DECLARE(name) Answer name(const Read& takes);
BAIZE_PHONE_FUNCTIONS(BAIZE_DECLARE)
#undef BAIZE_DECLARE

} // namespace baize::wasm
