#include "baize/consistency/hours.h"

#include "baize/units/number.h"

#include <map>

namespace baize::consistency {
namespace {

using Figure = std::optional<double> VisitFigures::*;

/// Visits of one green: mornings and afternoons, each by day.
struct Green {
  std::vector<const VisitFigures*> mornings;
  std::vector<const VisitFigures*> afternoons;
  std::vector<units::Period> works;
};

/// The nearest morning at or before the day, and the nearest after it.
std::optional<double> morning_beside(const Green& green, const VisitFigures& visit, Figure figure,
                                     int days) {
  const VisitFigures* before = nullptr;
  const VisitFigures* after = nullptr;
  for (const VisitFigures* morning : green.mornings) {
    const int apart = morning->day - visit.day;
    if (!(morning->*figure) || apart < -days || apart > days ||
        green::disrupted_between(green.works, morning->day, visit.day)) {
      continue;
    }
    if (apart <= 0) {
      before = morning; // they stand by day: the last one is the nearest
    } else if (after == nullptr) {
      after = morning;
    }
  }
  if (before == nullptr && after == nullptr) {
    return std::nullopt;
  }
  if (before == nullptr || after == nullptr) {
    return (before == nullptr ? after : before)->*figure;
  }
  return (*(before->*figure) + *(after->*figure)) / 2;
}

std::vector<observers::Sums> differences(const std::map<std::size_t, Green>& greens, Figure figure,
                                         int days) {
  std::vector<observers::Sums> sums;
  for (const auto& [place, green] : greens) {
    observers::Sums sum;
    for (const VisitFigures* visit : green.afternoons) {
      const auto morning = morning_beside(green, *visit, figure, days);
      if (visit->*figure && morning) {
        sum.add(*(visit->*figure) - *morning);
      }
    }
    if (sum.n > 0) {
      sums.push_back(sum);
    }
  }
  return sums;
}

std::optional<observers::Estimate> effect(const std::vector<observers::Sums>& greens, int& pairs,
                                          double confidence) {
  pairs = 0;
  for (const observers::Sums& green : greens) {
    pairs += static_cast<int>(green.n);
  }
  return observers::mean_by_session(greens, confidence);
}

} // namespace

std::optional<units::Problem> HourOptions::problem() const {
  const auto bad = [](const char* field, const std::string& value, const char* rule) {
    return units::Problem{"option_out_of_range", field, value, rule, {}};
  };
  if (noon < 1 || noon > 1439) {
    return bad("noon", std::to_string(noon), "a minute of the day from 1 to 1439");
  }
  if (days < 0 || days > 31) {
    return bad("days", std::to_string(days), "from 0 to 31");
  }
  if (!(confidence > 0 && confidence < 1)) {
    return bad("confidence", units::write_number(confidence), "a number above 0 and below 1");
  }
  return std::nullopt;
}

HourEffect hour_effect(const green::Records& records, const std::vector<VisitFigures>& visits,
                       const HourOptions& options) {
  HourEffect found;
  if (const auto bad = options.problem()) {
    found.summary = stats::refused(*bad);
    return found;
  }
  std::map<std::size_t, Green> greens;
  for (const VisitFigures& visit : visits) {
    if (!visit.at || visit.green >= records.greens.size()) {
      continue;
    }
    const auto [at, fresh] = greens.try_emplace(visit.green);
    if (fresh) {
      at->second.works = green::disrupted_days(records, records.greens[visit.green].id);
    }
    (visit.at->of_day < options.noon ? at->second.mornings : at->second.afternoons)
        .push_back(&visit);
  }
  found.score = effect(differences(greens, &VisitFigures::score, options.days), found.score_pairs,
                       options.confidence);
  found.speed = effect(differences(greens, &VisitFigures::speed_m, options.days), found.speed_pairs,
                       options.confidence);
  found.summary =
      found.score || found.speed
          ? stats::done()
          : stats::refused({"too_few", "pairs", "0", "an afternoon with a morning beside it", {}});
  return found;
}

} // namespace baize::consistency
