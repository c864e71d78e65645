#pragma once

#include "baize/answers/json.h"
#include "baize/api/http.h"
#include "baize/units/problem.h"

namespace baize::api {

/// A JSON body under a status.
Response reply(const answers::Json& json, int status = 200);
/// The status that fits a problem of store or service: 404 for what does not
/// exist, 503 where a later try may help, 400 for a request that breaks a rule,
/// 500 for a store in trouble.
int status_of(const units::Problem& problem);
/// Adds the headers every answer has: what its pages may load, and from where.
void protect(Response& response);

} // namespace baize::api
