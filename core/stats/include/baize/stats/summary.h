#pragma once

#include "baize/units/problem.h"

#include <functional>
#include <string>

namespace baize::stats {

/// How a computation ended.
enum class Termination {
  done,          ///< a direct computation went through
  converged,     ///< an iteration met its tolerance
  boundary,      ///< converged with a parameter at the edge of its range (a variance of 0)
  not_converged, ///< stopped at the limit of iterations
  degenerate,    ///< the data cannot answer: all equal, separated, all censored, singular
  stopped,       ///< whoever waited asked to stop; nothing is estimated
  refused        ///< options or data break a rule; see `problem`
};

/// Called now and then by long computations with the share done, 0 to 1. Answers
/// whether to go on. Empty: nobody watches.
using Watch = std::function<bool(double done)>;

/// Says whether a result may be used. A result with a number that is not finite
/// is never usable.
struct Summary {
  Termination termination = Termination::refused;
  std::string message;    ///< one plain sentence
  units::Problem problem; ///< filled where termination is refused, degenerate or stopped
  int iterations = 0;
  bool usable = false;
};

Summary done();
Summary converged(int iterations);
Summary refused(units::Problem problem);
Summary stopped();
Summary degenerate(units::Problem problem);

} // namespace baize::stats
