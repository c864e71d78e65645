// Columns: y; treatments named in capitals; strata named in small letters, in the
// order of the alphabet. Arguments: "time" NAME for the corrections of repeated
// measures, "pairs" for differences of all means.
#include "baize/stats/sphericity.h"
#include "baize/stats/trial_means.h"
#include "peers/sheet_in.h"

#include <cctype>

namespace {

using namespace baize;

stats::DesignedTrial trial_of(const std::map<std::string, std::vector<std::string>>& sheet) {
  stats::DesignedTrial trial;
  for (const auto& [name, cells] : sheet) {
    if (name == "y") {
      for (const std::string& cell : cells) {
        trial.y.push_back(cell == "NA" ? std::nullopt
                                       : std::optional(std::strtod(cell.c_str(), nullptr)));
      }
    } else if (std::isupper(static_cast<unsigned char>(name[0])) != 0) {
      trial.treatments.push_back({name, peers::whole_numbers(cells)});
    } else {
      trial.strata.push_back({name, peers::whole_numbers(cells)});
    }
  }
  return trial;
}

void say_anova(const stats::TrialAnova& anova) {
  for (const auto& stratum : anova.strata) {
    peers::say(stratum.name + " df", stratum.residual_df);
    peers::say(stratum.name + " ss", stratum.residual_ss);
    for (const auto& term : stratum.terms) {
      peers::say(term.name + " df", term.df);
      peers::say(term.name + " ss", term.ss);
      peers::say(term.name + " f", term.f.value_or(-1));
      peers::say(term.name + " p", term.p.value_or(-1));
    }
  }
}

void say_pairs(const stats::DesignedTrial& trial) {
  std::vector<std::size_t> all;
  for (std::size_t k = 0; k < trial.treatments.size(); ++k) {
    all.push_back(k);
  }
  const auto table = stats::trial_means(trial, all);
  for (std::size_t i = 0; i < table.means.size(); ++i) {
    peers::say("mean " + std::to_string(i + 1), table.means[i].mean);
  }
  for (const auto& pair : table.differences) {
    const std::string name = std::to_string(pair.first + 1) + "-" + std::to_string(pair.second + 1);
    peers::say(name + " difference", pair.difference);
    peers::say(name + " se", pair.standard_error);
    peers::say(name + " df", pair.df);
  }
}

} // namespace

int main(int count, char** arguments) {
  const auto trial = trial_of(peers::read_sheet());
  const auto anova = stats::trial_anova(trial);
  if (!anova.summary.usable) {
    std::fprintf(stderr, "%s\n", anova.summary.message.c_str());
    return 1;
  }
  say_anova(anova);
  const std::string wish = count > 1 ? arguments[1] : "";
  if (wish == "pairs") {
    say_pairs(trial);
  }
  if (wish == "time") {
    const auto found = stats::sphericity(trial, static_cast<std::size_t>(std::atoi(arguments[2])));
    peers::say("gg", found.greenhouse_geisser);
    peers::say("hf", found.huynh_feldt);
    for (const auto& test : found.tests) {
      peers::say(test.name + " p gg", test.p_greenhouse_geisser);
      peers::say(test.name + " p hf", test.p_huynh_feldt);
    }
  }
  return 0;
}
