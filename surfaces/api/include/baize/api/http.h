#pragma once

#include <stop_token>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace baize::api {

/// What of an HTTP request matters here. Header values are as they came; empty
/// where the header is absent.
struct Request {
  std::string method; ///< GET, HEAD, POST ...
  std::string target; ///< "/api/v1/clubs?x=1", still percent-encoded
  std::string body;
  std::string host;
  std::string origin;
  std::string content_type;
  std::string if_none_match;
  std::string content_encoding{};
  std::string cookie{};
  std::string fetch_site{}; ///< Sec-Fetch-Site: where the page that asks comes from
  std::string address{};    ///< of who asks; a proxy's word for it where it is believed
  bool secure = false;      ///< it came by https, here or at the proxy
  std::string id{};         ///< of this request, in the log and in X-Request-Id
  /// Asked to stop when nobody waits for the answer any more: long computations
  /// then end as "stopped".
  std::stop_token stop{};
};

/// An answer. Content-Length, Date and Connection are the server's own.
struct Response {
  int status = 200;
  std::string content_type; ///< empty where there is no body
  std::string body;
  bool send_body = true; ///< false for HEAD: only its length is told
  std::vector<std::pair<std::string, std::string>> headers;
  /// The pattern of the route that answered, for the log and the counts.
  std::string_view route{};
};

} // namespace baize::api
