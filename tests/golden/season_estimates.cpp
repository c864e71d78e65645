#include "golden/season_estimates.h"

#include "baize/demo/demo_club.h"
#include "baize/services/season_model.h"
#include "baize/units/number.h"

#include <algorithm>
#include <cstdio>
#include <sstream>

namespace baize::golden {
namespace {

constexpr std::size_t kFields = 5;

void put(std::vector<Line>& lines, const std::string& what, const std::string& of,
         const season::Estimate& one, const std::string& when = {}) {
  lines.push_back({what, of, when, one.value, one.standard_error});
}

/// A green's year: days of spring, of recovery and of high summer, and its sums.
void put_year(std::vector<Line>& lines, const season::SeasonFit& fit, const demo::DemoClub& club,
              const std::string& green, int year) {
  constexpr int kStep = 37;
  const auto found = season::project(fit, club.records, green, "", units::calendar_year(year));
  for (std::size_t i = 0; i < found.days.size(); i += kStep) {
    const season::DayEstimate& day = found.days[i];
    lines.push_back({"score", green, units::iso(day.day), day.score, 0});
    lines.push_back({"undisturbed", green, units::iso(day.day), day.undisturbed, 0});
    lines.push_back({"chance", green, units::iso(day.day), day.chance, 0});
  }
  put(lines, "true_days", green, found.true_days, std::to_string(year));
  for (const season::WorkEstimate& work : found.works) {
    const std::string day = units::iso(work.loss.day);
    put(lines, "depth " + work.loss.label, green, work.depth, day);
    put(lines, "score_days " + work.loss.label, green, work.score_days, day);
  }
}

std::string fixed(double value) {
  char text[32];
  std::snprintf(text, sizeof text, "%.5f", value);
  return text;
}

} // namespace

std::vector<Line> season_estimates() {
  const demo::DemoClub club = demo::make();
  const season::SeasonFit fit = services::season_fit(club.records, club.weather, club.today);
  std::vector<Line> lines;
  lines.push_back({"log_likelihood", "", "", fit.log_likelihood, 0});
  lines.push_back({"roll_sd", "", "", fit.model.roll_sd, 0});
  put(lines, "level_walk", "", fit.level_walk);
  put(lines, "visit_sd", "", fit.visit_sd);
  put(lines, "line_sd", "", fit.line_sd);
  put(lines, "depth_spread", "", fit.depth_spread);
  put(lines, "play", "", fit.play);
  for (const season::MethodEstimate& method : fit.methods) {
    put(lines, "depth", method.method, method.depth);
    put(lines, "rate", method.method, method.rate);
  }
  for (const season::ObserverEstimate& observer : fit.observers) {
    put(lines, "above", observer.observer, observer.above);
  }
  for (const char* green : {"1", "7", "13"}) {
    put_year(lines, fit, club, green, 2024);
  }
  return lines;
}

std::string write(const std::vector<Line>& lines) {
  std::string text = "what\tof\twhen\tvalue\tstandard_error\n";
  for (const Line& line : lines) {
    text += line.what + '\t' + line.of + '\t' + line.when + '\t' + fixed(line.value) + '\t' +
            (line.standard_error > 0 ? fixed(line.standard_error) : "") + '\n';
  }
  return text;
}

std::vector<Line> read(const std::string& text) {
  std::vector<Line> lines;
  std::istringstream in(text);
  std::string row;
  std::getline(in, row); // the head
  while (std::getline(in, row)) {
    std::vector<std::string> fields;
    std::size_t from = 0;
    while (from <= row.size()) {
      const std::size_t tab = std::min(row.find('\t', from), row.size());
      fields.push_back(row.substr(from, tab - from));
      from = tab + 1;
    }
    if (fields.size() != kFields) {
      return {};
    }
    const auto value = units::parse_number(fields[3]);
    if (!value) {
      return {};
    }
    lines.push_back(
        {fields[0], fields[1], fields[2], *value, units::parse_number(fields[4]).value_or(0)});
  }
  return lines;
}

} // namespace baize::golden
