#pragma once

#include "gather.h"

namespace baize::sheets {

/// Rules between and within the records, each sentence put to the row and
/// column it speaks of. Records with a row that could not be read are left
/// out, and so is what only follows from a file with problems.
void check(Gathered& all, units::Day today);

/// Things to look at, likewise placed; of visits without a problem only.
void remark(Gathered& all);

} // namespace baize::sheets
