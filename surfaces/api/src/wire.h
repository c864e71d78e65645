#pragma once

#include "asio.h"
#include "baize/api/http.h"

#include <cstdint>
#include <optional>

namespace baize::api {

using Parser = http::request_parser<http::string_body>;
using WireResponse = http::response<http::string_body>;

/// What matters of a request that has come in whole; takes its body over.
Request request_of(Parser& parser);
/// With Content-Length, Date and Connection. A HEAD's answer has its length only.
WireResponse wire_of(Response response, unsigned version, bool keep_alive);
/// Why a request cannot be taken as HTTP; none: it can.
std::optional<Response> fault_of(const Parser& parser, std::uint64_t body_limit);
/// The refusal for bytes that Beast could not read.
Response broken(const beast::error_code& error);
/// 503: every connection is taken.
Response too_busy();

} // namespace baize::api
