// Columns a, b, c: scores of three observers, 1 to 5. Says every measure of agreement.
#include "baize/stats/bland_altman.h"
#include "baize/stats/concordance.h"
#include "baize/stats/icc.h"
#include "baize/stats/kappa.h"
#include "peers/sheet_in.h"

namespace {

using namespace baize;

void say_icc(const std::string& name, const stats::IccForm& form) {
  peers::say(name, form.value);
  peers::say(name + " low", form.interval.low);
  peers::say(name + " high", form.interval.high);
}

void say_kappa(const std::string& name, const stats::Table& table, stats::KappaWeights weights) {
  const auto kappa = stats::cohen_kappa(table, weights);
  peers::say(name, kappa.value);
  peers::say(name + " se", kappa.se);
}

} // namespace

int main() {
  auto sheet = peers::read_sheet();
  const auto a = peers::numbers(sheet["a"]);
  const auto b = peers::numbers(sheet["b"]);
  const auto c = peers::numbers(sheet["c"]);
  stats::Ratings ratings;
  for (std::size_t i = 0; i < a.size(); ++i) {
    ratings.push_back({a[i], b[i], c[i]});
  }
  const auto icc = stats::intraclass_correlation(ratings);
  say_icc("ICC1", icc.one_way_single);
  say_icc("ICC2", icc.random_single);
  say_icc("ICC3", icc.fixed_single);
  say_icc("ICC1k", icc.one_way_mean);
  say_icc("ICC3k", icc.fixed_mean);
  if (icc.random_mean) {
    say_icc("ICC2k", *icc.random_mean);
  }
  const auto table =
      stats::cross_table(peers::whole_numbers(sheet["a"]), peers::whole_numbers(sheet["b"]), 1, 5);
  say_kappa("kappa", *table, stats::KappaWeights::none);
  say_kappa("weighted kappa", *table, stats::KappaWeights::quadratic);
  const auto limits = stats::bland_altman(a, b);
  peers::say("bias", limits.bias);
  peers::say("bias low", limits.bias_interval.low);
  peers::say("limit low", limits.limits.low);
  peers::say("limit high", limits.limits.high);
  const auto lin = stats::concordance(a, b);
  peers::say("concordance", lin.coefficient);
  peers::say("correlation", lin.correlation);
}
