#include "answers.h"
#include "lengths.h"

namespace baize::wasm {

Answer parse_length(const Read& takes) {
  Reader reader(takes);
  const std::string text = reader.need_text("text");
  reader.need_text("unit");
  const LengthStyle style = read_length_style(reader);
  if (reader.problem()) {
    return reader.refusal();
  }
  auto length = units::parse_length(text, style.unit, style.decimal);
  if (!length) {
    length.error().field = "text";
    length.error().value = shown(Read(length.error().value));
    return units::Refusal(length.error());
  }
  Json gives = Json::object();
  gives["metres"] = length->metres;
  return gives;
}

} // namespace baize::wasm
