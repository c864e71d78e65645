#include "answers.h"
#include "baize/units/number.h"
#include "lengths.h"

namespace baize::wasm {

namespace {
constexpr double kLongest = 1000; // metres; no distance on a green
} // namespace

Answer show_length(const Read& takes) {
  Reader reader(takes);
  const double metres = reader.need_number("metres");
  reader.need_text("unit");
  const LengthStyle style = read_length_style(reader);
  if (reader.problem()) {
    return reader.refusal();
  }
  if (!(std::fabs(metres) <= kLongest)) {
    return units::refuse("length_out_of_range", "metres", units::write_number(metres),
                         "a length from -1000 to 1000 m");
  }
  Json gives = Json::object();
  gives["text"] = units::show(units::from_metres(metres), style.unit, style.decimal);
  return gives;
}

} // namespace baize::wasm
