#pragma once

#include "householder.h"

#include <cstddef>
#include <vector>

namespace baize::stats::detail {

/// The plots put into classes: those of one level of a treatment, or of one block.
struct Partition {
  std::vector<std::size_t> of; ///< class of each plot, 0 on
  std::vector<long double> size;
  std::size_t classes() const { return size.size(); }
};

/// Classes in ascending order of their level.
Partition partition(const std::vector<int>& level);
/// Plots together where they are together in both; in order of `a`, then of `b`.
Partition crossed(const Partition& a, const Partition& b);
/// The finest whose classes are unions of classes of both.
Partition joined(const Partition& a, const Partition& b);
/// Whether averaging over one and then over the other is averaging over `joined`:
/// within its classes the counts are proportional.
bool orthogonal(const Partition& a, const Partition& b);

/// Puts the mean of its class in the place of each value.
void average(const Partition& partition, Column& values);
/// Takes the mean of its class from each value.
void sweep(const Partition& partition, Column& values);

} // namespace baize::stats::detail
