#include "baize/consistency/hours.h"

#include "baize/units/number.h"

#include <algorithm>
#include <map>

namespace baize::consistency {
namespace {

using Figure = std::optional<double> VisitFigures::*;

/// Differences of one green.
struct Sum {
  double sum = 0;
  int n = 0;
};

bool disturbed(const std::vector<units::Period>& works, units::Day a, units::Day b) {
  const units::Day from = std::min(a, b);
  const units::Day to = std::max(a, b);
  return std::any_of(works.begin(), works.end(), [&](const units::Period& work) {
    return work.first <= to && from <= work.last;
  });
}

std::vector<units::Period> works_of(const green::Records& records, const std::string& green) {
  std::vector<units::Period> days;
  for (const green::Work& work : records.works) {
    if (green::class_of(work) == green::WorkClass::disruptive && green::touches(work, green)) {
      days.push_back({work.day, work.until.value_or(work.day)});
    }
  }
  return days;
}

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
        disturbed(green.works, morning->day, visit.day)) {
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

std::vector<Sum> differences(const std::map<std::size_t, Green>& greens, Figure figure, int days) {
  std::vector<Sum> sums;
  for (const auto& [place, green] : greens) {
    Sum sum;
    for (const VisitFigures* visit : green.afternoons) {
      const auto morning = morning_beside(green, *visit, figure, days);
      if (visit->*figure && morning) {
        sum.sum += *(visit->*figure) - *morning;
        ++sum.n;
      }
    }
    if (sum.n > 0) {
      sums.push_back(sum);
    }
  }
  return sums;
}

std::optional<observers::Estimate> effect(const std::vector<Sum>& greens, int& pairs,
                                          double confidence) {
  Sum all;
  for (const Sum& green : greens) {
    all.sum += green.sum;
    all.n += green.n;
  }
  pairs = all.n;
  if (all.n == 0) {
    return std::nullopt;
  }
  const auto without = [&](std::optional<std::size_t> left_out) -> std::optional<double> {
    const Sum part = left_out ? greens[*left_out] : Sum{};
    return (all.sum - part.sum) / (all.n - part.n);
  };
  return observers::by_session(greens.size(), without, confidence);
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
      at->second.works = works_of(records, records.greens[visit.green].id);
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
