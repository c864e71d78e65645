#pragma once

#include "baize/journal/records.h"
#include "baize/services/hand_in.h"

#include <set>
#include <string>
#include <vector>

namespace baize::services {

/// Decides what of a club's entries becomes a record, and remembers why what
/// does not does not.
class Outcomes {
 public:
  Outcomes(std::string club, units::Day last_day) : club_(std::move(club)), last_day_(last_day) {}

  Decision decide(const Around& around);
  /// The outcomes, with remarks on rolls among `touched` whose visit is not here.
  void tell(const std::set<std::string>& touched, HandInReceipt& receipt);

 private:
  template <class Record>
  ThingOutcome begin(journal::Kind kind, const journal::Made<Record>& made) const;
  void decide_visit(const Around& around, const journal::MadeVisit& made);
  template <class Record>
  void decide_single(const Around& around, journal::Kind kind, const journal::Made<Record>& made,
                     std::vector<Record> green::Records::* list, std::vector<std::string>& out);
  /// The ground with visits that stand beside this one.
  green::Records beside(const Around& around, const green::Visit& visit) const;
  void settle(ThingOutcome outcome);

  std::string club_;
  units::Day last_day_;
  Decision decision_;
  std::set<std::string> ours_;     ///< visits that are being decided
  std::set<std::string> pictured_; ///< visits with photos
  std::vector<ThingOutcome> visits_;
  std::vector<ThingOutcome> others_;
  std::vector<units::Problem> astray_;
};

} // namespace baize::services
