#pragma once

#include "lengths.h"

#include <optional>

namespace baize::wasm {

/// A green speed, for comparing: its error may not be known.
struct Reading {
  double metres = 0;
  std::optional<double> error;
};

/// {real, metres, sentence}: this reading against the last one there.
Json change_json(const std::optional<Reading>& last, const std::optional<Reading>& now,
                 const LengthStyle& style);

} // namespace baize::wasm
