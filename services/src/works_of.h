#pragma once

#include "baize/services/work_review.h"

#include <string>
#include <unordered_map>

namespace baize::services {

/// What a work cost at one green (or half), with the green's share of the
/// records it rests on. Both live as long as what they point to.
struct LossHere {
  const green::Records* share = nullptr;
  const recovery::WorkLoss* loss = nullptr;
};

/// Review of one work from its losses in walking order.
WorkReview review_of(const green::Work& work, const std::string& club,
                     const std::vector<LossHere>& losses, units::Day today);

/// "On 16 greens the score fell by 2.4 points on average ..." in plain words.
std::string work_sentence(const green::Work& work, const std::vector<LossHere>& losses,
                          units::Day today);

/// The losses of all greens, to be looked up by work.
class LossBook {
 public:
  /// Keeps pointers into `shares`.
  LossBook(const std::vector<green::Records>& shares, const climate::Weather& weather,
           units::Day today);
  const std::vector<LossHere>& of(const std::string& work) const;

 private:
  std::vector<std::vector<recovery::WorkLoss>> losses_; ///< by share
  std::unordered_map<std::string, std::vector<LossHere>> by_work_;
};

} // namespace baize::services
