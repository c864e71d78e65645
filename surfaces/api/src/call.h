#pragma once

#include "baize/api/context.h"
#include "baize/api/http.h"
#include "baize/api/routes.h"
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
  const services::Caller& caller;

  /// Who is written beside what this call keeps.
  std::string author() const {
    return caller.kind == services::Caller::Kind::person ? caller.name : context.author;
  }

  const std::string* query(const std::string& name) const {
    const auto found = target.query.find(name);
    return found == target.query.end() ? nullptr : &found->second;
  }
};

/// The host that is asked, with its port: of the target where that names it.
inline const std::string& host_of(const Request& request, const Target& target) {
  return target.authority.empty() ? request.host : target.authority;
}

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
Answer photos(const Call& call);
Answer picture(const Call& call);
Answer keep_picture(const Call& call);
Answer import_files(const Call& call);
Answer import_weather(const Call& call);
Answer design_trial(const Call& call);
Answer analyse_trial(const Call& call);
Answer analyse_trial_rolls(const Call& call);
Answer session(const Call& call);
Answer sign_in(const Call& call);
Answer sign_out(const Call& call);
Answer own_sessions(const Call& call);
Answer end_own_session(const Call& call);
Answer look_at_invitation(const Call& call);
Answer accept_invitation(const Call& call);
Answer people_of_club(const Call& call);
Answer set_role(const Call& call);
Answer take_role(const Call& call);
Answer cut_off(const Call& call);
Answer invite(const Call& call);
Answer end_invitation(const Call& call);
Answer make_link(const Call& call);
Answer end_link(const Call& call);

/// What a body is, how large it may be, and what answering it means. All are
/// JSON but for a picture, which is image/jpeg.
enum class Body {
  small,   ///< a form, or none
  trial,   ///< plan and records of a trial
  entries, ///< a hand-in: compressed, and kept by waiting for the disk
  files,   ///< a club's whole records, or years of weather
  picture  ///< of a photo; kept by waiting for the disk
};

/// A line of the table of routes.
struct Route {
  std::string_view method;
  std::string_view pattern;
  Need need;
  std::vector<std::string_view> query; ///< parameters it knows
  bool tagged = true;                  ///< its answer changes only with store, day and program
  Answer (*handle)(const Call&);
  Body body = Body::small;
};
const std::vector<Route>& routes();

} // namespace baize::api
