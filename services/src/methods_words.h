#pragma once

#include "baize/services/methods_review.h"

namespace baize::services {

/// "Coring: median 21 days (14 to 31); 5 works, 62 greens looked at."
std::string method_sentence(const compare::MethodFigures& method);
/// "Needle tining was back about 6 days earlier than coring (2 to 10); 5 works against 4."
std::string pair_sentence(const compare::PairFigures& pair, const compare::MethodFigures& first,
                          const compare::MethodFigures& second, double days_wanted);
std::string caution(compare::Evidence evidence);
/// The surest difference, else the pair nearest to one, else why there is none.
std::string headline(const MethodsReview& review);
std::vector<std::string> methods_notes(const MethodsReview& review,
                                       const compare::Gathered& gathered);

} // namespace baize::services
