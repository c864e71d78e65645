#pragma once

#include "baize/green/club.h"

#include <rapidcheck.h>

/// Random clubs for the laws: valid in every rule, with everything optional now
/// there and now not. Days lie before 2026-01-01.
namespace laws {

/// The day that the generated records are valid on.
baize::units::Day today();

/// A club with two to four greens, some split in halves, and up to a dozen
/// visits, works and readings. Vectors are in the order in which files give
/// them back: visits by day, time and id; marks by kind, timed ones first.
rc::Gen<baize::green::Records> records();

/// Words with what trips readers of files: quotes, delimiters, line ends,
/// umlauts, spaces at the ends. May be empty.
rc::Gen<std::string> words();

/// Sources left out: where a record came from is no part of what it says.
baize::green::Records without_sources(baize::green::Records records);

} // namespace laws
