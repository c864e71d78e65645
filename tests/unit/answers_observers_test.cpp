// The comparison of observers as JSON, against surfaces/api/openapi.yaml.
#include "api_contract.h"
#include "baize/answers/observers_review.h"
#include "unit/observers_samples.h"

#include <gtest/gtest.h>

namespace {

using namespace observers_test;

std::string faults(const services::ObserversReview& review) {
  return contract::faults("ObserversReview", answers::text(answers::to_json(review)));
}

TEST(ObserversAnswer, MeetsItsSchemaWithAllAndWithNothing) {
  EXPECT_EQ(faults({}), "");
  EXPECT_EQ(faults(services::observers_review(club({}), kToday)), "");
  const auto review = services::observers_review(three_sessions(), kToday);
  EXPECT_EQ(faults(review), "");
  const auto json = answers::to_json(review);
  EXPECT_EQ(json["pairs"][0]["bias"]["value"], -1);
  EXPECT_TRUE(json["observers"][0].contains("correction"));
}

// Nobody knows limits or coefficients where all scores are equal: no field, no zero.
TEST(ObserversAnswer, LeavesOutWhatIsNotKnown) {
  auto records = three_sessions();
  for (auto& one : records.visits) {
    for (auto& roll : one.runs[0].rolls) {
      roll.score = 8;
    }
  }
  const auto review = services::observers_review(records, kToday);
  EXPECT_EQ(faults(review), "");
  const auto pair = answers::to_json(review)["pairs"][0];
  EXPECT_EQ(pair["equal_share"], 1);
  for (const char* field : {"lower_limit", "kappa_quadratic", "icc", "concordance", "needed"}) {
    EXPECT_FALSE(pair.contains(field)) << field;
  }
}

} // namespace
