#pragma once

#include "baize/units/day.h"
#include "baize/units/length.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace baize::green {

/// Something seen while the ball rolled. Bobble: the ball leaves the ground.
/// Chatter: it vibrates but stays down. Snake: an unexpected sideways move
/// (break from slope is no snake).
enum class MarkKind { bobble, chatter, snake };
/// The word that files, database and interfaces use: "bobble", "chatter", "snake".
std::string_view word(MarkKind kind);
/// Absent where the word is none of them.
std::optional<MarkKind> find_mark_kind(std::string_view word);

struct Mark {
  MarkKind kind = MarkKind::bobble;
  std::optional<double> seconds; ///< since release; gives its place on the line
  friend bool operator==(const Mark&, const Mark&) = default;
};

/// One ball. Everything but its order is optional: "not measured" is not zero.
struct Roll {
  int order = 1; ///< 1, 2, 3 ... within the run
  std::optional<units::Length> distance;
  /// Absent: marks were not noted. Empty: watched, and nothing was seen.
  std::optional<std::vector<Mark>> marks;
  std::optional<int> score; ///< 1 to 10, the observer's own
  friend bool operator==(const Roll&, const Roll&) = default;
};

enum class Direction { out, back };
/// "out" or "back", likewise.
std::string_view word(Direction direction);
std::optional<Direction> find_direction(std::string_view word);

/// The rolls of one direction at a spot. A run may hold only the total of its
/// rolls' scores; then `rolls` has no scores and `total_of` says how many balls.
struct Run {
  std::string spot; ///< id within the green
  Direction direction = Direction::out;
  std::vector<Roll> rolls;
  std::optional<int> total;
  std::optional<int> total_of;
  friend bool operator==(const Run&, const Run&) = default;
};

} // namespace baize::green
