#pragma once

#include "session.h"

namespace baize::cli {

/// Prints the season model of one green's year: a sentence, works and observers;
/// with --csv its days, with --json all of it.
void tell_season_model(Session& session, const OpenClub& club, const std::string& green, int year);
/// Prints how far the club's model may be trusted.
void tell_season_checks(Session& session, const OpenClub& club);

} // namespace baize::cli
