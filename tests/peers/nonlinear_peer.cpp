// Columns x and y; fits y = low + (high - low) exp(-rate x): a recovery after a work.
#include "baize/stats/nonlinear_least_squares.h"
#include "peers/sheet_in.h"

#include <cmath>

int main() {
  using namespace baize;
  auto sheet = peers::read_sheet();
  const auto x = peers::numbers(sheet["x"]);
  const auto y = peers::numbers(sheet["y"]);
  const stats::CurveModel curve = [&](const std::vector<double>& b, std::size_t row) {
    return b[0] + (b[1] - b[0]) * std::exp(-b[2] * x[row]);
  };
  const auto fit = stats::nonlinear_least_squares(y, curve, {8, 5, 0.2});
  const char* names[] = {"level", "start", "rate"};
  for (std::size_t k = 0; k < fit.parameters.size(); ++k) {
    const std::string name = names[k];
    peers::say(name, fit.parameters[k].value);
    peers::say(name + " se", fit.parameters[k].standard_error);
    const auto profile = stats::profile_interval(y, curve, fit, k);
    peers::say(name + " low", profile.interval.low);
    peers::say(name + " high", profile.interval.high);
  }
  peers::say("ss", fit.residual_ss);
  return 0;
}
