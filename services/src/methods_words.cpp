#include "methods_words.h"

#include "baize/units/number.h"
#include "wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string_view>

namespace baize::services {
namespace {

std::string capital(std::string text) {
  if (!text.empty() && 'a' <= text.front() && text.front() <= 'z') {
    text.front() = static_cast<char>(text.front() - 'a' + 'A');
  }
  return text;
}

/// Whole days; tenths where less than 3.
std::string days_text(double days) {
  return units::show_number(std::fabs(days), std::fabs(days) < 2.95 ? 1 : 0);
}

/// "3 days", "1.4 days".
std::string days_of(double days) {
  const std::string text = days_text(days);
  return text + (text == "1.0" ? " day" : " days");
}

/// Where it changes what is shown; empty else.
std::string missed_sentence(const compare::MethodFigures& method) {
  if (method.missed == 0 || !method.days_if_good ||
      days_text(method.days_if_good->value) == days_text(method.days->value)) {
    return {};
  }
  return fmt::format(
      "After {}, {} of {} had no visit for longer than usual before the first good one. If visits "
      "were missed because the ball rolled well again, half were back after {} ({} to {}), not {}.",
      method.method, method.missed, counted(method.looks, "look"),
      days_of(method.days_if_good->value), days_text(*method.days_if_good->low),
      days_text(*method.days_if_good->high), days_text(method.days->value));
}

std::string works_text(const compare::MethodFigures& first, const compare::MethodFigures& second) {
  return fmt::format("{} against {}", counted(first.works, "work"), second.works);
}

std::string why_no_median(const compare::MethodFigures& method) {
  switch (method.no_median) {
  case compare::NoMedian::never_back:
    return "after " + method.method + " nothing was seen back yet";
  case compare::NoMedian::never_below:
    return "after " + method.method + " nothing was seen below";
  case compare::NoMedian::none:
    break;
  }
  return {};
}

/// "2 to 10 days earlier", "2 days earlier to 7 later".
std::string span_of(const compare::Figure& days) {
  if (*days.low > 0 || *days.high < 0) {
    const double least = std::min(std::fabs(*days.low), std::fabs(*days.high));
    const double most = std::max(std::fabs(*days.low), std::fabs(*days.high));
    return fmt::format("{} to {}", days_text(least), days_text(most));
  }
  return fmt::format("anything from {} earlier to {} later", days_of(*days.high),
                     days_text(*days.low));
}

/// How many more works would show the difference that is worth seeing.
std::string needed_text(const compare::PairFigures& pair, int works, double days_wanted) {
  constexpr int kBeyondWaiting = 30; // works of one method, at one or two a year
  if (!pair.works_needed || *pair.works_needed - works > kBeyondWaiting) {
    return fmt::format(" More than {} more works of each would be needed to see {}; a trial tells "
                       "sooner.",
                       kBeyondWaiting, days_of(days_wanted));
  }
  const int more = *pair.works_needed - works;
  if (more > 0) {
    return fmt::format(" About {} more {} of each would be needed to see {}.", more,
                       more == 1 ? "work" : "works", days_of(days_wanted));
  }
  return fmt::format(" A difference of {} would most likely have shown by now.",
                     days_of(days_wanted));
}

} // namespace

std::string method_sentence(const compare::MethodFigures& method) {
  const std::string base = fmt::format("{}, {} looked at.", counted(method.works, "work"),
                                       counted(method.looks, "green"));
  if (method.days) {
    return fmt::format("{}: half were back after {} ({} to {}); {}", capital(method.method),
                       days_of(method.days->value), days_text(*method.days->low),
                       days_text(*method.days->high), base);
  }
  const std::string why = why_no_median(method);
  return capital(why.empty() ? method.method : why) + (why.empty() ? ": " : "; ") + base;
}

std::string pair_sentence(const compare::PairFigures& pair, const compare::MethodFigures& first,
                          const compare::MethodFigures& second, double days_wanted) {
  if (!pair.days) {
    const std::string why = why_no_median(first.days ? second : first);
    return fmt::format("{} and {} cannot be compared in days{}; {}.", capital(pair.first),
                       pair.second, why.empty() ? " yet" : ": " + why, works_text(first, second));
  }
  if (pair.evidence == compare::Evidence::one_work) {
    const bool both = first.works == 1 && second.works == 1;
    const std::string& once = first.works == 1 ? pair.first : pair.second;
    return fmt::format("{} and {} cannot be told apart yet: {} done once only; {}.",
                       capital(pair.first), pair.second, both ? "both were" : once + " was",
                       works_text(first, second));
  }
  // Days are second less first: above 0 the first was back earlier.
  if (pair.told_apart) {
    const bool earlier = pair.days->value > 0;
    return fmt::format("{} was back about {} earlier than {} ({}); {}.",
                       capital(earlier ? pair.first : pair.second), days_of(pair.days->value),
                       earlier ? pair.second : pair.first, span_of(*pair.days),
                       earlier ? works_text(first, second) : works_text(second, first));
  }
  std::string text =
      fmt::format("{} and {} cannot be told apart yet: {} was back {}; {}.", capital(pair.first),
                  pair.second, pair.first, span_of(*pair.days), works_text(first, second));
  return text + needed_text(pair, std::min(first.works, second.works), days_wanted);
}

std::string caution(compare::Evidence evidence) {
  switch (evidence) {
  case compare::Evidence::one_work:
    return "One of them was done once only: its day and its method cannot be parted.";
  case compare::Evidence::before_after:
    return "All works of one came before all works of the other: the years may differ, not the "
           "methods.";
  case compare::Evidence::repeated:
    return "Repeated works, but no lot decided where and when each was done: a guide, no proof.";
  case compare::Evidence::randomised:
    break;
  }
  return "Repeated, and a trial gave each green its method by lot.";
}

std::string headline(const MethodsReview& review) {
  const PairOfMethods* surest = nullptr;
  const PairOfMethods* nearest = nullptr;
  for (const PairOfMethods& pair : review.pairs) {
    if (!pair.figures.days) {
      continue;
    }
    if (pair.figures.told_apart && (surest == nullptr || pair.figures.p < surest->figures.p)) {
      surest = &pair;
    }
    const bool repeated = pair.figures.evidence != compare::Evidence::one_work;
    const bool before =
        nearest != nullptr && nearest->figures.evidence != compare::Evidence::one_work;
    if (nearest == nullptr || (repeated && !before) ||
        (repeated == before && pair.figures.p < nearest->figures.p)) {
      nearest = &pair;
    }
  }
  if (surest != nullptr) {
    return surest->sentence;
  }
  if (nearest != nullptr) {
    return nearest->sentence;
  }
  if (review.methods.size() < 2) {
    return review.methods.empty()
               ? "No disruptive work has been looked at yet, so there is nothing to compare."
               : "Only " + review.methods.front().figures.method +
                     " has been looked at, so there is nothing to compare it with.";
  }
  if (review.comparison.summary.problem.code == "too_few_works") {
    return fmt::format("The {} methods cannot be told apart yet: each was done once only. One more "
                       "work of any of them is a beginning.",
                       review.methods.size());
  }
  return "The methods cannot be told apart yet. " + review.comparison.summary.message;
}

std::vector<std::string> methods_notes(const MethodsReview& review,
                                       const compare::Gathered& gathered) {
  std::vector<std::string> notes;
  const auto say = [&](int count, std::string_view one, std::string_view many) {
    if (count > 0) {
      notes.push_back(fmt::format("{} {}", count, count == 1 ? one : many));
    }
  };
  say(static_cast<int>(gathered.plans.size()), "work is still to come and left out.",
      "works are still to come and left out.");
  say(gathered.not_looked_at, "green was not looked at after its work and is left out.",
      "times a green was not looked at after its work, and is left out.");
  say(gathered.no_score_before, "green has no score before its work and is left out.",
      "times a green had no score before its work, and is left out.");
  if (!review.comparison.no_growth_days.empty()) {
    notes.push_back("Growth-days are left out. " + review.comparison.no_growth_days);
  }
  for (const MethodLine& line : review.methods) {
    if (!line.figures.days && line.figures.no_median != compare::NoMedian::none) {
      notes.push_back(line.sentence);
    }
    if (std::string missed = missed_sentence(line.figures); !missed.empty()) {
      notes.push_back(std::move(missed));
    }
    if (line.figures.losses_open > 0) {
      notes.push_back(fmt::format(
          "After {} the loss had not ended at {} of {} when the record or the next work cut it "
          "off: its score-days are a least.",
          line.figures.method, line.figures.losses_open, counted(line.figures.looks, "look")));
    }
  }
  return notes;
}

} // namespace baize::services
