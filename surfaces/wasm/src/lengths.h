#pragma once

#include "baize/units/length.h"
#include "reader.h"

namespace baize::wasm {

/// How this reader wants lengths: fields "unit" and "decimal".
struct LengthStyle {
  units::LengthUnit unit = units::LengthUnit::metre;
  char decimal = '.';
};

/// Metres and '.' where they are not known.
LengthStyle read_length_style(Reader& reader);

} // namespace baize::wasm
