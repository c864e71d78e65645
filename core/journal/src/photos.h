#pragma once

#include "baize/journal/records.h"

namespace baize::journal {

/// The photos among the things. `made` holds the visits and works already.
void add_photos(const Folded& folded, MadeRecords& made);

} // namespace baize::journal
