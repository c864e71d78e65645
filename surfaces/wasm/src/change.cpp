#include "change.h"

#include "baize/speed/green_speed.h"

namespace baize::wasm {

namespace {

speed::VisitSpeed as_speed(const Reading& reading) {
  speed::VisitSpeed speed;
  speed.speed_m = reading.metres;
  speed.standard_error_m = reading.error.value_or(0);
  return speed;
}

std::string shown_length(double metres, const LengthStyle& style) {
  return units::show(units::from_metres(metres), style.unit, style.decimal);
}

/// "0.12 m faster than the last reading (3.11 m)"
std::string difference(double metres, const Reading& last, const LengthStyle& style) {
  const std::string by = shown_length(std::fabs(metres), style);
  const std::string then = " the last reading (" + shown_length(last.metres, style) + ")";
  if (by == shown_length(0, style)) {
    return "The same as" + then;
  }
  return by + (metres > 0 ? " faster than" : " slower than") + then;
}

Json told(Json real, Json metres, std::string sentence) {
  Json json = Json::object();
  json["real"] = std::move(real);
  json["metres"] = std::move(metres);
  json["sentence"] = std::move(sentence);
  return json;
}

} // namespace

Json change_json(const std::optional<Reading>& last, const std::optional<Reading>& now,
                 const LengthStyle& style) {
  if (!now) {
    return told({}, {}, "No distance was measured.");
  }
  if (!last) {
    return told({}, {}, "No earlier reading to compare with.");
  }
  const speed::Change change = speed::change(as_speed(*last), as_speed(*now));
  const std::string text = difference(change.difference_m, *last, style);
  if (!last->error || !now->error) {
    return told({}, change.difference_m,
                text + "; its error is not known, so whether this is a real change is not either.");
  }
  return told(change.real, change.difference_m,
              text + (change.real ? ": a real change." : ": cannot be told apart."));
}

} // namespace baize::wasm
