#pragma once

#include "baize/services/observers_review.h"

#include <map>

namespace baize::services {

using Names = std::map<std::string, std::string>; ///< observers' names by id

/// The id where the club gave no name.
const std::string& name_of(const Names& names, const std::string& id);
/// "R. Okesley scores 0.2 lower than the others (0.1 to 0.3 lower); 48 shared rolls."
std::string lean_sentence(const ObserverLine& line, const Names& names);
/// "Between A and B most differences lie from 1.2 lower to 1.0 higher; 48 shared rolls."
std::string pair_sentence(const observers::PairAgreement& pair, const Names& names);
std::string nearby_sentence(const observers::NearbyPair& pair, const Names& names, int days);
/// The lean that is surest to be one, else what is to be done.
std::string headline(const ObserversReview& review);

} // namespace baize::services
