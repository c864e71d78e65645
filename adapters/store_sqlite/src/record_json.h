#pragma once

#include "baize/climate/weather.h"
#include "baize/green/club.h"

#include <string>

namespace baize::store_sqlite {

/// A revision's contents as one JSON object, for showing it. What was not
/// measured is left out. Fields are named as in the tables.
std::string json_text(const green::Club& club);
std::string json_text(const green::Green& green);
std::string json_text(const green::Observer& observer);
std::string json_text(const green::Visit& visit);
std::string json_text(const green::Reading& reading);
std::string json_text(const green::Work& work);
std::string json_text(const green::Fixture& fixture);
std::string json_text(const green::Standard& standard);
std::string json_text(const climate::WeatherDay& day);

} // namespace baize::store_sqlite
