// Mixed models of few greens: do Satterthwaite's intervals of a difference hold it?
#include "baize/stats/mixed.h"
#include "baize/stats/random.h"
#include "studies.h"

#include <fmt/format.h>

namespace baize::evidence {
namespace {

constexpr double kGreenSd = 0.4;
constexpr double kVisitSd = 0.3;

/// Half of the greens are treated (between), or half of each green's visits are (within).
void row(int worlds, int greens, int visits, bool within, Table& table, Table& claimed) {
  const double truth = 0.5;
  Coverage coverage;
  Rate rate;
  for (int world = 0; world < worlds; ++world) {
    stats::Random chance(701, static_cast<std::uint64_t>(world));
    stats::MixedModel model;
    std::vector<double> treated;
    stats::RandomTerm green{"green", {}};
    for (int g = 0; g < greens; ++g) {
      const double ground = 7 + kGreenSd * chance.normal();
      // The last green has half the visits: nothing is balanced in practice.
      const int seen = g + 1 == greens ? (visits + 1) / 2 : visits;
      for (int v = 0; v < seen; ++v) {
        treated.push_back((within ? v : g) % 2);
        model.y.push_back(ground + kVisitSd * chance.normal());
        green.group.push_back(g);
      }
    }
    model.fixed.push_back(treated);
    model.random.push_back(green);
    stats::MixedOptions options;
    options.group_effects = false;
    const auto nothing = stats::fit_mixed(model, options);
    if (nothing.summary.usable) {
      rate.add(nothing.coefficients[1].p < 0.05);
    }
    for (std::size_t i = 0; i < model.y.size(); ++i) {
      model.y[i] += truth * treated[i];
    }
    const auto fit = stats::fit_mixed(model, options);
    if (fit.summary.usable) {
      coverage.add(truth, fit.coefficients[1].value, fit.coefficients[1].interval);
    } else {
      coverage.refuse();
    }
  }
  const std::string name = fmt::format("{} greens, {} visits, difference {}", greens, visits,
                                       within ? "within greens" : "between greens");
  table.rows.push_back(coverage.row(name));
  claimed.rows.push_back(rate.row(name));
}

} // namespace

Study mixed_models(int worlds) {
  Study study{"mixed_models",
              "Mixed models of few greens",
              "Greens differ by a standard deviation of 0.4 points, visits by 0.3; the last green "
              "has half the visits of the others. A difference of 0.5 points lies between greens "
              "or within them. Restricted maximum likelihood, Satterthwaite's degrees of freedom.",
              {},
              {}};
  Table coverage{"Coverage of the difference", Coverage::header("records"), {}};
  Table claimed{"Claims where there is nothing, at 5 %", Rate::header("records", "claimed"), {}};
  for (const int greens : {4, 6, 10, 18}) {
    for (const int visits : {4, 12}) {
      row(worlds, greens, visits, false, coverage, claimed);
      row(worlds, greens, visits, true, coverage, claimed);
    }
  }
  study.tables = {std::move(coverage), std::move(claimed)};
  return study;
}

} // namespace baize::evidence
