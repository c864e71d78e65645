#include "baize/services/season_checks.h"

#include <fmt/format.h>

#include <cmath>

namespace baize::services {
namespace {

std::string clocks_sentence(const std::optional<season::Clocks>& clocks) {
  if (!clocks) {
    return "The weather is too thin to tell growth from days.";
  }
  const double apart = std::abs(clocks->difference());
  if (!clocks->told_apart()) {
    return fmt::format("Whether greens came back with growth or with days cannot be told: {:.1f} "
                       "in log-likelihood, 2 are needed.",
                       apart);
  }
  return fmt::format("Greens came back with {}: {:.1f} in log-likelihood.",
                     clocks->difference() > 0 ? "growth rather than with days"
                                              : "days rather than with growth",
                     apart);
}

std::string leaning_sentence(const std::vector<season::Leaning>& leaning) {
  constexpr double kMuch = 1;
  const season::Shift* farthest = nullptr;
  double most = 0;
  for (const season::Leaning& one : leaning) {
    for (const season::Shift& shift : one.methods) {
      const double size = std::max(std::abs(shift.depth), std::abs(shift.rate));
      if (size >= most) {
        most = size;
        farthest = &shift;
      }
    }
  }
  if (farthest == nullptr) {
    return "No work has a depth or a rate that could lean on beliefs.";
  }
  const char* what = std::abs(farthest->depth) >= std::abs(farthest->rate) ? "depth" : "rate";
  if (most < kMuch) {
    return fmt::format("With beliefs half or twice as wide no depth or rate moves by more than "
                       "{:.1f} of its standard error.",
                       most);
  }
  return fmt::format("The {} of {} leans on beliefs: with others, half or twice as wide, it moves "
                     "by {:.1f} of its standard errors.",
                     what, farthest->method, most);
}

} // namespace

std::string surprises_sentence(const season::Surprises& surprises) {
  const std::string figures = fmt::format(
      "{:.0f} in 100 beyond two standard deviations, where chance gives 5; from visit "
      "to visit they {}",
      100 * surprises.outside,
      surprises.in_line.summary.usable
          ? fmt::format("go together by {:+.2f}", surprises.in_line.autocorrelation.front())
          : "are too few to compare");
  return surprises.like_chance
             ? fmt::format("The model's surprises look like chance: {}.", figures)
             : fmt::format(
                   "The model's surprises are not chance alone: {}, and their standard "
                   "deviation is {:.2f} where it should be 1. Take its intervals with care.",
                   figures, surprises.sd);
}

units::Result<SeasonChecks> season_checks(const season::SeasonFit& fit,
                                          const green::Records& records,
                                          const climate::Weather& weather,
                                          const stats::Watch& watch) {
  SeasonChecks found;
  found.club = records.club.id;
  found.checks = season::check_season(fit, records, weather, watch);
  if (!found.checks.summary.usable) {
    return units::Refusal(found.checks.summary.problem);
  }
  found.surprises = surprises_sentence(found.checks.surprises);
  found.clocks = clocks_sentence(found.checks.clocks);
  found.leaning = leaning_sentence(found.checks.leaning);
  return found;
}

} // namespace baize::services
