#pragma once

#include "baize/climate/weather.h"
#include "kind.h"

namespace baize::store_sqlite {

climate::Weather load_weather(Connection& db, std::int64_t club);
void keep_weather_days(Writing& to, const climate::Weather& weather);
/// Every revision of one day, oldest first, with its change.
std::vector<Revised<climate::WeatherDay>> weather_revisions(Connection& db, std::int64_t club,
                                                            units::Day day);

/// The newest received copy of each name.
std::vector<services::ReceivedFile> load_received(Connection& db, std::int64_t club);
void keep_received(Writing& to, const std::vector<services::ReceivedFile>& files);

} // namespace baize::store_sqlite
