#include "season_of.h"
#include "works_of.h"

namespace baize::services {

LossBook::LossBook(const std::vector<green::Records>& shares, const climate::Weather& weather,
                   units::Day today) {
  losses_.reserve(shares.size());
  for (const green::Records& share : shares) {
    losses_.push_back(losses_of(share, weather, today));
    for (const recovery::WorkLoss& loss : losses_.back()) {
      by_work_[loss.work].push_back({&share, &loss});
    }
  }
}

const std::vector<LossHere>& LossBook::of(const std::string& work) const {
  static const std::vector<LossHere> kNone;
  const auto found = by_work_.find(work);
  return found == by_work_.end() ? kNone : found->second;
}

} // namespace baize::services
