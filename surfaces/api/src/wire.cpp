#include "wire.h"

#include "baize/api/answer.h"

#include <fmt/format.h>

#include <chrono>

namespace baize::api {

namespace {

std::string text(boost::beast::string_view view) {
  return {view.data(), view.size()};
}

/// RFC 9110, 5.6.7; English words whatever the locale.
std::string http_date() {
  static constexpr const char* kDays[] = {"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
  static constexpr const char* kMonths[] = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                            "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
  const auto now = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
  const auto today = std::chrono::floor<std::chrono::days>(now);
  const std::chrono::year_month_day date(today);
  const std::chrono::hh_mm_ss time(now - today);
  return fmt::format(
      "{}, {:02} {} {} {:02}:{:02}:{:02} GMT", kDays[std::chrono::weekday(today).c_encoding()],
      static_cast<unsigned>(date.day()), kMonths[static_cast<unsigned>(date.month()) - 1],
      static_cast<int>(date.year()), time.hours().count(), time.minutes().count(),
      time.seconds().count());
}

units::Problem problem(const char* code, const char* field, std::string value, const char* rule) {
  return {code, field, std::move(value), rule, ""};
}

} // namespace

Request request_of(Parser& parser) {
  auto& message = parser.get();
  Request request;
  request.method = text(message.method_string());
  request.target = text(message.target());
  request.host = text(message[http::field::host]);
  request.origin = text(message[http::field::origin]);
  request.content_type = text(message[http::field::content_type]);
  request.if_none_match = text(message[http::field::if_none_match]);
  request.content_encoding = text(message[http::field::content_encoding]);
  request.cookie = text(message[http::field::cookie]);
  request.fetch_site = text(message["Sec-Fetch-Site"]);
  request.body = std::move(message.body());
  return request;
}

WireResponse wire_of(Response response, unsigned version, bool keep_alive) {
  WireResponse wire;
  wire.version(version);
  wire.result(static_cast<unsigned>(response.status));
  wire.set(http::field::date, http_date());
  for (const auto& [name, value] : response.headers) {
    wire.insert(name, value);
  }
  if (!response.content_type.empty()) {
    wire.set(http::field::content_type, response.content_type);
  }
  if (response.status != 304) {
    wire.content_length(response.body.size());
  }
  if (response.send_body) {
    wire.body() = std::move(response.body);
  }
  wire.keep_alive(keep_alive);
  return wire;
}

std::optional<Response> fault_of(const Parser& parser, std::uint64_t body_limit) {
  const auto& message = parser.get();
  if (message.version() != 10 && message.version() != 11) {
    return refusal(505, problem("bad_version", "HTTP version", std::to_string(message.version()),
                                "HTTP/1.0 or HTTP/1.1"));
  }
  const auto hosts = static_cast<std::size_t>(message.count(http::field::host));
  if (hosts > 1 || (hosts == 0 && message.version() == 11)) {
    return refusal(
        400, problem("bad_host", "Host", std::to_string(hosts) + " headers", "exactly one header"));
  }
  const auto expect = message[http::field::expect];
  if (!expect.empty() && !beast::iequals(expect, "100-continue")) {
    return refusal(417, problem("bad_expectation", "Expect", text(expect).substr(0, 100),
                                "100-continue or nothing"));
  }
  const auto length = parser.content_length();
  if (length && *length > body_limit) {
    return refusal(413, problem("body_too_long", "body", std::to_string(*length) + " bytes",
                                "shorter for this path"));
  }
  return std::nullopt;
}

Response broken(const beast::error_code& error) {
  if (error == http::error::header_limit) {
    return refusal(431, problem("header_too_long", "header", "more than the limit",
                                "a request header of at most 16 KiB"));
  }
  if (error == http::error::body_limit) {
    return refusal(
        413, problem("body_too_long", "body", "more than the limit", "shorter for this path"));
  }
  return refusal(400, problem("bad_http", "request", error.message(), "HTTP/1.1 (RFC 9112)"));
}

Response too_busy() {
  Response response = refusal(
      503, problem("too_busy", "connections", "all taken", "fewer at once; try again in a moment"));
  response.headers.emplace_back("Retry-After", "2");
  return response;
}

} // namespace baize::api
