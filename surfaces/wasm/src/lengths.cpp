#include "lengths.h"

namespace baize::wasm {

LengthStyle read_length_style(Reader& reader) {
  LengthStyle style;
  if (const auto unit = reader.word("unit", {"ft_in", "ft", "cm", "m"})) {
    style.unit = units::parse_length_unit(*unit).value_or(style.unit);
  }
  if (const auto decimal = reader.word("decimal", {".", ","})) {
    style.decimal = decimal->front();
  }
  return style;
}

} // namespace baize::wasm
