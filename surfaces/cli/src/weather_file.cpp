#include "weather_file.h"

#include "files.h"

namespace baize::cli {

units::Result<services::WeatherFile> read_weather(const Session& session, const std::string& path,
                                                  const std::vector<std::string>& corrections) {
  auto content = read_file(path);
  if (!content) {
    return tl::unexpected(content.error());
  }
  return services::read_weather_file(*session.ports.weather_files,
                                     {bare_name(path), std::move(*content)}, corrections);
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
