// The likelihood against one written down a second time, without any filter: the
// covariance of all runs of the club as one dense matrix.
#include "season_hand.h"

#include <Eigen/Dense>
#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <numbers>

namespace baize {
namespace {

using green::Direction;
using testing::HandRun;

const std::vector<HandRun> kRuns{
    {"7", 0, 420, "ann", "n1", Direction::out, {8, 9, 8}},
    {"7", 0, 420, "ann", "s1", Direction::back, {9, 9, 8}},
    {"7", 0, 930, "bob", "n1", Direction::out, {8, 8}},
    {"7", 3, 420, "bob", "n1", Direction::out, {6, 7, 5}},
    {"7", 3, 420, "bob", "s1", Direction::back, {8, 8, 9}},
    {"7", 3, 420, "bob", "main", Direction::out, {7, 8, 7}},
    {"7", 9, 700, "cat", "n1", Direction::back, {7, 7, 8}},
    {"7", 14, 420, "ann", "main", Direction::out, {7, 6, 6}},
    {"7", 14, 420, "ann", "s1", Direction::out, {6, 6, 7}},
    {"7", 21, 420, "cat", "main", Direction::out, {8, 8, 8, 9}},
    {"8", 1, 420, "ann", "main", Direction::out, {9, 9, 8}},
    {"8", 1, 420, "ann", "main", Direction::back, {8, 8, 8}},
    {"8", 6, 800, "bob", "main", Direction::out, {7, 9, 8}},
    {"8", 13, 420, "cat", "main", Direction::back, {6, 5, 6}},
    {"8", 13, 420, "cat", "n1", Direction::back, {6, 7, 6}},
    {"8", 17, 420, "ann", "main", Direction::out, {7, 7, 7}},
};

green::Records club() {
  green::Records records = testing::hand_records(kRuns);
  records.works = {
      testing::hand_work("coring", 2, "7", "north"), testing::hand_work("coring", 5, "7", "south"),
      testing::hand_work("coring", 12, "", ""), testing::hand_work("scarifying", 16, "7", "")};
  return records;
}

season::Options calendar() {
  season::Options options;
  options.clock = season::Clock::calendar_days;
  return options;
}

season::Parameters parameters() {
  season::Parameters made;
  made.level_walk = 0.07;
  made.visit_sd = 0.2;
  made.line_sd = 0.15;
  made.depth_spread = 0.3;
  made.rate = {0.12, 0.2};
  made.typical_depth = {1.5, 0.8};
  return made;
}

/// One loss as the test sees it: which green, half, day, method and rate.
struct DenseLoss {
  std::string green;
  std::string half;
  int day;
  int method;
};
const std::vector<DenseLoss> kLosses{{"7", "north", 2, 0},
                                     {"7", "south", 5, 0},
                                     {"7", "", 12, 0},
                                     {"8", "", 12, 0},
                                     {"7", "", 16, 1}};

double share(const DenseLoss& loss, const HandRun& run) {
  const std::string half = run.spot == "n1" ? "north" : run.spot == "s1" ? "south" : "";
  return loss.half.empty() || loss.half == half ? 1 : half.empty() ? 0.5 : 0;
}

double lost(const DenseLoss& loss, const HandRun& run, const season::Parameters& at) {
  if (loss.green != run.green || run.day < loss.day) {
    return 0;
  }
  return share(loss, run) *
         std::exp(-at.rate[static_cast<std::size_t>(loss.method)] * (run.day - loss.day));
}

double played(const HandRun& run) {
  return std::min(std::max(run.minute - 540, 0) / 480.0, 1.0);
}

/// Covariance of observers under a sum of 0: variance (I - 1/3).
double observers(const HandRun& a, const HandRun& b, double variance) {
  return variance * ((a.observer == b.observer ? 1 : 0) - 1.0 / 3);
}

double covariance(const HandRun& a, const HandRun& b, bool same, const season::Parameters& at,
                  double roll_sd) {
  const season::Priors priors;
  double sum = observers(a, b, priors.observer.sd * priors.observer.sd) +
               priors.play.sd * priors.play.sd * played(a) * played(b);
  for (std::size_t i = 0; i < kLosses.size(); ++i) {
    for (std::size_t j = 0; j < kLosses.size(); ++j) {
      if (kLosses[i].method == kLosses[j].method) {
        const double typical = at.typical_depth[static_cast<std::size_t>(kLosses[i].method)];
        const double own = i == j ? std::pow(at.depth_spread * typical, 2) : 0;
        sum += lost(kLosses[i], a, at) * lost(kLosses[j], b, at) *
               (priors.depth.sd * priors.depth.sd + own);
      }
    }
  }
  if (a.green == b.green) {
    const int first = a.green == "7" ? 0 : 1;
    sum += at.level_walk * at.level_walk * std::min(a.day - first, b.day - first);
    sum += a.spot == b.spot && a.direction == b.direction ? at.line_sd * at.line_sd : 0;
    sum += a.day == b.day && a.minute == b.minute ? at.visit_sd * at.visit_sd : 0;
  }
  return sum + (same ? roll_sd * roll_sd / static_cast<double>(a.scores.size()) : 0);
}

double dense(const season::Parameters& at, double roll_sd) {
  const season::Priors priors;
  const auto n = static_cast<Eigen::Index>(kRuns.size());
  Eigen::MatrixXd v(n, n);
  Eigen::VectorXd y(n);
  Eigen::MatrixXd starts = Eigen::MatrixXd::Zero(n, 2);
  for (Eigen::Index i = 0; i < n; ++i) {
    const HandRun& run = kRuns[static_cast<std::size_t>(i)];
    double sum = 0;
    for (const int score : run.scores) {
      sum += score;
    }
    y(i) = sum / static_cast<double>(run.scores.size()) - priors.play.mean * played(run);
    for (const DenseLoss& loss : kLosses) {
      y(i) += priors.depth.mean * lost(loss, run, at);
    }
    starts(i, run.green == "7" ? 0 : 1) = 1;
    for (Eigen::Index j = 0; j < n; ++j) {
      v(i, j) = covariance(run, kRuns[static_cast<std::size_t>(j)], i == j, at, roll_sd);
    }
  }
  const Eigen::MatrixXd inverse = v.inverse();
  const Eigen::MatrixXd information = starts.transpose() * inverse * starts;
  const Eigen::VectorXd start = information.inverse() * starts.transpose() * inverse * y;
  const Eigen::VectorXd left = y - starts * start;
  return -(std::log(v.determinant()) + std::log(information.determinant()) +
           left.dot(inverse * left) +
           (static_cast<double>(n) - 2) * std::log(2 * std::numbers::pi)) /
         2;
}

season::Model model_of(const green::Records& records) {
  return season::read_model(records, {}, testing::kHandFirst + 40, calendar());
}

TEST(SeasonEvaluate, IsTheDenseNormalLikelihood) {
  const season::Model model = model_of(club());
  ASSERT_TRUE(model.summary.usable) << model.summary.message;
  for (const double factor : {1.0, 0.3, 2.5}) {
    season::Parameters at = parameters();
    at.level_walk *= factor;
    at.rate[0] *= factor;
    at.line_sd /= factor;
    const auto posterior = season::evaluate(model, {}, at);
    ASSERT_TRUE(posterior.usable);
    EXPECT_NEAR(posterior.log_likelihood, dense(at, model.roll_sd), 1e-9) << factor;
  }
}

TEST(SeasonEvaluate, OrderOfTheRecordsChangesNoByte) {
  const season::Parameters at = parameters();
  green::Records mixed = club();
  std::reverse(mixed.visits.begin(), mixed.visits.end());
  std::reverse(mixed.works.begin(), mixed.works.end());
  const auto first = season::evaluate(model_of(club()), {}, at);
  const auto second = season::evaluate(model_of(mixed), {}, at);
  EXPECT_EQ(first.log_likelihood, second.log_likelihood);
  EXPECT_EQ(first.shared, second.shared);
}

TEST(SeasonEvaluate, AGreenThatSharesNothingOnlyAddsItsOwnLikelihood) {
  // Green 8 with an observer of its own, no work and no play: with fixed parameters
  // the other green's effects must stay as they are.
  std::vector<HandRun> alone;
  for (const HandRun& run : kRuns) {
    if (run.green == "7") {
      alone.push_back(run);
    }
  }
  for (int day = 30; day < 36; ++day) {
    alone.push_back({"7", day, 420, "bob", "main", Direction::out, {8, 8, 7 + day % 2}});
  }
  std::vector<HandRun> both = alone;
  for (int day = 1; day < 20; day += 4) {
    both.push_back({"8", day, 420, "ann", "main", Direction::out, {8, 8, 9 - day % 3}});
  }
  const auto works = {testing::hand_work("coring", 2, "7", "north"),
                      testing::hand_work("scarifying", 16, "7", "")};
  green::Records one = testing::hand_records(alone);
  green::Records two = testing::hand_records(both);
  one.works = works;
  two.works = works;
  season::Model first = model_of(one);
  season::Model second = model_of(two);
  ASSERT_TRUE(first.summary.usable && second.summary.usable);
  second.roll_sd = first.roll_sd;
  const auto a = season::evaluate(first, {}, parameters());
  const auto b = season::evaluate(second, {}, parameters());
  EXPECT_LT((a.shared - b.shared).cwiseAbs().maxCoeff(), 1e-12);
  EXPECT_LT((a.shared_covariance - b.shared_covariance).cwiseAbs().maxCoeff(), 1e-12);
}

TEST(SeasonEvaluate, ALossWithoutNoiseIsFoundExactly) {
  std::vector<double> values;
  for (int day = 0; day < 40; ++day) {
    values.push_back(8 - (day < 10 ? 0 : 2 * std::exp(-0.1 * (day - 10))));
  }
  season::Model model = testing::hand_model(values, 1e-4);
  testing::add_loss(model, 10);
  season::Parameters at;
  at.level_walk = 1e-6;
  at.visit_sd = 1e-4;
  at.rate = {0.1};
  at.typical_depth = {2};
  const auto posterior = season::evaluate(model, {}, at);
  ASSERT_TRUE(posterior.usable);
  const Eigen::VectorXd own =
      posterior.greens[0].base + posterior.greens[0].slope * posterior.shared;
  EXPECT_NEAR(own(0), 2, 1e-6);
  EXPECT_NEAR(own(1) + own(2), 8, 1e-6); // line and start together
  at.rate = {0.13};
  EXPECT_LT(season::evaluate(model, {}, at).log_likelihood, posterior.log_likelihood - 1000);
}

} // namespace
} // namespace baize
