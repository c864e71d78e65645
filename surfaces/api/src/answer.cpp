#include "baize/api/answer.h"

#include "access.h"
#include "baize/journal/photo.h"
#include "call.h"
#include "forwarded.h"
#include "guard.h"
#include "query.h"
#include "reply.h"

#include <algorithm>
#include <array>

namespace baize::api {

namespace {

/// Bytes of a body, in the order of Body.
constexpr std::array<std::uint64_t, 5> kMostBytes{64ULL * 1024, 4ULL * 1024 * 1024,
                                                  8ULL * 1024 * 1024, 160ULL * 1024 * 1024,
                                                  journal::kMostPhotoBytes};

/// What stands for the {words} of the pattern; absent: the path is another one.
std::optional<std::vector<std::string>> match(std::string_view pattern,
                                              const std::vector<std::string>& segments) {
  std::vector<std::string> ids;
  std::string_view rest = pattern.substr(1);
  for (const std::string& segment : segments) {
    const std::string_view part = rest.substr(0, rest.find('/'));
    if (part.empty()) {
      return std::nullopt;
    }
    if (part.front() == '{') {
      if (segment.empty()) {
        return std::nullopt;
      }
      ids.push_back(segment);
    } else if (part != segment) {
      return std::nullopt;
    }
    rest.remove_prefix(std::min(rest.size(), part.size() + 1));
  }
  return rest.empty() ? std::optional(ids) : std::nullopt;
}

struct Found {
  const Route* route = nullptr;
  std::vector<std::string> ids;
  std::string allow; ///< methods of the path, where it is known but not by this method
};

void allow(std::string& list, std::string_view method) {
  list += list.empty() ? "" : ", ";
  list += method;
  list += method == "GET" ? ", HEAD" : "";
}

Found find(std::string_view method, const std::vector<std::string>& segments) {
  Found found;
  for (const Route& route : routes()) {
    auto ids = match(route.pattern, segments);
    if (!ids) {
      continue;
    }
    if (route.method == method) {
      found.route = &route;
      found.ids = std::move(*ids);
      return found;
    }
    allow(found.allow, route.method);
  }
  return found;
}

Response not_modified(const std::string& tag, const char* keep = "no-cache") {
  Response response;
  response.status = 304;
  response.send_body = false;
  response.headers.emplace_back("ETag", tag);
  response.headers.emplace_back("Cache-Control", keep);
  protect(response);
  return response;
}

Response not_allowed(const Request& request, const std::string& methods) {
  Response response =
      refusal(405, {"method_not_allowed", "method", request.method.substr(0, 40), methods, ""});
  response.headers.emplace_back("Allow", methods);
  return response;
}

Response page(const Context& context, const Request& request, const Target& target) {
  const Asset* asset = context.asset ? context.asset(target.path) : nullptr;
  if (asset == nullptr) {
    return refusal(404, {"no_such_page", "path", target.path.substr(0, 200),
                         "a path of the pages or of the interface", ""});
  }
  if (request.method != "GET" && request.method != "HEAD") {
    return not_allowed(request, "GET, HEAD");
  }
  if (names_tag(request.if_none_match, asset->etag)) {
    return not_modified(asset->etag);
  }
  Response response{200, asset->content_type, std::string(asset->body), true, {}};
  response.headers.emplace_back("ETag", asset->etag);
  response.headers.emplace_back("Cache-Control", "no-cache");
  protect(response);
  return response;
}

std::optional<units::Problem> unknown_parameter(const Route& route, const Target& target) {
  for (const auto& [name, value] : target.query) {
    if (std::find(route.query.begin(), route.query.end(), name) == route.query.end()) {
      std::string known;
      for (const std::string_view one : route.query) {
        known += known.empty() ? "one of " : ", ";
        known += one;
      }
      return units::Problem{"unknown_parameter", "parameter", name.substr(0, 100),
                            known.empty() ? "none, as this path takes no parameter" : known, ""};
    }
  }
  return std::nullopt;
}

units::Result<units::Day> today_of(const Context& context, const Target& target) {
  const auto asked = day_in(target, "today");
  if (!asked) {
    return tl::unexpected(asked.error());
  }
  return *asked ? **asked : context.today();
}

bool has_header(const Response& response, std::string_view name) {
  return std::any_of(response.headers.begin(), response.headers.end(),
                     [&](const auto& header) { return header.first == name; });
}

Response refused(int status, units::Problem problem, const Target& target) {
  if (problem.place.empty()) {
    problem.place = target.path.substr(0, 200);
  }
  return refusal(status, problem);
}

/// The header that RFC 9110 (15.5.2) wants with a 401, and (10.2.3) a time to wait.
Response with_advice(Response response, const units::Problem& problem) {
  if (response.status == 401) {
    response.headers.emplace_back("WWW-Authenticate", "Cookie realm=\"Baize\"");
  }
  if (problem.code == "too_many_sign_ins") {
    response.headers.emplace_back("Retry-After", "5");
  }
  return response;
}

Response routed(const Context& context, const Request& request, const Target& target, Found found,
                const services::Caller& caller) {
  if (const auto problem = unknown_parameter(*found.route, target)) {
    return refused(400, *problem, target);
  }
  const auto today = today_of(context, target);
  if (!today) {
    return refused(400, today.error(), target);
  }
  const auto change = context.store.change_number();
  if (!change) {
    return refused(503, change.error(), target);
  }
  const std::string tag =
      make_tag(context.edition, std::to_string(*change) + units::iso(*today) + caller_state(caller),
               request.target);
  // What a caller may see is kept by that caller's browser only.
  const char* keep = context.people == nullptr ? "no-cache" : "private, no-cache";
  if (found.route->tagged && request.if_none_match != "*" &&
      names_tag(request.if_none_match, tag)) {
    return not_modified(tag, keep);
  }
  auto answer = found.route->handle(
      Call{context, request, target, std::move(found.ids), *change, *today, caller});
  if (!answer) {
    return with_advice(refused(status_of(answer.error()), answer.error(), target), answer.error());
  }
  if (found.route->tagged) {
    answer->headers.emplace_back("ETag", tag);
  }
  // A picture says itself how long it may be kept.
  if (!has_header(*answer, "Cache-Control")) {
    answer->headers.emplace_back("Cache-Control", found.route->tagged ? keep : "no-store");
  }
  protect(*answer);
  return std::move(*answer);
}

/// A body of another type than the route takes. Absent: it is fine.
std::optional<units::Problem> of_other_type(const Route& route, const Request& request) {
  const bool has_body = route.method == "POST" || route.method == "PUT";
  const bool picture = route.body == Body::picture;
  const std::string_view wanted = picture ? "image/jpeg" : "application/json";
  if (!has_body || is_type(request.content_type, wanted)) {
    return std::nullopt;
  }
  return units::Problem{picture ? "not_a_jpeg" : "not_json", "content type",
                        request.content_type.substr(0, 100), std::string(wanted), ""};
}

/// What its head tells that keeps a request out, before anything else of it is
/// looked at; or else who asks.
tl::expected<services::Caller, Response> let_in(const Context& context, const Request& request,
                                                const Target& target, const Found& found) {
  if (const auto other = of_unknown_origin(context, request)) {
    return tl::unexpected(refused(other->status, other->problem, target));
  }
  auto caller = caller_of(context, request);
  if (!caller) {
    return tl::unexpected(refused(503, caller.error(), target));
  }
  if (const auto no = barred(*found.route, found.ids, *caller)) {
    return tl::unexpected(with_advice(refused(no->status, no->problem, target), no->problem));
  }
  if (const auto type = of_other_type(*found.route, request)) {
    return tl::unexpected(refused(415, *type, target));
  }
  return std::move(*caller);
}

/// What keeps other sites' pages from speaking through a keeper's browser.
std::optional<Response> guarded(const Context& context, const Request& request,
                                const Target& target) {
  const std::string& host = host_of(request, target);
  if (!host_allowed(host, context.hosts)) {
    return refused(403,
                   {"host_not_allowed", "host", host.substr(0, 100),
                    "a name under which this server was told to answer", ""},
                   target);
  }
  if (request.method == "GET" || request.method == "HEAD") {
    return std::nullopt;
  }
  if (!origin_allowed(request.origin, host)) {
    return refused(403,
                   {"origin_not_allowed", "origin", request.origin.substr(0, 100),
                    "this server's own pages", ""},
                   target);
  }
  return std::nullopt;
}

/// What the route of a request takes; the least where there is none.
Body body_of(std::string_view method, std::string_view target) {
  const auto parsed = parse_target(target);
  const Found found = parsed ? find(method, parsed->segments) : Found{};
  return found.route == nullptr ? Body::small : found.route->body;
}

/// For whoever watches over the server, on this machine unless told otherwise.
Response metrics_text(const Context& context, const Request& request, const Target& target) {
  if (!context.metrics_for_all && !is_this_machine(request.address)) {
    return refused(403,
                   {"not_from_here", "address", request.address,
                    "this machine's own, as the server was not told to show its figures to others",
                    ""},
                   target);
  }
  if (request.method != "GET" && request.method != "HEAD") {
    return not_allowed(request, "GET, HEAD");
  }
  const auto figures = context.figures ? context.figures() : std::vector<Figure>{};
  Response response{200,
                    "application/openmetrics-text; version=1.0.0; charset=utf-8",
                    context.metrics->text(figures),
                    true,
                    {}};
  response.headers.emplace_back("Cache-Control", "no-store");
  protect(response);
  response.route = "/metrics";
  return response;
}

} // namespace

Response answer(const Context& context, const Request& request) {
  const auto target = parse_target(request.target);
  if (!target) {
    return refusal(400, target.error());
  }
  if (auto response = guarded(context, request, *target)) {
    return std::move(*response);
  }
  const bool head = request.method == "HEAD";
  if (context.metrics && target->path == "/metrics") {
    Response figures = metrics_text(context, request, *target);
    figures.send_body = !head;
    return figures;
  }
  Found found = find(head ? "GET" : std::string_view(request.method), target->segments);
  const std::string_view route = found.route == nullptr ? "" : found.route->pattern;
  Response response;
  if (found.route == nullptr) {
    response =
        found.allow.empty() ? page(context, request, *target) : not_allowed(request, found.allow);
  } else {
    auto caller = let_in(context, request, *target, found);
    response = caller ? routed(context, request, *target, std::move(found), *caller)
                      : std::move(caller.error());
  }
  response.send_body = response.send_body && !head;
  response.route = !route.empty() || response.status >= 400 ? route : "page";
  return response;
}

std::optional<Response> turned_away(const Context& context, const Request& request) {
  const auto target = parse_target(request.target);
  if (!target) {
    return refusal(400, target.error());
  }
  if (auto response = guarded(context, request, *target)) {
    return response;
  }
  const Found found = find(request.method, target->segments);
  if (found.route == nullptr) {
    return std::nullopt;
  }
  auto caller = let_in(context, request, *target, found);
  if (caller) {
    return std::nullopt;
  }
  caller.error().route = found.route->pattern;
  return std::move(caller.error());
}

std::uint64_t body_limit(std::string_view method, std::string_view target) {
  return kMostBytes.at(static_cast<std::size_t>(body_of(method, target)));
}

bool waits(std::string_view method, std::string_view target) {
  const Body body = body_of(method, target);
  return body == Body::entries || body == Body::picture;
}

} // namespace baize::api
