#include "consistency_words.h"

#include "baize/units/number.h"
#include "wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace baize::services {
namespace {

/// "A", "A and B", "A, B and C".
std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i) {
    text += i == 0 ? "" : i + 1 == names.size() ? " and " : ", ";
    text += names[i];
  }
  return text;
}

std::string of_greens(const ConsistencyReview& review) {
  std::vector<std::string> out;
  for (const GreenConsistency& green : review.greens) {
    if (green.score && green.score->out_of_line) {
      const double gap = green.score->level;
      out.push_back(fmt::format("{} ({} {})", green.name, units::show_number(std::fabs(gap), 1),
                                gap < 0 ? "lower" : "higher"));
    }
  }
  return out.empty() ? "No green is out of line in score."
                     : fmt::format("Out of line in score: {}.", listed(out));
}

std::string of_parts(const ConsistencyReview& review) {
  const auto& levels = review.score_parts.levels;
  if (!review.score_parts.summary.usable) {
    return {};
  }
  const auto largest =
      std::max_element(levels.begin(), levels.end(),
                       [](const auto& a, const auto& b) { return a.variance < b.variance; });
  constexpr int kHundred = 100;
  return fmt::format(" Of what differs in a ball's score, {} lies between greens and {} between "
                     "visits to one green; most, {}, between {}s.",
                     percent(static_cast<int>(std::lround(levels[0].share * kHundred)), kHundred),
                     percent(static_cast<int>(std::lround(levels[1].share * kHundred)), kHundred),
                     percent(static_cast<int>(std::lround(largest->share * kHundred)), kHundred),
                     largest->name);
}

std::string of_fast(const ConsistencyReview& review) {
  std::vector<std::string> fast;
  for (const GreenConsistency& green : review.greens) {
    if (green.fast_but_not_true) {
      fast.push_back(green.name);
    }
  }
  return fast.empty() ? std::string() : fmt::format(" Fast but not true: {}.", listed(fast));
}

} // namespace

std::string consistency_sentence(const ConsistencyReview& review) {
  const bool compared =
      std::any_of(review.greens.begin(), review.greens.end(),
                  [](const GreenConsistency& green) { return green.score.has_value(); });
  if (!compared) {
    return "Too few greens were scored on the same day to compare them: score three or more on "
           "one walk.";
  }
  return of_greens(review) + of_parts(review) + of_fast(review);
}

} // namespace baize::services
