#pragma once

#include "baize/journal/entry.h"
#include "reader.h"

namespace baize::wasm {

/// The entries of a list. A single one that cannot be read is refused for all:
/// on a phone it is a fault of the pages, not of the greens.
std::vector<journal::Entry> read_entries(Reader& reader, const char* field);

} // namespace baize::wasm
