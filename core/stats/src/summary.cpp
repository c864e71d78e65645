#include "baize/stats/summary.h"

#include <utility>

namespace baize::stats {

Summary done() {
  return {Termination::done, "Computed.", {}, 0, true};
}

Summary converged(int iterations) {
  return {Termination::converged, "Converged.", {}, iterations, true};
}

Summary refused(units::Problem problem) {
  std::string message = units::sentence(problem);
  return {Termination::refused, std::move(message), std::move(problem), 0, false};
}

Summary degenerate(units::Problem problem) {
  std::string message = units::sentence(problem);
  return {Termination::degenerate, std::move(message), std::move(problem), 0, false};
}

Summary stopped() {
  return {Termination::stopped,
          "Stopped before the end.",
          {"stopped", "the computation", "stopped", "left to its end to give an answer", {}},
          0,
          false};
}

} // namespace baize::stats
