// How a weather file is understood, what is to be remarked, and its growth.
#include "baize/answers/problem.h"
#include "baize/climate/growth.h"
#include "commands.h"
#include "files.h"
#include "table.h"
#include "weather_file.h"

#include <map>

namespace baize::cli {

namespace {

struct WeatherOptions {
  std::string file;
  std::vector<std::string> map;
  std::string grass = "cool";
  bool all_remarks = false;
};

struct YearSum {
  int days = 0;
  int no_temperature = 0;
  double temperature = 0;
  double growth_days = 0;
  int no_rain = 0;
  double rain_mm = 0;
  std::optional<double> mean() const {
    const int known = days - no_temperature;
    return known > 0 ? std::optional<double>(temperature / known) : std::nullopt;
  }
};

std::map<int, YearSum> by_year(const climate::Weather& weather,
                               const climate::GrowthOptions& growth) {
  std::map<int, YearSum> years;
  for (const auto& [day, at] : weather) {
    YearSum& year = years[units::year_month_day(day).year];
    ++year.days;
    if (const auto mean = climate::mean_temperature_c(at)) {
      year.temperature += *mean;
      year.growth_days += climate::growth_potential(*mean, growth);
    } else {
      ++year.no_temperature;
    }
    year.rain_mm += at.rain_mm.value_or(0);
    year.no_rain += at.rain_mm ? 0 : 1;
  }
  return years;
}

answers::Json year_json(int number, const YearSum& year) {
  return answers::Object()
      .put("year", number)
      .put("days", year.days)
      .put("days_without_temperature", year.no_temperature)
      .put("mean_temperature_c", year.mean())
      .put("growth_days", year.growth_days)
      .put("rain_mm", year.rain_mm)
      .put("days_without_rain_reading", year.no_rain)
      .done();
}

void print_json(Session& session, const services::WeatherFile& file,
                const std::vector<std::string>& mapping, const std::map<int, YearSum>& years) {
  answers::Json list = answers::Json::array();
  for (const auto& [number, year] : years) {
    list.push_back(year_json(number, year));
  }
  session.print(answers::Object()
                    .nest("mapping", answers::list(mapping))
                    .put("rows", file.reading.rows)
                    .nest("problems", answers::list(file.reading.problems, answers::with_sentence))
                    .nest("remarks", answers::list(file.reading.remarks, answers::with_sentence))
                    .nest("years", list)
                    .done());
}

void print_years(const Session& session, const std::map<int, YearSum>& years) {
  Table table({number("year"), number("days"), number("no temperature", "days"),
               number("mean temperature", "C"), number("growth", "growth-days"),
               number("rain", "mm"), number("no rain reading", "days")});
  for (const auto& [number, year] : years) {
    table.add({cell(number), cell(year.days), cell(year.no_temperature),
               cell(session, year.mean(), 1), cell(session, year.growth_days, 1),
               cell(session, year.rain_mm, 1), cell(year.no_rain)});
  }
  table.print(session);
}

void tell_weather(Session& session, const WeatherOptions& options) {
  const auto file = read_weather(session, options.file, options.map);
  if (!file) {
    session.refuse(file.error());
    return;
  }
  const auto growth = options.grass == "warm" ? climate::kWarmSeason : climate::kCoolSeason;
  const auto years = by_year(file->reading.weather, growth);
  const auto mapping = session.ports.weather_files->show(file->mapping);
  if (!file->reading.problems.empty()) {
    session.code = Exit::data_problem;
  }
  if (session.shape() == Shape::json) {
    print_json(session, *file, mapping, years);
    return;
  }
  if (session.shape() == Shape::csv) {
    print_problems(session.err, file->reading.problems);
    print_years(session, years);
    return;
  }
  session.out << "Understood as follows; correct any line with --map LINE:\n";
  for (const std::string& line : mapping) {
    session.out << "  " << line << '\n';
  }
  print_problems(session.out, file->reading.problems);
  print_remarks(session.out, file->reading.remarks, options.all_remarks);
  if (!years.empty()) {
    session.out << "Growth potential for " << options.grass << "-season grass, summed by year:\n";
    print_years(session, years);
  }
}

} // namespace

void add_weather(CLI::App& app, Session& session) {
  auto options = std::make_shared<WeatherOptions>();
  CLI::App* command = app.add_subcommand(
      "weather", "How a daily weather file is understood, before it is brought in");
  command->add_option("file", options->file, "The weather file")->required()->type_name("FILE");
  add_map(*command, options->map);
  command->add_option("--grass", options->grass, "Growth of cool- or warm-season grass: cool, warm")
      ->check(CLI::IsMember({"cool", "warm"}))
      ->capture_default_str()
      ->type_name("GRASS");
  command->add_flag("--remarks", options->all_remarks, "Show every remark, not only the first");
  on_call(*command, session, options, tell_weather);
}

} // namespace baize::cli
