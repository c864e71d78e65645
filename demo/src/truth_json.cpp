#include "baize/demo/truth.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace baize::demo {
namespace {

constexpr int kEveryDays = 7;

/// Ids of the demo hold nothing that JSON would escape.
std::string quoted(const std::string& text) {
  return '"' + text + '"';
}

std::string weekly(const std::vector<double>& values) {
  std::string text = "[";
  for (std::size_t i = 0; i < values.size(); i += kEveryDays) {
    fmt::format_to(std::back_inserter(text), "{}{:.2f}", i == 0 ? "" : ",", values[i]);
  }
  return text + "]";
}

std::string spots_json(const GreenTruth& green) {
  std::string text;
  for (const SpotTruth& spot : green.spots) {
    fmt::format_to(std::back_inserter(text),
                   "{}\n      {{\"spot\": {}, \"half\": {}, \"level_offset\": {:.2f}, "
                   "\"direction\": {:.2f}, \"slope\": {:.4f}, \"defect_m\": {}}}",
                   text.empty() ? "" : ",", quoted(spot.spot), quoted(spot.half), spot.level_offset,
                   spot.direction, spot.slope,
                   spot.defect_m ? fmt::format("{:.2f}", *spot.defect_m) : "null");
  }
  return text;
}

std::vector<double> levels(const Truth& truth, const GreenTruth& green) {
  std::vector<double> all;
  for (units::Day day = truth.days.first; day <= truth.days.last; ++day) {
    all.push_back(truth.level(green.green, {}, day));
  }
  return all;
}

std::string greens_json(const Truth& truth) {
  std::string text;
  for (const GreenTruth& green : truth.greens) {
    fmt::format_to(std::back_inserter(text),
                   "{}\n    {{\"green\": {}, \"base_level\": {:.2f}, \"base_speed_m\": {:.2f}, "
                   "\"seeds_in_may\": {}, \"spots\": [{}],\n     \"undisturbed\": {},\n     "
                   "\"level\": {},\n     \"speed_m\": {}}}",
                   text.empty() ? "" : ",", quoted(green.green), green.base_level,
                   green.base_speed_m, green.seeds_in_may, spots_json(green),
                   weekly(green.undisturbed), weekly(levels(truth, green)), weekly(green.speed_m));
  }
  return text;
}

std::string works_json(const Truth& truth) {
  std::string text;
  for (const WorkTruth& work : truth.works) {
    fmt::format_to(std::back_inserter(text),
                   "{}\n    {{\"work\": {}, \"green\": {}, \"half\": {}, \"day\": {}, "
                   "\"depth\": {:.4f}, \"rate\": {:.4f}}}",
                   text.empty() ? "" : ",", quoted(work.work), quoted(work.green),
                   quoted(work.half), quoted(units::iso(work.day)), work.depth, work.rate);
  }
  return text;
}

std::string observers_json(const Truth& truth) {
  std::string text;
  for (const ObserverTruth& one : truth.observers) {
    fmt::format_to(std::back_inserter(text),
                   "{}\n    {{\"observer\": {}, \"bias\": {:.2f}, \"beginner_bias\": {:.2f}, "
                   "\"visit_sd\": {:.2f}, \"habit\": {}}}",
                   text.empty() ? "" : ",", quoted(one.observer), one.bias, one.beginner_bias,
                   one.visit_sd, quoted(one.habit));
  }
  return text;
}

} // namespace

std::string truth_json(const Truth& truth) {
  return fmt::format(
      "{{\n  \"seed\": {},\n  \"first_day\": {},\n  \"last_day\": {},\n  \"series_every_days\": "
      "{},\n"
      "  \"loss\": \"jumps by depth on the work's day, then each day falls by rate x growth "
      "potential x loss\",\n  \"roll_sd\": {:.2f},\n  \"distance_sd_m\": {:.2f},\n  "
      "\"after_play\": {:.2f},\n  \"observers\": [{}\n  ],\n  \"works\": [{}\n  ],\n  \"greens\": "
      "[{}\n  ]\n}}\n",
      truth.seed, quoted(units::iso(truth.days.first)), quoted(units::iso(truth.days.last)),
      kEveryDays, truth.roll_sd, truth.distance_sd_m, truth.after_play, observers_json(truth),
      works_json(truth), greens_json(truth));
}

} // namespace baize::demo
