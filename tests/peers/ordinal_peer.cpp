// Reads category, x1, x2, weight and the link's name as the argument; prints the fit.
#include "baize/stats/ordinal.h"
#include "peers/sheet_in.h"

int main(int argc, char** argv) {
  using namespace baize;
  const auto sheet = peers::read_sheet();
  const stats::OrdinalData data{peers::whole_numbers(sheet.at("category")),
                                {peers::numbers(sheet.at("x1")), peers::numbers(sheet.at("x2"))},
                                peers::numbers(sheet.at("weight"))};
  const bool probit = argc > 1 && std::string(argv[1]) == "probit";
  const auto fit = stats::fit_ordinal(
      data, {.link = probit ? stats::OrdinalLink::probit : stats::OrdinalLink::logit});
  peers::say("usable", fit.summary.usable ? 1 : 0);
  peers::say("deviance", fit.deviance);
  peers::say("ratio", fit.likelihood_ratio);
  for (std::size_t i = 0; i < fit.coefficients.size(); ++i) {
    peers::say("b" + std::to_string(i), fit.coefficients[i].value);
    peers::say("be" + std::to_string(i), fit.coefficients[i].standard_error);
  }
  for (std::size_t i = 0; i < fit.thresholds.size(); ++i) {
    peers::say("t" + std::to_string(i), fit.thresholds[i].value);
    peers::say("te" + std::to_string(i), fit.thresholds[i].standard_error);
  }
  const auto shares = stats::ordinal_probabilities(fit, {0.5, 1});
  for (std::size_t i = 0; i < shares.size(); ++i) {
    peers::say("p" + std::to_string(i), shares[i]);
  }
  return 0;
}
