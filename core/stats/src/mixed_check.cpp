#include "checks.h"
#include "mixed_design.h"

#include <string>

namespace baize::stats {

using units::Problem;

std::optional<Problem> MixedOptions::problem() const {
  if (max_iterations < 1 || max_iterations > 10000) {
    return Problem{"option_out_of_range", "max_iterations", std::to_string(max_iterations),
                   "from 1 to 10000", "the options"};
  }
  return outside_open("confidence", confidence, 0, 1, "above 0 and below 1");
}

namespace detail {
namespace {

std::optional<Problem> bad_columns(const std::string& what,
                                   const std::vector<std::vector<double>>& columns,
                                   std::size_t rows) {
  for (std::size_t j = 0; j < columns.size(); ++j) {
    const std::string name = what + " " + std::to_string(j + 1);
    auto problem = lengths_differ(name.c_str(), columns[j].size(), rows);
    problem = problem ? problem : not_finite(name.c_str(), columns[j]);
    if (problem) {
      return problem;
    }
  }
  return std::nullopt;
}

std::optional<Problem> bad_term(const RandomTerm& term, std::size_t rows) {
  const std::string what = term.name.empty() ? "random term" : term.name;
  const std::size_t effects = term.slopes.size() + (term.constant ? 1 : 0);
  auto problem = too_few((what + " effects").c_str(), effects, 1);
  problem = problem ? problem : lengths_differ(what.c_str(), term.group.size(), rows);
  problem = problem ? problem : bad_columns(what + " slope", term.slopes, rows);
  return problem;
}

} // namespace

std::optional<Summary> check_mixed(const MixedModel& model) {
  const std::size_t rows = model.y.size();
  const std::size_t fixed = model.fixed.size() + (model.constant ? 1 : 0);
  auto problem = too_few("fixed columns", fixed, 1);
  problem = problem ? problem : too_few("random terms", model.random.size(), 1);
  problem = problem ? problem : too_few("rows", rows, fixed + 2);
  problem = problem ? problem : not_finite("y", model.y);
  problem = problem ? problem : bad_columns("fixed column", model.fixed, rows);
  for (std::size_t t = 0; !problem && t < model.random.size(); ++t) {
    problem = bad_term(model.random[t], rows);
  }
  return problem ? std::optional(refused(*problem)) : std::nullopt;
}

} // namespace detail
} // namespace baize::stats
