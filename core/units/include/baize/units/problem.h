#pragma once

#include <tl/expected.hpp>

#include <string>

namespace baize::units {

/// Why a value was refused. The four parts are data, so that a form can put the
/// sentence beside its field and a program can act on the code.
struct Problem {
  std::string code;  ///< short and stable, snake_case, e.g. "score_out_of_range"
  std::string field; ///< the field as the data dictionary names it, e.g. "score"
  std::string value; ///< what was found, as it was written
  std::string rule;  ///< what would have been accepted, as a clause: "a whole number from 1 to 10"
  std::string place; ///< where: file and line, route or option; may be empty

  friend bool operator==(const Problem&, const Problem&) = default;
};

/// One sentence: place, field, value, rule.
/// "rolls.csv line 12: score is '11', but must be a whole number from 1 to 10."
std::string sentence(const Problem& problem);
/// The same for a remark, which refuses nothing:
/// "rolls.csv line 12: score is '7'; expected 8 by the marks of the roll."
std::string remark_sentence(const Problem& problem);

/// A value, or the problem that kept it from being one. The core never throws.
template <class T> using Result = tl::expected<T, Problem>;

using Refusal = tl::unexpected<Problem>;

/// Short for `Refusal(Problem{...})`, so that a refusal reads as one line.
Refusal refuse(std::string code, std::string field, std::string value, std::string rule);

} // namespace baize::units
