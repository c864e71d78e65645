#pragma once

#include "baize/api/context.h"
#include "baize/api/http.h"
#include "baize/api/target.h"

#include <string>
#include <string_view>
#include <vector>

namespace baize::api {

/// A request that has found its route.
struct Call {
  const Context& context;
  const Request& request;
  const Target& target;
  std::vector<std::string> ids; ///< what stands for {club}, {green} ... in their order
  std::int64_t change = 0;      ///< the store's change number as the request began
  units::Day today;             ///< of the query, else the context's

  const std::string* query(const std::string& name) const {
    const auto found = target.query.find(name);
    return found == target.query.end() ? nullptr : &found->second;
  }
};

/// A handler gives its answer, or the problem that becomes a refusal.
using Answer = units::Result<Response>;

Answer healthz(const Call& call);
Answer fields(const Call& call);
Answer clubs(const Call& call);
Answer greens_review(const Call& call);
Answer season_review(const Call& call);
Answer season_model(const Call& call);
Answer report_file(const Call& call);
Answer season_checks(const Call& call);
Answer works(const Call& call);
Answer work_review(const Call& call);
Answer methods_review(const Call& call);
Answer observers_review(const Call& call);
Answer consistency_review(const Call& call);
Answer visits(const Call& call);
Answer visit_detail(const Call& call);
Answer visit_history(const Call& call);
Answer field_kit(const Call& call);
Answer hand_in(const Call& call);
Answer entries_since(const Call& call);
Answer conflicts(const Call& call);
Answer import_files(const Call& call);
Answer import_weather(const Call& call);
Answer design_trial(const Call& call);
Answer analyse_trial(const Call& call);
Answer analyse_trial_rolls(const Call& call);

/// A line of the table of routes.
struct Route {
  std::string_view method;
  std::string_view pattern;
  std::vector<std::string_view> query; ///< parameters it knows
  bool tagged = true;                  ///< its answer changes only with store, day and program
  Answer (*handle)(const Call&);
};
const std::vector<Route>& routes();

} // namespace baize::api
