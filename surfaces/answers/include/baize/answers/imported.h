#pragma once

#include "baize/answers/json.h"
#include "baize/services/sheets_port.h"

#include <optional>

namespace baize::answers {

/// What came of bringing files in. `receipt` is absent where nothing was kept.
struct Imported {
  bool dry_run = false;
  std::vector<services::FileReport> files;
  std::vector<units::Problem> problems;
  std::vector<units::Problem> remarks;
  std::optional<services::Receipt> receipt;
  std::string club = {}; ///< whose records were kept
};

Json to_json(const Imported& imported);

/// A weather file, and the lines by which it was understood.
struct ImportedWeather {
  Imported file;
  std::vector<std::string> mapping;
};

Json to_json(const ImportedWeather& imported);

} // namespace baize::answers
