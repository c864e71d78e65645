#pragma once

#include "baize/answers/json.h"
#include "baize/services/photos.h"

namespace baize::answers {

/// {"photos": [{"photo", "visit" or "work", "taken", "by", "note", "sha256", "bytes", "here",
/// "day", "green"}]}
Json to_json(const std::vector<services::PhotoLine>& photos);

} // namespace baize::answers
