#include "reply.h"

#include "baize/answers/problem.h"
#include "baize/api/answer.h"

#include <array>
#include <string_view>
#include <utility>

namespace baize::api {

namespace {

// 'wasm-unsafe-eval' lets a page run the WebAssembly module that it fetched
// from 'self'; it allows no script.
constexpr std::string_view kContentPolicy =
    "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' "
    "data:; "
    "font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; "
    "base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

constexpr std::array<std::pair<std::string_view, int>, 9> kStatusOfCode{{
    {"wrong_sign_in", 401},
    {"not_signed_in", 401},
    {"not_allowed", 403},
    {"name_taken", 409},
    {"last_head_greenkeeper", 409},
    {"too_many_open", 409},
    {"photo_differs", 409},
    {"too_many_tries", 429},
    {"too_many_sign_ins", 503},
}};

bool starts_with(std::string_view text, std::string_view start) {
  return text.substr(0, start.size()) == start;
}

} // namespace

Response reply(const answers::Json& json, int status) {
  return {status, "application/json", answers::text(json), true, {}};
}

int status_of(const units::Problem& problem) {
  if (starts_with(problem.code, "no_such_") && problem.code != "no_such_day" &&
      problem.code != "no_such_setting" && problem.code != "no_such_database") {
    return 404;
  }
  for (const auto& [code, status] : kStatusOfCode) {
    if (problem.code == code) {
      return status;
    }
  }
  if (problem.code == "body_too_long") {
    return 413;
  }
  if (problem.code == "encoding_not_known") {
    return 415;
  }
  if (problem.code == "database_locked" || problem.code == "stopped") {
    return 503;
  }
  const bool of_store = starts_with(problem.code, "database_") || problem.code == "disk_full" ||
                        problem.code == "no_such_database" ||
                        problem.code == "not_a_baize_database";
  return of_store ? 500 : 400;
}

void protect(Response& response) {
  response.headers.emplace_back("Content-Security-Policy", kContentPolicy);
  response.headers.emplace_back("X-Content-Type-Options", "nosniff");
  response.headers.emplace_back("Referrer-Policy", "no-referrer");
  response.headers.emplace_back("Cross-Origin-Opener-Policy", "same-origin");
  response.headers.emplace_back("Cross-Origin-Resource-Policy", "same-origin");
}

Response refusal(int status, const units::Problem& problem) {
  Response response = reply(answers::with_sentence(problem), status);
  response.headers.emplace_back("Cache-Control", "no-store");
  protect(response);
  return response;
}

} // namespace baize::api
