#include "baize/api/doorway.h"

#include "baize/api/answer.h"
#include "baize/api/target.h"
#include "guard.h"
#include "phone_words.h"
#include "reply.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace baize::api {

namespace {

/// Puts values in the place of {their names}; other braces stay.
std::string filled(std::string_view words,
                   const std::vector<std::pair<std::string_view, std::string>>& values) {
  std::string text(words);
  for (const auto& [name, value] : values) {
    const std::string mark = "{" + std::string(name) + "}";
    for (std::size_t at = 0; (at = text.find(mark, at)) != std::string::npos;) {
      text.replace(at, mark.size(), value);
      at += value.size();
    }
  }
  return text;
}

std::string at_host(const char* scheme, const std::string& host, std::uint16_t port) {
  const bool usual = port == (std::string_view(scheme) == "https" ? 443 : 80);
  return usual ? fmt::format("{}://{}", scheme, host)
               : fmt::format("{}://{}:{}", scheme, host, port);
}

/// The picture with words for who cannot see it; nothing where there is none.
std::string code(const Doorway& doorway, const std::string& text, const char* label) {
  const auto picture =
      doorway.scan_code ? doorway.scan_code(text) : units::Result<std::string>(std::string());
  return !picture || picture->empty()
             ? std::string()
             : fmt::format(R"(<div class="code" role="img" aria-label="{}">{}</div>)", label,
                           *picture);
}

std::string page_of(const Doorway& doorway) {
  const std::string https = at_host("https", doorway.host, doorway.port);
  const std::string phone = at_host("http", doorway.host, doorway.port) + "/phone";
  std::string trust;
  if (!doorway.authority.empty()) {
    trust = filled(kTrustSteps,
                   {{"phone_code", code(doorway, phone, "Code that opens this page on a phone")},
                    {"phone", phone},
                    {"fingerprint", doorway.fingerprint}});
  }
  return filled(kPhonePage, {{"trust", trust},
                             {"open_number", trust.empty() ? "" : "4. "},
                             {"open_code", code(doorway, https + "/field/",
                                                "Code that opens the page for the green")},
                             {"https", https}});
}

Response shown(const char* type, std::string body, const Request& request) {
  Response response{200, type, std::move(body), request.method != "HEAD", {}};
  response.headers.emplace_back("Cache-Control", "no-store");
  protect(response);
  response.route = "/phone";
  return response;
}

/// A name that anybody on the open internet may look up: not of this machine or a
/// local network, and no address.
bool is_public_name(std::string_view name) {
  const std::size_t dot = name.rfind('.');
  if (dot == std::string_view::npos || name.front() == '[') {
    return false;
  }
  const std::string_view last = name.substr(dot + 1);
  const bool digits = !last.empty() && last.front() >= '0' && last.front() <= '9';
  static constexpr std::array kLocal{"local", "localhost", "internal", "lan", "test", "arpa"};
  const bool local = std::any_of(kLocal.begin(), kLocal.end(),
                                 [&](const char* one) { return is_word(last, one); });
  return !digits && !local;
}

bool reads(const Request& request) {
  return request.method == "GET" || request.method == "HEAD";
}

} // namespace

std::optional<Response> phone_page(const Doorway& doorway, const Request& request) {
  const auto target = parse_target(request.target);
  if (!target || !reads(request)) {
    return std::nullopt;
  }
  if (target->path == "/phone" || target->path == "/phone/") {
    return shown("text/html; charset=utf-8", page_of(doorway), request);
  }
  if (target->path == "/phone/style.css") {
    return shown("text/css; charset=utf-8", std::string(kPhoneStyle), request);
  }
  if (target->path == "/phone/authority.crt" && !doorway.authority.empty()) {
    Response response = shown("application/x-x509-ca-cert", doorway.authority, request);
    response.headers.emplace_back("Content-Disposition",
                                  "attachment; filename=\"baize-authority.crt\"");
    return response;
  }
  return std::nullopt;
}

Response at_the_door(const Doorway& doorway, const Request& request) {
  if (auto page = phone_page(doorway, request)) {
    return std::move(*page);
  }
  if (!reads(request)) {
    return refusal(403, {"https_needed", "address", "http",
                         "https: what is sent without it can be read on the way", ""});
  }
  const std::string_view asked = host_name(request.host);
  const bool ours = std::any_of(doorway.names.begin(), doorway.names.end(),
                                [&](const std::string& name) { return is_word(asked, name); });
  const auto target = parse_target(request.target);
  const bool plain = target && target->authority.empty();
  Response response{307, "", "", false, {}};
  response.headers.emplace_back(
      "Location", at_host("https", ours ? std::string(asked) : doorway.host, doorway.port) +
                      (plain ? request.target : "/"));
  response.headers.emplace_back("Cache-Control", "no-store");
  protect(response);
  response.route = "to https";
  return response;
}

Response inside(const Doorway& doorway, const Handler& handler, const Request& request) {
  auto page = phone_page(doorway, request);
  Response response = page ? std::move(*page) : handler(request);
  if (request.secure && doorway.authority.empty() && is_public_name(host_name(request.host))) {
    response.headers.emplace_back("Strict-Transport-Security", "max-age=2592000"); // 30 days
  }
  return response;
}

} // namespace baize::api
