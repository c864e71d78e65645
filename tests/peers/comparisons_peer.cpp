// Columns: y, group (1 on). Says Tukey's, Fisher's and Dunnett's p and critical values.
#include "baize/stats/dunnett.h"
#include "baize/stats/mean_comparisons.h"
#include "baize/stats/one_way_anova.h"
#include "peers/sheet_in.h"

#include <algorithm>

namespace {

using namespace baize;

void say_dunnett(const stats::OneWayAnova& anova, const std::vector<int>& counts,
                 const std::string& name, stats::Against alternative) {
  const auto found =
      stats::dunnett(anova.means, counts, 0, anova.within_ms, anova.within_df, {alternative, 0.95});
  peers::say(name + " critical", found.critical);
  for (const auto& one : found.comparisons) {
    peers::say(name + " p " + std::to_string(one.treatment + 1), one.p);
    peers::say(name + " t " + std::to_string(one.treatment + 1), one.t);
  }
}

} // namespace

int main() {
  auto sheet = peers::read_sheet();
  const auto y = peers::numbers(sheet["y"]);
  const auto group = peers::whole_numbers(sheet["group"]);
  std::vector<std::vector<double>> groups;
  for (std::size_t i = 0; i < y.size(); ++i) {
    const auto place = static_cast<std::size_t>(group[i]);
    groups.resize(std::max(groups.size(), place));
    groups[place - 1].push_back(y[i]);
  }
  const auto anova = stats::one_way_anova(groups);
  std::vector<int> counts;
  for (const auto& values : groups) {
    counts.push_back(static_cast<int>(values.size()));
  }
  const auto pairs = stats::pair_differences(anova.means, counts, anova.within_ms, anova.within_df);
  const auto tukey = stats::compare_means(anova.means, pairs);
  const auto fisher =
      stats::compare_means(anova.means, pairs, {stats::PairMethod::least_significant_difference});
  for (std::size_t i = 0; i < pairs.size(); ++i) {
    const std::string name =
        std::to_string(pairs[i].second + 1) + "-" + std::to_string(pairs[i].first + 1);
    peers::say("tukey p " + name, tukey.pairs[i].p);
    peers::say("tukey low " + name, -tukey.pairs[i].interval.high);
    peers::say("fisher p " + name, fisher.pairs[i].p);
  }
  say_dunnett(anova, counts, "both", stats::Against::differs);
  say_dunnett(anova, counts, "greater", stats::Against::greater);
  return 0;
}
