#include "distances.h"

#include "baize/green/kinds.h"

namespace baize::cli {

void add_distances(CLI::App& command, const std::string& name, const std::string& about,
                   DistanceOptions& options) {
  options.name = name;
  command.add_option("--" + name, options.own, about + ", in the unit of --units")
      ->type_name("DISTANCE");
  command.add_option("--" + name + "-m", options.metres, about + ", in metres")->type_name("M");
  command.add_option("--" + name + "-cm", options.centimetres, about + ", in centimetres")
      ->type_name("CM");
}

namespace {

// A comma parts distances unless it is the decimal mark; a semicolon always does.
std::vector<std::string> parted(const std::vector<std::string>& given, bool decimal_comma) {
  std::vector<std::string> parts;
  for (const std::string& text : given) {
    std::size_t from = 0;
    while (from <= text.size()) {
      const std::size_t to =
          std::min(text.find_first_of(decimal_comma ? ";" : ",;", from), text.size());
      if (to > from) {
        parts.push_back(text.substr(from, to - from));
      }
      from = to + 1;
    }
  }
  return parts;
}

units::Result<void> add(std::vector<units::Length>& to, const std::string& text,
                        units::LengthUnit unit, char decimal) {
  const auto length = units::parse_length(text, unit, decimal);
  if (!length) {
    return tl::unexpected(length.error());
  }
  const green::MeasuredField* field = green::find_field("roll", "distance");
  if (field != nullptr && !field->rule.takes(length->metres)) {
    return units::refuse("distance_out_of_range", "distance", text, field->rule.clause());
  }
  to.push_back(*length);
  return {};
}

} // namespace

units::Result<std::vector<units::Length>> read_distances(const Session& session,
                                                         const DistanceOptions& options) {
  std::vector<units::Length> all;
  const std::vector<std::pair<const std::vector<std::string>*, units::LengthUnit>> groups{
      {&options.own, session.length_unit()},
      {&options.metres, units::LengthUnit::metre},
      {&options.centimetres, units::LengthUnit::centimetre}};
  for (const auto& [texts, unit] : groups) {
    for (const std::string& text : parted(*texts, session.decimal_comma)) {
      if (auto added = add(all, text, unit, session.decimal()); !added) {
        units::Problem problem = added.error();
        problem.place = "--" + options.name;
        return tl::unexpected(problem);
      }
    }
  }
  return all;
}

} // namespace baize::cli
