#pragma once

#include "baize/services/weather_port.h"
#include "dates.h"
#include "fields.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::weather_files {

/// Where a field stands in a row and how its numbers become ours.
struct ValueColumn {
  std::size_t column = 0;
  std::size_t field = 0;
  double scale = 1;
  const Unit* unit = nullptr;
};

/// A mapping put to a file's header.
struct Columns {
  DateStyle date = DateStyle::iso;
  std::size_t year = 0;  ///< three_columns only
  std::size_t month = 0; ///< three_columns only
  std::size_t day = 0;
  std::vector<ValueColumn> values;
  std::size_t cells = 0; ///< in every row
};

/// Refuses what the mapping leaves open or the header does not have:
/// "date_order_not_known", "unit_not_known", "no_such_column", "no_such_field".
units::Result<Columns> columns_of(const services::WeatherMapping& mapping,
                                  const std::vector<std::string>& header);

/// The unit of a field under a mapping, ours where it names none. Refuses
/// "unit_not_known".
units::Result<const Unit*> unit_of(const services::WeatherMapping& mapping, const Field& field);

} // namespace baize::weather_files
