#include "baize/trials/design.h"

#include <set>

namespace baize::trials {
namespace {

using units::Problem;

constexpr std::size_t kMostTreatments = 60;
constexpr std::size_t kLongestName = 80;
constexpr int kMostBlocks = 40;
constexpr int kMostInBlock = 99; // plots of a block are numbered with two digits

std::optional<Problem> bad_names(const char* field, const std::vector<std::string>& names) {
  std::set<std::string> seen;
  for (const std::string& name : names) {
    if (name.empty() || name.size() > kLongestName) {
      return Problem{"name_missing", field, name.substr(0, kLongestName),
                     "a name of 1 to 80 letters", ""};
    }
    if (!seen.insert(name).second) {
      return Problem{"name_twice", field, name, "a name that stands once in the list", ""};
    }
  }
  return std::nullopt;
}

std::optional<Problem> bad_count(const char* field, std::size_t count, std::size_t low,
                                 std::size_t high) {
  if (count >= low && count <= high) {
    return std::nullopt;
  }
  return Problem{"option_out_of_range", field, std::to_string(count),
                 std::to_string(low) + " to " + std::to_string(high) + " of them", ""};
}

std::optional<Problem> bad_treatments(const Design& design, bool two) {
  auto problem = bad_count("treatments", design.treatments.size(), 2, kMostTreatments);
  problem = problem ? problem : bad_names("treatments", design.treatments);
  if (!problem && two) {
    problem = design.seconds.empty()
                  ? Problem{"no_second", "seconds", "",
                            "second treatments, which split plots and strip plots have", ""}
                  : bad_count("seconds", design.seconds.size(), 2, kMostTreatments);
  } else if (!problem && !design.seconds.empty()) {
    problem = Problem{"second_not_wanted", "seconds", design.seconds.front(),
                      "left out: only split plots and strip plots have second treatments", ""};
  }
  problem = problem ? problem : bad_names("seconds", design.seconds);
  if (!problem && !design.control.empty() &&
      std::set(design.treatments.begin(), design.treatments.end()).count(design.control) == 0) {
    problem = Problem{"no_such_control", "control", design.control, "one of the treatments", ""};
  }
  return problem;
}

std::optional<Problem> bad_places(const Design& design) {
  const auto blocks = static_cast<std::size_t>(design.blocks);
  auto problem = bad_names("greens", design.greens);
  if (!problem && !design.greens.empty() && blocks % design.greens.size() != 0) {
    problem = Problem{"greens_uneven", "greens", std::to_string(design.greens.size()),
                      "a number that divides the " + std::to_string(blocks) +
                          " blocks, so that each green has as many",
                      ""};
  }
  if (problem || design.halves.empty()) {
    return problem;
  }
  problem = bad_names("halves", design.halves);
  const bool fits = design.halves.size() == 2 && design.treatments.size() == 2 &&
                    design.greens.size() == blocks && design.layout != Layout::strip_plot &&
                    design.layout != Layout::completely_randomised;
  if (!problem && !fits) {
    problem = Problem{"halves_do_not_fit", "halves", std::to_string(design.halves.size()),
                      "two names, with two treatments, a green for each block, and blocks or a "
                      "split plot",
                      ""};
  }
  return problem;
}

} // namespace

std::optional<Problem> Design::problem() const {
  const bool two = layout == Layout::split_plot || layout == Layout::strip_plot;
  auto found = bad_names("trial", {trial});
  found = found ? found : bad_treatments(*this, two);
  if (!found && (blocks < 2 || blocks > kMostBlocks)) {
    found = Problem{"option_out_of_range", "blocks", std::to_string(blocks),
                    "2 to " + std::to_string(kMostBlocks) +
                        ": with one nothing tells chance from treatment",
                    ""};
  }
  if (!found && (across < 0 || across > kMostInBlock)) {
    found = Problem{"option_out_of_range", "across", std::to_string(across), "0 to 99", ""};
  }
  const std::size_t in_block = treatments.size() * (two ? seconds.size() : 1);
  if (!found && in_block > kMostInBlock) {
    found = Problem{"option_out_of_range", "treatments", std::to_string(in_block),
                    "at most 99 plots in a block", ""};
  }
  constexpr std::size_t kMostPlots = 2000;
  if (!found && in_block * static_cast<std::size_t>(blocks) > kMostPlots) {
    found =
        Problem{"too_many", "plots", std::to_string(in_block * static_cast<std::size_t>(blocks)),
                "at most 2000", ""};
  }
  return found ? found : bad_places(*this);
}

} // namespace baize::trials
