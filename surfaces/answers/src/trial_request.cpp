#include "baize/answers/trial.h"

#include <cmath>
#include <utility>

namespace baize::answers {
namespace {

using units::Problem;

Problem bad(const std::string& field, std::string value, std::string rule) {
  return {"bad_trial", field.substr(0, 100), std::move(value), std::move(rule), ""};
}

/// Members of the body, each read once; what is left at the end is unknown.
class Members {
 public:
  explicit Members(const Json& body) : left_(body) {}

  void text(const char* name, std::string& to) {
    take(name, "a text",
         [&](const Json& one) { return one.is_string() && (to = one.get<std::string>(), true); });
  }
  void names(const char* name, std::vector<std::string>& to) {
    take(name, "a list of texts", [&](const Json& one) {
      for (const Json& item : one) {
        if (!one.is_array() || !item.is_string() || to.size() == kMostNames) {
          return false;
        }
        to.push_back(item.get<std::string>());
      }
      return one.is_array();
    });
  }
  void number(const char* name, double& to) {
    take(name, "a number",
         [&](const Json& one) { return one.is_number() && (to = one.get<double>(), true); });
  }
  template <class T> void whole(const char* name, T& to, std::int64_t most) {
    take(name, "a whole number, 0 or more", [&](const Json& one) {
      if (!one.is_number_unsigned() ||
          one.get<std::uint64_t>() > static_cast<std::uint64_t>(most)) {
        return false;
      }
      to = static_cast<T>(one.get<std::uint64_t>());
      return true;
    });
  }
  std::optional<Problem> problem() const {
    if (!problem_ && !left_.empty()) {
      return bad(left_.begin().key(), "", "a member that the interface describes");
    }
    return problem_;
  }
  void refuse(Problem problem) { problem_ = problem_ ? problem_ : std::move(problem); }

 private:
  static constexpr std::size_t kMostNames = 100;

  template <class Use> void take(const char* name, const char* rule, Use use) {
    const auto found = left_.find(name);
    if (found == left_.end()) {
      return;
    }
    const Json one = std::move(*found);
    left_.erase(found);
    if (!use(one)) {
      refuse(bad(name, shown(one), rule));
    }
  }
  static std::string shown(const Json& one) {
    return one.is_primitive() ? answers::text(one).substr(0, 60) : "JSON of another shape";
  }

  Json left_;
  std::optional<Problem> problem_;
};

constexpr std::int64_t kMost = 1000000;
constexpr std::int64_t kGreatestSeed = (std::int64_t{1} << 53U) - 1;

} // namespace

units::Result<services::TrialRequest> read_trial_request(std::string_view body) {
  const Json json = Json::parse(body, nullptr, false);
  if (json.is_discarded()) {
    return units::refuse("bad_json", "body", "", "JSON");
  }
  if (!json.is_object()) {
    return tl::unexpected(bad("body", "JSON of another shape", "an object"));
  }
  services::TrialRequest request;
  std::string layout(trials::word(request.design.layout));
  std::string first;
  int visits = 0;
  int every = 3;
  Members members(json);
  members.text("trial", request.design.trial);
  members.text("layout", layout);
  members.names("treatments", request.design.treatments);
  members.names("second_treatments", request.design.seconds);
  members.text("control", request.design.control);
  members.whole("blocks", request.design.blocks, kMost);
  members.names("greens", request.design.greens);
  members.names("halves", request.design.halves);
  members.whole("across", request.design.across, kMost);
  members.whole("seed", request.design.seed, kGreatestSeed);
  members.text("first_visit", first);
  members.whole("visits", visits, kMost);
  members.whole("every_days", every, kMost);
  members.number("plot_sd", request.power.spread.plot);
  members.number("visit_sd", request.power.spread.visit);
  members.number("whole_plot_sd", request.power.spread.whole_plot);
  if (const auto found = trials::layout_of(layout)) {
    request.design.layout = *found;
  } else {
    members.refuse(bad("layout", layout.substr(0, 60),
                       "completely_randomised, randomised_blocks, split_plot or strip_plot"));
  }
  if (const auto problem = members.problem()) {
    return tl::unexpected(*problem);
  }
  if (!first.empty()) {
    const auto day = units::parse_iso_day(first);
    auto days = day ? services::visit_days(*day, visits, every)
                    : units::Result<std::vector<units::Day>>(tl::unexpected(day.error()));
    if (!days) {
      return tl::unexpected(days.error());
    }
    request.days = std::move(*days);
  }
  return request;
}

} // namespace baize::answers
