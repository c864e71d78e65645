#pragma once

#include "baize/services/weather_port.h"

#include <string>
#include <vector>

namespace baize::weather_files {

/// A mapping as lines "name=value". They are the very lines that `corrected`
/// takes, so what is shown can be changed and given back:
///   format=delimited  delimiter=tab  decimal=,  header_lines=1  wind_height_m=10
///   date=day_month_year  day=Date  tmin_c=Tmin(C)  unit.tmin_c=C  scale.rain_mm=0.1
std::vector<std::string> show(const services::WeatherMapping& mapping);

/// The mapping with the corrections put in, in their order. A field without a
/// value (rain_mm=) loses its column; one that had none is taken in our own unit.
/// Refuses "no_such_setting", "not_a_setting" (no '=' in it) and values that cannot be.
units::Result<services::WeatherMapping> corrected(services::WeatherMapping mapping,
                                                  const std::vector<std::string>& corrections);

} // namespace baize::weather_files
