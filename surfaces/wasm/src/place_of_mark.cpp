#include "answers.h"
#include "baize/speed/place.h"
#include "reader.h"

namespace baize::wasm {

Answer place_of_mark(const Read& takes) {
  Reader reader(takes);
  const double seconds = reader.need_number("seconds");
  const double distance = reader.need_number("distance");
  if (reader.problem()) {
    return reader.refusal();
  }
  const auto place = speed::place_of_mark(seconds, distance);
  if (!place) {
    return units::Refusal(place.error());
  }
  Json gives = Json::object();
  gives["metres"] = place->own_hop ? Json() : Json(place->metres);
  gives["error"] = place->own_hop ? Json() : Json(place->standard_error_m);
  return gives;
}

} // namespace baize::wasm
