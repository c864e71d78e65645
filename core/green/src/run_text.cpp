#include "run_text.h"

namespace baize::green {

std::string run_text(const Run& run) {
  const std::string direction(word(run.direction));
  return run.spot.empty() ? direction : "spot " + run.spot + " " + direction;
}

std::string roll_text(const Run& run, const Roll& roll) {
  return run_text(run) + " roll " + std::to_string(roll.order);
}

} // namespace baize::green
