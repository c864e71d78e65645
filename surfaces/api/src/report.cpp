// The page for the owner, as one file to keep and to send.
#include "baize/answers/report_data.h"
#include "query.h"
#include "reply.h"

#include <algorithm>

namespace baize::api {

namespace {

/// A name that every system takes: other characters become a dash.
std::string file_name(const std::string& club, int year) {
  std::string name = club;
  std::replace_if(
      name.begin(), name.end(),
      [](unsigned char c) {
        return !((c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'));
      },
      '-');
  return name + "-" + std::to_string(year) + ".html";
}

} // namespace

Answer report_file(const Call& call) {
  const auto year = year_of(call, 1);
  if (!year) {
    return tl::unexpected(year.error());
  }
  if (!call.context.report_page) {
    return units::refuse("pages_not_built", "program", "baize",
                         "built with its pages, which needs Node.js (BAIZE_WEB)");
  }
  const auto club = club_of(call);
  if (!club) {
    return tl::unexpected(club.error());
  }
  const auto data = services::report_data((*club)->records, (*club)->weather, *year, call.today);
  if (!data) {
    return tl::unexpected(data.error());
  }
  auto page = call.context.report_page(answers::text(answers::to_json(*data)));
  if (!page) {
    return tl::unexpected(page.error());
  }
  Response response{200, "text/html; charset=utf-8", std::move(*page), true, {}};
  // Kept as a file: its own script is part of it, which the pages' policy forbids.
  response.headers.emplace_back("Content-Disposition",
                                "attachment; filename=\"" + file_name(call.ids[0], *year) + "\"");
  return response;
}

} // namespace baize::api
