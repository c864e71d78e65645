#pragma once

#include "baize/green/roll.h"

#include <nlohmann/json.hpp>

namespace phone {

/// A roll and a list of rolls as the phone sends them.
nlohmann::json roll_json(const baize::green::Roll& roll);
nlohmann::json rolls_json(const baize::green::Run& run);

} // namespace phone
