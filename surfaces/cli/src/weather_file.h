#pragma once

#include "baize/services/weather_file.h"
#include "session.h"

namespace baize::cli {

/// Reads a weather file with its guessed mapping and the user's corrections.
units::Result<services::WeatherFile> read_weather(const Session& session, const std::string& path,
                                                  const std::vector<std::string>& corrections);
/// Adds --map.
void add_map(CLI::App& command, std::vector<std::string>& corrections);
/// Sentences, the first ones only unless all are wanted.
void print_remarks(std::ostream& out, const std::vector<units::Problem>& remarks, bool all);
/// The same as Problem sentences, all of them.
void print_problems(std::ostream& out, const std::vector<units::Problem>& problems);

} // namespace baize::cli
