// Who asks, and whether they may.
#include "access.h"

#include "guard.h"

namespace baize::api {

namespace {

using services::Caller;

constexpr std::string_view kCookie = "baize_session";
constexpr std::string_view kSecureCookie = "__Host-baize_session";

std::string roles_of(const Caller& caller) {
  std::string text;
  for (const auto& [club, role] : caller.clubs) {
    text += (text.empty() ? "" : ", ") + std::string(services::name(role));
  }
  return caller.kind == Caller::Kind::link ? "reader by a link" : text;
}

std::string roles_with(services::Right right) {
  std::string text;
  for (const services::RoleRights& line : services::kRoles) {
    if (services::may(line.role, right)) {
      text += (text.empty() ? "" : " or ") + std::string(line.name);
    }
  }
  return text;
}

Barred not_signed_in() {
  return {401,
          {"not_signed_in", "session", "", "one that holds: sign in, or open the link again", ""}};
}

} // namespace

std::string session_token(const Request& request) {
  const std::string_view wanted = request.secure ? kSecureCookie : kCookie;
  std::string_view rest = request.cookie;
  while (!rest.empty()) {
    const std::string_view pair = rest.substr(0, rest.find(';'));
    rest.remove_prefix(std::min(rest.size(), pair.size() + 1));
    const std::size_t equals = pair.find('=');
    if (equals != std::string_view::npos && trimmed(pair.substr(0, equals)) == wanted) {
      return std::string(trimmed(pair.substr(equals + 1)));
    }
  }
  return {};
}

std::string session_cookie(const Request& request, const std::string& token,
                           services::Seconds seconds) {
  const bool secure = request.secure;
  return std::string(secure ? kSecureCookie : kCookie) + "=" + token +
         "; Path=/; HttpOnly; SameSite=Strict; Max-Age=" + std::to_string(seconds) +
         (secure ? "; Secure" : "");
}

units::Result<Caller> caller_of(const Context& context, const Request& request) {
  if (context.people == nullptr) {
    Caller all;
    all.kind = Caller::Kind::everyone;
    return all;
  }
  return context.people->caller(session_token(request));
}

units::Result<services::People*> people_in(const Context& context) {
  if (context.people == nullptr) {
    return units::refuse("no_such_service", "people", "", "asked of a server where people sign in");
  }
  return context.people;
}

units::Result<std::vector<services::ClubName>> clubs_of(const Context& context,
                                                        const Caller& caller) {
  auto all = context.store.clubs();
  if (all) {
    std::erase_if(*all, [&](const services::ClubName& club) { return !caller.knows(club.id); });
  }
  return all;
}

units::Problem no_such_club(const std::string& club) {
  return {"no_such_club", "club", club.substr(0, 200), "a club that is yours to see here", ""};
}

units::Problem role_problem(const Caller& caller, services::Right right, const std::string& club) {
  const auto role = caller.clubs.find(club);
  const bool person = caller.kind == Caller::Kind::person;
  return {"not_allowed", "role",
          person && role != caller.clubs.end() ? std::string(services::name(role->second))
                                               : roles_of(caller),
          roles_with(right) + " for this", ""};
}

std::optional<Barred> barred(const Route& route, const std::vector<std::string>& ids,
                             const Caller& caller) {
  const auto [where, right] = route.need;
  if (where == Need::Where::unsaid) {
    return Barred{403, {"not_allowed", "path", std::string(route.pattern), "one for people", ""}};
  }
  if (where == Need::Where::open || caller.kind == Caller::Kind::everyone) {
    return std::nullopt;
  }
  if (caller.kind == Caller::Kind::nobody) {
    return not_signed_in();
  }
  if (where == Need::Where::person && caller.kind != Caller::Kind::person) {
    return Barred{403, {"not_allowed", "caller", "a link", "a person who has signed in", ""}};
  }
  if (where == Need::Where::somewhere && !caller.may_somewhere(right)) {
    return Barred{403, role_problem(caller, right, "")};
  }
  if (where == Need::Where::here) {
    const std::string& club = ids.front();
    if (!caller.knows(club)) {
      return Barred{404, no_such_club(club)};
    }
    if (!caller.may(right, club)) {
      return Barred{403, role_problem(caller, right, club)};
    }
  }
  return std::nullopt;
}

std::optional<Barred> of_unknown_origin(const Context& context, const Request& request) {
  const bool changes = request.method != "GET" && request.method != "HEAD";
  if (!changes || context.people == nullptr || session_token(request).empty()) {
    return std::nullopt;
  }
  const bool said = request.fetch_site.empty() ? !request.origin.empty()
                                               : is_word(request.fetch_site, "same-origin");
  if (said) {
    return std::nullopt;
  }
  return Barred{403,
                {"origin_not_stated", "origin", request.fetch_site.substr(0, 40),
                 "stated by the browser (Origin, or Sec-Fetch-Site: same-origin) where a request "
                 "may change something",
                 ""}};
}

std::string caller_state(const Caller& caller) {
  if (caller.kind == Caller::Kind::everyone) {
    return {};
  }
  std::string state = "\n" + caller.id;
  for (const auto& [club, role] : caller.clubs) {
    state += "\n" + club + "\n" + std::string(services::name(role));
  }
  return state;
}

} // namespace baize::api
