#pragma once

#include "baize/green/work.h"

#include <optional>
#include <span>
#include <string_view>

namespace baize::green {

// The tables of data/work_kinds.tsv and data/measured_fields.tsv, made into C++
// by the build. Order is the files' own, so that forms show it.

enum class ValueType { number, whole, word };
/// "number", "whole" or "word".
std::string_view word(ValueType type);

/// What a value may be. Numbers lie from `lowest` to `highest`; words are one
/// of `words`, or any where that is empty.
struct ValueRule {
  ValueType type = ValueType::number;
  std::string_view unit; ///< empty: none
  double lowest = 0;
  double highest = 0;
  bool above_lowest = false; ///< the lowest itself is refused ("above 0")
  std::span<const std::string_view> words;

  /// False for a number that is not finite.
  bool takes(double number) const;
  bool takes(std::string_view word) const;
  /// "a number above 0 and up to 30 m", "one of none, light, heavy".
  std::string clause() const;
};

/// A named quantity of a kind of work.
struct ParameterKind {
  std::string_view name;  ///< tine_diameter
  std::string_view title; ///< Tine diameter
  ValueRule rule;
  bool leading = false; ///< the one that labels show: "coring 13 mm"
  std::string_view meaning;
};

struct WorkKind {
  std::string_view name;  ///< coring
  std::string_view title; ///< Coring
  WorkClass work_class = WorkClass::routine;
  std::span<const ParameterKind> parameters;
  std::string_view meaning;
};

/// A measured field. `record` is roll, run, visit or reading; "reading_kind"
/// for what readings of that name hold.
struct MeasuredField {
  std::string_view record;
  std::string_view name;
  std::string_view title;
  ValueRule rule;
  std::string_view kind;   ///< measured, counted, judged or stated
  std::string_view source; ///< what it is read from
  std::string_view trust;  ///< how far it can be trusted
};

std::span<const WorkKind> work_kinds();
std::span<const MeasuredField> measured_fields();
/// The part of measured_fields() whose record is "reading_kind".
std::span<const MeasuredField> reading_kinds();

/// Null where there is none of that name.
const WorkKind* find_work_kind(std::string_view name);
const ParameterKind* find_parameter(const WorkKind& kind, std::string_view name);
/// Null where the kind has none.
const ParameterKind* leading_parameter(const WorkKind& kind);
const MeasuredField* find_field(std::string_view record, std::string_view name);
const MeasuredField* find_reading_kind(std::string_view name);

/// One line of the roll score's rule: counts from and to, both inside (no upper
/// count: any number above), and what they suggest.
struct ScoreRule {
  int bobbles_from = 0;
  std::optional<int> bobbles_to;
  int others_from = 0; ///< chatters and snakes together
  std::optional<int> others_to;
  int offered = 0;
  int lowest = 0;
  int highest = 0;
};
/// data/roll_score.tsv; every pair of counts is met by exactly one line.
std::span<const ScoreRule> score_rules();

} // namespace baize::green
