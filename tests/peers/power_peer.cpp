// Columns: n, d, k, f, p, q; one line of powers for each. With the argument "bootstrap":
// the mean of y over x, drawn anew; the repeats are said too.
#include "baize/stats/bootstrap.h"
#include "baize/stats/power.h"
#include "peers/sheet_in.h"

namespace {

using namespace baize;

void say_bootstrap(std::map<std::string, std::vector<std::string>>& sheet) {
  const auto y = peers::numbers(sheet["y"]);
  const auto x = peers::numbers(sheet["x"]);
  const auto ratio = [&](const std::vector<std::size_t>& drawn) {
    double above = 0;
    double below = 0;
    for (const std::size_t unit : drawn) {
      above += y[unit];
      below += x[unit];
    }
    return above / below;
  };
  const auto found = stats::bootstrap(y.size(), ratio, {1999, 3, 0.9});
  peers::say("estimate", found.estimate);
  peers::say("a", found.acceleration);
  peers::say("low", found.percentile.low);
  peers::say("high", found.percentile.high);
  peers::say("bca low", found.bca->low);
  peers::say("bca high", found.bca->high);
  for (const double repeat : found.repeats) {
    peers::say("repeat", repeat);
  }
}

} // namespace

int main(int count, char**) {
  auto sheet = peers::read_sheet();
  if (count > 1) {
    say_bootstrap(sheet);
    return 0;
  }
  const auto n = peers::numbers(sheet["n"]);
  const auto d = peers::numbers(sheet["d"]);
  const auto k = peers::whole_numbers(sheet["k"]);
  const auto f = peers::numbers(sheet["f"]);
  const auto p = peers::numbers(sheet["p"]);
  const auto q = peers::numbers(sheet["q"]);
  for (std::size_t i = 0; i < n.size(); ++i) {
    const std::string row = " " + std::to_string(i + 1);
    stats::TTestPlan t{d[i], 1, false, true, 0.05};
    peers::say("two" + row, stats::power_of(t, n[i]).power);
    t.paired = true;
    t.two_sided = false;
    peers::say("paired" + row, stats::power_of(t, n[i]).power);
    peers::say("anova" + row, stats::power_of(stats::AnovaPlan{k[i], f[i], 0.01}, n[i]).power);
    peers::say("shares" + row,
               stats::power_of(stats::SharesPlan{p[i], q[i], true, 0.05}, n[i]).power);
  }
  return 0;
}
