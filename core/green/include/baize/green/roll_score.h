#pragma once

#include "baize/green/roll.h"

#include <optional>
#include <vector>

namespace baize::green {

/// What the marks of one roll suggest: the score to offer and the band it may
/// move in. The observer's own score always stands.
struct Offer {
  int score = 9;
  int lowest = 9;
  int highest = 10;
  friend bool operator==(const Offer&, const Offer&) = default;
};

struct MarkCount {
  int bobbles = 0;
  int chatters = 0;
  int snakes = 0;
};

MarkCount count(const std::vector<Mark>& marks);

/// The rule of the trade as one data table (data/roll_score.tsv): nothing seen
/// 9 (10 only if certain); one chatter or one snake 8; two 7; more 6; one bobble
/// 6 at most; two or more 5 at most. Common practice, no published source.
Offer offer(MarkCount marks);

/// True when a score stands outside the band its marks allow. Pointed out, never changed.
bool contradicts(const Roll& roll);

/// Sum and number of the scored rolls of a run; a run written down only as a
/// total gives that. Absent where nothing was scored.
struct ScoreSum {
  double total = 0;
  int rolls = 0;
  double mean() const { return total / rolls; }
};
std::optional<ScoreSum> score_sum(const Run& run);
/// All runs together, each roll counting once.
std::optional<ScoreSum> score_sum(const std::vector<Run>& runs);

} // namespace baize::green
