#include "observers_words.h"

#include "baize/units/number.h"
#include "wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace baize::services {
namespace {

/// One decimal, two where the interval is so narrow that one would hide it.
int places_for(const std::optional<stats::Interval>& interval) {
  constexpr double kNarrow = 0.25;
  return interval && interval->high - interval->low < kNarrow ? 2 : 1;
}

/// "0.2 lower", "0.1 higher"; "0.0" where it rounds to that.
std::string gap(double value, int places) {
  std::string shown = units::show_number(std::fabs(value), places);
  if (shown == units::show_number(0, places)) {
    return shown;
  }
  return shown + (value < 0 ? " lower" : " higher");
}

std::string from_to(const stats::Interval& interval, int places) {
  const double low = interval.low;
  const double high = interval.high;
  if ((low < 0) == (high < 0)) {
    const double least = std::min(std::fabs(low), std::fabs(high));
    const double most = std::max(std::fabs(low), std::fabs(high));
    return units::show_number(least, places) + " to " + gap(low < 0 ? -most : most, places);
  }
  return gap(low, places) + " to " + gap(high, places);
}

/// "scores 0.2 lower than B (0.1 to 0.3 lower)".
std::string compared(const observers::Estimate& bias, const std::string& with) {
  if (!bias.interval) {
    constexpr double kShown = 0.05;
    const std::string how =
        std::fabs(bias.value) < kShown ? "the same as " : gap(bias.value, 1) + " than ";
    return fmt::format("scores {}{} so far, on too little to say more", how, with);
  }
  const int places = places_for(bias.interval);
  if (!bias.apart_from_zero()) {
    return fmt::format("cannot be told apart from {} ({})", with, from_to(*bias.interval, places));
  }
  return fmt::format("scores {} than {} ({})", gap(bias.value, places), with,
                     from_to(*bias.interval, places));
}

} // namespace

const std::string& name_of(const Names& names, const std::string& id) {
  const auto found = names.find(id);
  return found == names.end() || found->second.empty() ? id : found->second;
}

std::string lean_sentence(const ObserverLine& line, const Names& names) {
  if (line.lean.sessions == 0) {
    return fmt::format("{} shares no rolls with anybody.", line.name);
  }
  const std::string with =
      line.beside.size() == 1 ? name_of(names, line.beside.front()) : "the others";
  if (!line.lean.summary.usable) {
    return fmt::format("{} has shared rolls with {} only once.", line.name, with);
  }
  return fmt::format("{} {}; {}.", line.name, compared(line.lean.bias, with),
                     counted(line.lean.balls, "shared roll"));
}

std::string pair_sentence(const observers::PairAgreement& pair, const Names& names) {
  const std::string& first = name_of(names, pair.first);
  const std::string& second = name_of(names, pair.second);
  if (pair.summary.problem.code == "all_equal") {
    return fmt::format("{} and {} differ by the same {} points each time; {}.", first, second,
                       units::show_number(std::fabs(pair.bias.value), 1),
                       counted(pair.balls, "shared roll"));
  }
  if (!pair.summary.usable) {
    return fmt::format("{} and {} have shared rolls only once.", first, second);
  }
  return fmt::format("{} {}; {} differences in 100 lie from {} to {}; {}.", first,
                     compared(pair.bias, second), 95, gap(pair.lower_limit.value, 1),
                     gap(pair.upper_limit.value, 1), counted(pair.balls, "shared roll"));
}

std::string nearby_sentence(const observers::NearbyPair& pair, const Names& names, int days) {
  return fmt::format("{} {}; {} within {}, not the same balls.", name_of(names, pair.first),
                     compared(pair.bias, name_of(names, pair.second)),
                     counted(pair.pairs, "pair of visits", "pairs of visits"),
                     counted(days, "day"));
}

std::string headline(const ObserversReview& review) {
  const ObserverLine* most = nullptr;
  const auto strength = [](const ObserverLine& line) {
    return line.lean.bias.se && *line.lean.bias.se > 0
               ? std::fabs(line.lean.bias.value) / *line.lean.bias.se
               : 0;
  };
  bool any = false;
  for (const ObserverLine& line : review.observers) {
    any = any || line.lean.summary.usable;
    if (line.lean.bias.apart_from_zero() && (most == nullptr || strength(line) > strength(*most))) {
      most = &line;
    }
  }
  if (most != nullptr) {
    return most->sentence;
  }
  if (any) {
    return "No observer can be told apart from the others over the same balls.";
  }
  if (review.observers.size() < 2) {
    return "Only one observer has scored here, so there is nobody to compare with.";
  }
  return review.nearby.empty()
             ? "No two observers have scored the same balls yet: share a few rolls once a month."
             : "No two observers have scored the same balls yet; visits to the same green within "
               "days are all there is, and weaker evidence.";
}

} // namespace baize::services
