#include "weather_file.h"

#include "files.h"

namespace baize::cli {

units::Result<WeatherFile> read_weather(const Session& session, const std::string& path,
                                        const std::vector<std::string>& corrections) {
  const auto content = read_file(path);
  if (!content) {
    return tl::unexpected(content.error());
  }
  auto mapping = session.ports.weather_files->guess(*content);
  if (mapping && !corrections.empty()) {
    mapping = session.ports.correct_mapping(*mapping, corrections);
  }
  if (!mapping) {
    units::Problem problem = mapping.error();
    problem.place = problem.place.empty() ? bare_name(path) : bare_name(path) + " " + problem.place;
    return tl::unexpected(problem);
  }
  WeatherFile file{*mapping, session.ports.weather_files->read(*content, *mapping)};
  for (auto* list : {&file.reading.problems, &file.reading.remarks}) {
    for (units::Problem& problem : *list) {
      problem.place = bare_name(path) + (problem.place.empty() ? "" : " " + problem.place);
    }
  }
  return file;
}

void add_map(CLI::App& command, std::vector<std::string>& corrections) {
  command
      .add_option("--map", corrections,
                  "Corrections to how the weather file is understood, e.g. rain_mm=Precip "
                  "unit.rain_mm=in date=day_month_year")
      ->type_name("NAME=VALUE");
}

void print_problems(std::ostream& out, const std::vector<units::Problem>& problems) {
  for (const units::Problem& problem : problems) {
    out << units::sentence(problem) << '\n';
  }
}

void print_remarks(std::ostream& out, const std::vector<units::Problem>& remarks, bool all) {
  constexpr std::size_t kFirst = 20;
  std::size_t count = 0;
  for (const units::Problem& remark : remarks) {
    if (!all && count == kFirst) {
      out << "... and " << remarks.size() - kFirst << " remarks more; --remarks shows all.\n";
      return;
    }
    out << units::remark_sentence(remark) << '\n';
    ++count;
  }
}

} // namespace baize::cli
