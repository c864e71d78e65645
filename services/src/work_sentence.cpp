#include "baize/units/number.h"
#include "wording.h"
#include "works_of.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace baize::services {
namespace {

/// Smallest, largest and mean of some figures.
struct Spread {
  int number = 0;
  double low = 0;
  double high = 0;
  double sum = 0;
  void add(double value) {
    low = number == 0 ? value : std::min(low, value);
    high = number == 0 ? value : std::max(high, value);
    sum += value;
    ++number;
  }
  double mean() const { return sum / number; }
};

const recovery::RecoveryInterval& back(const recovery::WorkLoss& loss) {
  return loss.under(recovery::kHeadline);
}

/// Back, and seen below the standard again later.
bool fell_again(const recovery::WorkLoss& loss) {
  const recovery::RecoveryInterval& lasting = loss.under(recovery::Definition::lasting);
  return back(loss).by_days && lasting.by_days != back(loss).by_days;
}

/// Green, or half green where the work was on halves.
std::string places(int number, const green::Work& work) {
  return work.half.empty() ? counted(number, "green")
                           : counted(number, "half green", "half greens");
}

std::string depth_sentence(const Spread& depth, const green::Work& work) {
  if (depth.number == 0) {
    return {};
  }
  const std::string where = places(depth.number, work);
  if (units::show_number(depth.high, 1) == "0.0") {
    return fmt::format(" On {} the score did not fall.", where);
  }
  if (depth.number == 1) {
    return fmt::format(" On {} the score fell by {} points.", where,
                       units::show_number(depth.high, 1));
  }
  return fmt::format(" On {} the score fell by {} points on average ({} on single ones).", where,
                     units::show_number(depth.mean(), 1), range(depth.low, depth.high, 1));
}

/// Where there are enough of them, the day by which half of the greens were back.
std::string half_of_them(std::vector<int> days) {
  constexpr std::size_t kEnough = 4;
  if (days.size() < kEnough) {
    return {};
  }
  const auto middle = days.begin() + static_cast<std::ptrdiff_t>((days.size() - 1) / 2);
  std::nth_element(days.begin(), middle, days.end());
  return fmt::format(", half of them by day {}", *middle);
}

std::string lower_standard_sentence(int lower) {
  return lower == 0 ? std::string()
                    : fmt::format(" {} of them {} back only because the standard has fallen since.",
                                  lower, lower == 1 ? "is" : "are");
}

std::string again_sentence(int again) {
  return again == 0 ? std::string()
                    : fmt::format(" {} of them {} seen below it again later.", again, was(again));
}

std::string back_sentence(const std::vector<int>& first_back, const green::Work& work) {
  if (first_back.empty()) {
    return {};
  }
  const auto [low, high] = std::minmax_element(first_back.begin(), first_back.end());
  const int number = static_cast<int>(first_back.size());
  const std::string days = range(*low, *high, 0);
  return fmt::format(" {} {} back at the standard two visits running, first seen so after {} {}{}.",
                     places(number, work), was(number), days, days == "1" ? "day" : "days",
                     half_of_them(first_back));
}

std::string open_sentences(int once, int next_work, int record_ends, const green::Work& work) {
  std::string text;
  if (once > 0) {
    text += fmt::format(" {} reached the standard, but not yet on two visits running.",
                        places(once, work));
  }
  if (next_work > 0) {
    text += fmt::format(" {} {} not yet back when the next disruptive work began.",
                        places(next_work, work), was(next_work));
  }
  if (record_ends > 0) {
    text += fmt::format(" {} {} not yet back when last scored.", places(record_ends, work),
                        was(record_ends));
  }
  return text;
}

std::string area_sentence(const Spread& area, int still_below, const green::Work& work) {
  if (area.number == 0) {
    return {};
  }
  const auto days = static_cast<int>(std::lround(area.mean()));
  std::string text = fmt::format(" The loss came to {}{}",
                                 days == 0 ? "less than 1 score-day" : counted(days, "score-day"),
                                 area.number == 1    ? ""
                                 : work.half.empty() ? " a green on average"
                                                     : " a half green on average");
  if (still_below > 0) {
    text += fmt::format("; {} had not reached the score before when counting stopped",
                        area.number == 1 ? "it" : fmt::format("{} of them", still_below));
  }
  return text + ".";
}

struct Tally {
  Spread depth;
  std::vector<int> first_back;
  int lower = 0; ///< of these, back only since the standard fell
  int again = 0; ///< of these, seen below it again later
  Spread area;
  int still_below = 0;
  int once = 0; ///< seen at the standard, but not on two visits running
  int next_work = 0;
  int record_ends = 0;
  int no_before = 0;
  int no_after = 0;
};

Tally tally(const std::vector<LossHere>& losses) {
  Tally sum;
  for (const LossHere& here : losses) {
    const recovery::WorkLoss& loss = *here.loss;
    sum.no_before += loss.before ? 0 : 1;
    if (loss.visits_after == 0) {
      ++sum.no_after;
      continue;
    }
    if (loss.depth) {
      sum.depth.add(*loss.depth);
    }
    if (loss.area) {
      sum.area.add(loss.area->score_days);
      sum.still_below += loss.area->ended ? 0 : 1;
    }
    if (back(loss).by_days) {
      sum.first_back.push_back(*back(loss).by_days);
      sum.again += fell_again(loss) ? 1 : 0;
      sum.lower += loss.back_at_lower_standard ? 1 : 0;
    } else if (loss.under(recovery::Definition::at_standard).by_days) {
      ++sum.once;
    } else if (back(loss).censoring == recovery::Censoring::next_work) {
      ++sum.next_work;
    } else {
      ++sum.record_ends;
    }
  }
  return sum;
}

} // namespace

std::string work_sentence(const green::Work& work, const std::vector<LossHere>& losses,
                          units::Day today) {
  if (work.day > today) {
    return fmt::format("Planned for {}; nothing is measured yet.", plain(work.day));
  }
  if (green::class_of(work) != green::WorkClass::disruptive) {
    return "This work is not counted as disruptive, so no loss is followed.";
  }
  const Tally sum = tally(losses);
  std::string text = depth_sentence(sum.depth, work) + back_sentence(sum.first_back, work) +
                     lower_standard_sentence(sum.lower) + again_sentence(sum.again) +
                     open_sentences(sum.once, sum.next_work, sum.record_ends, work) +
                     area_sentence(sum.area, sum.still_below, work);
  if (sum.no_before > 0) {
    text += fmt::format(" No score before this work on {}.", places(sum.no_before, work));
  }
  if (sum.no_after > 0) {
    text += fmt::format(" No score after it on {}.", places(sum.no_after, work));
  }
  return text.empty() ? "No green of this club was touched." : text.substr(1);
}

} // namespace baize::services
