#include "baize/answers/words.h"

#include <array>

namespace baize::answers {

namespace {

// The order of each table is the order of its enumeration.
template <class E, std::size_t N>
std::string_view pick(const std::array<std::string_view, N>& words, E value) {
  const auto index = static_cast<std::size_t>(value);
  return index < N ? words[index] : std::string_view();
}

constexpr std::array<std::string_view, 2> kGrasses{"cool", "warm"};
constexpr std::array<std::string_view, 3> kSlopeClasses{"gentle", "moderate", "steep"};
constexpr std::array<std::string_view, 5> kDayKinds{"measured_true", "measured_not", "between_true",
                                                    "unmeasured", "closed"};
constexpr std::array<std::string_view, 4> kDefinitions{"at_standard", "two_running", "lasting",
                                                       "own_level"};
constexpr std::array<std::string_view, 4> kCensorings{"none", "record_ends", "next_work",
                                                      "not_asked"};
constexpr std::array<std::string_view, 4> kTrends{"unknown", "better", "steady", "worse"};

} // namespace

std::string_view word(green::Grass value) {
  return pick(kGrasses, value);
}
std::string_view word(speed::SlopeClass value) {
  return pick(kSlopeClasses, value);
}
std::string_view word(recovery::DayKind value) {
  return pick(kDayKinds, value);
}
std::string_view word(recovery::Definition value) {
  return pick(kDefinitions, value);
}
std::string_view word(recovery::Censoring value) {
  return pick(kCensorings, value);
}
std::string_view word(services::Trend value) {
  return pick(kTrends, value);
}

} // namespace baize::answers
