#pragma once

#include "call.h"

#include <optional>

namespace baize::api {

/// The session's token in the cookie; empty: none.
std::string session_token(const Request& request);
/// The Set-Cookie that gives the token to the browser for so many seconds; with
/// an empty token it takes the cookie away.
std::string session_cookie(const Request& request, const std::string& token,
                           services::Seconds seconds);
/// Whoever asks: everyone where nobody signs in.
units::Result<services::Caller> caller_of(const Context& context, const Request& request);

/// Refuses "no_such_service" where nobody signs in.
units::Result<services::People*> people_in(const Context& context);
/// The clubs that the caller has anything to do with.
units::Result<std::vector<services::ClubName>> clubs_of(const Context& context,
                                                        const services::Caller& caller);

/// A refusal with its status.
struct Barred {
  int status = 403;
  units::Problem problem;
};
/// May the caller ask this of that route? Absent: yes.
std::optional<Barred> barred(const Route& route, const std::vector<std::string>& ids,
                             const services::Caller& caller);
/// A request that may change something, carries a cookie, and does not say that
/// it comes from our own pages (docs/architecture/one_sign_in.md). Absent: it is fine.
std::optional<Barred> of_unknown_origin(const Context& context, const Request& request);

/// The same words for a club that is not there and one that is not one's own.
units::Problem no_such_club(const std::string& club);
/// Names the roles that would do.
units::Problem role_problem(const services::Caller& caller, services::Right right,
                            const std::string& club);
/// Everything about the caller that an answer may depend on.
std::string caller_state(const services::Caller& caller);

} // namespace baize::api
