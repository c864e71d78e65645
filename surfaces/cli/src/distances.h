#pragma once

#include "session.h"

#include <string>
#include <vector>

namespace baize::cli {

/// The distances of one direction as they stand on the command line, by unit.
struct DistanceOptions {
  std::string name; ///< "out" or "back"
  std::vector<std::string> own;
  std::vector<std::string> metres;
  std::vector<std::string> centimetres;
};

/// Adds --NAME (in the unit of --units), --NAME-m and --NAME-cm.
void add_distances(CLI::App& command, const std::string& name, const std::string& about,
                   DistanceOptions& options);

/// In their order. Refuses what is no distance above 0 and up to 30 m.
units::Result<std::vector<units::Length>> read_distances(const Session& session,
                                                         const DistanceOptions& options);

} // namespace baize::cli
