#include "baize/green/roll_score.h"

#include "baize/green/kinds.h"

#include <algorithm>

namespace baize::green {
namespace {

bool holds(int count, int from, std::optional<int> to) {
  return count >= from && (!to || count <= *to);
}

/// Far above any count of marks; keeps the sum of two counts inside an int.
constexpr int kManyMarks = 1000000;

int counted(int marks) {
  return std::clamp(marks, 0, kManyMarks);
}

} // namespace

MarkCount count(const std::vector<Mark>& marks) {
  const auto of = [&](MarkKind kind) {
    return static_cast<int>(std::count_if(marks.begin(), marks.end(),
                                          [&](const Mark& mark) { return mark.kind == kind; }));
  };
  return {of(MarkKind::bobble), of(MarkKind::chatter), of(MarkKind::snake)};
}

Offer offer(MarkCount marks) {
  const int bobbles = counted(marks.bobbles);
  const int others = counted(marks.chatters) + counted(marks.snakes);
  for (const ScoreRule& rule : score_rules()) {
    if (holds(bobbles, rule.bobbles_from, rule.bobbles_to) &&
        holds(others, rule.others_from, rule.others_to)) {
      return {rule.offered, rule.lowest, rule.highest};
    }
  }
  // The build refuses a table in which any pair of counts meets no line.
  return {};
}

bool contradicts(const Roll& roll) {
  if (!roll.marks || !roll.score) {
    return false;
  }
  const Offer offered = offer(count(*roll.marks));
  return *roll.score < offered.lowest || *roll.score > offered.highest;
}

std::optional<ScoreSum> score_sum(const Run& run) {
  ScoreSum sum;
  for (const Roll& roll : run.rolls) {
    if (roll.score) {
      sum.total += *roll.score;
      ++sum.rolls;
    }
  }
  if (sum.rolls > 0) {
    return sum;
  }
  if (run.total && run.total_of && *run.total_of > 0) {
    return ScoreSum{static_cast<double>(*run.total), *run.total_of};
  }
  return std::nullopt;
}

std::optional<ScoreSum> score_sum(const std::vector<Run>& runs) {
  ScoreSum sum;
  for (const Run& run : runs) {
    if (const auto one = score_sum(run)) {
      sum.total += one->total;
      sum.rolls += one->rolls;
    }
  }
  return sum.rolls > 0 ? std::optional(sum) : std::nullopt;
}

} // namespace baize::green
