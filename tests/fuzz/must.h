#pragma once

#include <cstdlib>

/// What a fuzz target holds to be so whatever the bytes; where it is not, the
/// fuzzer sees the program end.
inline void must(bool holds) {
  if (!holds) {
    std::abort();
  }
}
