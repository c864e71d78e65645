// Reads y, x1, x2, g, h; fits y on x1 and x2 with random constants by g, and by h too
// where the argument is "crossed". Prints the least time of nine fits, in ms, from the
// columns to the finished result, and the restricted log-likelihood.
#include "baize/stats/mixed.h"
#include "peers/sheet_in.h"

#include <chrono>
#include <limits>

int main(int argc, char** argv) {
  using namespace baize;
  const auto sheet = peers::read_sheet();
  stats::MixedModel model{peers::numbers(sheet.at("y")),
                          {peers::numbers(sheet.at("x1")), peers::numbers(sheet.at("x2"))},
                          true,
                          {{"g", peers::whole_numbers(sheet.at("g"))}}};
  if (argc > 1 && std::string(argv[1]) == "crossed") {
    model.random.push_back({"h", peers::whole_numbers(sheet.at("h"))});
  }
  double least = std::numeric_limits<double>::infinity();
  double log_likelihood = 0;
  for (int repeat = 0; repeat < 9; ++repeat) {
    const auto start = std::chrono::steady_clock::now();
    const auto fit = stats::fit_mixed(model);
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - start;
    if (!fit.summary.usable) {
      std::fprintf(stderr, "%s\n", fit.summary.message.c_str());
      return 1;
    }
    least = took.count() < least ? took.count() : least;
    log_likelihood = fit.log_likelihood;
  }
  peers::say("ms", least);
  peers::say("loglik", log_likelihood);
  return 0;
}
