#pragma once

#include "baize/services/greens_review.h"

#include <string_view>

namespace baize::answers {

/// The word for each value of an enumeration, as the OpenAPI file lists it.
std::string_view word(green::Grass value);
std::string_view word(speed::SlopeClass value);
std::string_view word(recovery::DayKind value);
std::string_view word(recovery::Definition value);
std::string_view word(recovery::Censoring value);
std::string_view word(services::Trend value);

} // namespace baize::answers
