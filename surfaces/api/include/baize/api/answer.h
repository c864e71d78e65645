#pragma once

#include "baize/api/context.h"
#include "baize/api/http.h"
#include "baize/units/problem.h"

#include <cstdint>
#include <optional>
#include <string_view>

namespace baize::api {

/// Answers one request: the whole interface without a socket. Never throws for
/// anything the request holds. Safe from many threads.
Response answer(const Context& context, const Request& request);

/// The refusal of a request whose head alone tells that it is not for this
/// caller; its body need not be read. Absent: `answer` must see all of it.
std::optional<Response> turned_away(const Context& context, const Request& request);

/// A refusal as its answer, with all headers; also for what never becomes a
/// request (a header that is too long).
Response refusal(int status, const units::Problem& problem);

/// Bytes the body of this request may have: 160 MiB for an import, 8 MiB for a
/// hand-in, 4 MiB for the records of a trial, 1.5 MiB for a picture, else 64 KiB.
std::uint64_t body_limit(std::string_view method, std::string_view target);

/// Does answering it mostly mean to wait for the disk (ServerOptions::waits)?
bool waits(std::string_view method, std::string_view target);

} // namespace baize::api
