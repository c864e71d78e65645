#pragma once

#include "baize/trials/design.h"

namespace baize::trials {

/// Three treatments in four blocks, each green one block.
inline Design three_by_four() {
  Design design;
  design.trial = "Spring tines";
  design.treatments = {"none", "solid", "coring"};
  design.control = "none";
  design.blocks = 4;
  design.greens = {"2", "5", "9", "14"};
  design.seed = 20250403;
  return design;
}

inline Design split_of(Layout layout) {
  Design design = three_by_four();
  design.layout = layout;
  design.seconds = {"bare", "sand"};
  return design;
}

} // namespace baize::trials
