// Reads y, x1, x2, g, h and the model's name as the argument (nested, crossed, slopes,
// apart, three), with "full" after it for maximum likelihood; prints the whole fit.
// "profile" after that prints the profile intervals too.
#include "baize/stats/mixed.h"
#include "baize/stats/mixed_contrast.h"
#include "baize/stats/mixed_profile.h"
#include "peers/sheet_in.h"

#include <string>

namespace {

using namespace baize::stats;
using baize::peers::say;

MixedModel model_of(const std::string& kind) {
  const auto sheet = baize::peers::read_sheet();
  const auto numbers = [&](const char* name) { return baize::peers::numbers(sheet.at(name)); };
  const auto groups = [&](const char* name) { return baize::peers::whole_numbers(sheet.at(name)); };
  MixedModel model{numbers("y"), {numbers("x1"), numbers("x2")}, true, {}};
  model.random = {{"g", groups("g")}};
  if (kind == "slopes" || kind == "apart" || kind == "three") {
    model.random[0].slopes = {numbers("x1")};
    model.random[0].correlated = kind != "apart";
  }
  if (kind == "three") {
    model.random[0].slopes.push_back(numbers("x2"));
  }
  if (kind == "nested" || kind == "crossed" || kind == "apart") {
    model.random.push_back({"h", groups("h")});
  }
  return model;
}

void print(const std::string& name, const Interval& interval) {
  say(name + "_low", interval.low);
  say(name + "_high", interval.high);
}

void print(const MixedFit& fit) {
  say("usable", fit.summary.usable ? 1 : 0);
  say("boundary", fit.summary.termination == Termination::boundary ? 1 : 0);
  say("loglik", fit.log_likelihood);
  say("sigma", fit.residual_sd);
  for (std::size_t i = 0; i < fit.coefficients.size(); ++i) {
    const MixedCoefficient& one = fit.coefficients[i];
    const std::string at = std::to_string(i);
    say("b" + at, one.value);
    say("e" + at, one.standard_error);
    say("df" + at, one.df);
    say("p" + at, one.p);
  }
  for (std::size_t t = 0; t < fit.random.size(); ++t) {
    const RandomTermFit& term = fit.random[t];
    const std::string at = std::to_string(t);
    for (std::size_t i = 0; i < term.sd.size(); ++i) {
      const std::string effect = at + "_" + std::to_string(i);
      say("sd" + effect, term.sd[i]);
      say("cor" + effect, term.correlation[i][0]);
      say("first" + effect, term.groups.front().value[i]);
      say("first_sd" + effect, term.groups.front().sd[i]);
      say("last" + effect, term.groups.back().value[i]);
      say("last_sd" + effect, term.groups.back().sd[i]);
    }
  }
  const auto test = mixed_f_test(fit, {{0, 1, 0}, {0, 0, 1}});
  say("f", test.f);
  say("f_df", test.error_df);
}

} // namespace

int main(int argc, char** argv) {
  const std::string kind = argc > 1 ? argv[1] : "nested";
  const bool full = argc > 2 && std::string(argv[2]) == "full";
  const MixedModel model = model_of(kind);
  print(fit_mixed(model, {.restricted = !full}));
  if (argc > 3) {
    const auto profile = profile_mixed(model);
    say("profile_usable", profile.summary.usable ? 1 : 0);
    for (std::size_t i = 0; i < profile.coefficients.size(); ++i) {
      print("profile_b" + std::to_string(i), profile.coefficients[i]);
    }
    print("profile_sigma", profile.residual_sd);
    for (std::size_t t = 0; t < profile.random.size(); ++t) {
      for (std::size_t i = 0; i < profile.random[t].size(); ++i) {
        print("profile_sd" + std::to_string(t) + "_" + std::to_string(i), profile.random[t][i]);
      }
    }
  }
  return 0;
}
