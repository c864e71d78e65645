#include "baize/green/kinds.h"

#include <gtest/gtest.h>

#include <limits>

namespace {

using namespace baize::green;

TEST(Kinds, CoringIsAsTheTableSays) {
  const WorkKind* coring = find_work_kind("coring");
  ASSERT_NE(coring, nullptr);
  EXPECT_EQ(coring->work_class, WorkClass::disruptive);
  const ParameterKind* tine = find_parameter(*coring, "tine_diameter");
  ASSERT_NE(tine, nullptr);
  EXPECT_EQ(tine->rule.unit, "mm");
  EXPECT_EQ(leading_parameter(*coring), tine);
  EXPECT_EQ(find_parameter(*coring, "blade_spacing"), nullptr);
  EXPECT_EQ(find_work_kind("Coring"), nullptr);
}

TEST(Kinds, OneIsEnoughToBeFound) {
  for (const WorkKind& kind : work_kinds()) {
    EXPECT_EQ(find_work_kind(kind.name), &kind);
    EXPECT_FALSE(kind.title.empty()) << kind.name;
    EXPECT_FALSE(kind.meaning.empty()) << kind.name;
  }
  for (const MeasuredField& field : measured_fields()) {
    EXPECT_EQ(find_field(field.record, field.name), &field);
    EXPECT_FALSE(field.source.empty()) << field.name;
    EXPECT_FALSE(field.trust.empty()) << field.name;
  }
}

TEST(Kinds, OnlyAFewLabelsHaveNoLeadingParameter) {
  for (const WorkKind& kind : work_kinds()) {
    if (kind.work_class == WorkClass::disruptive) {
      EXPECT_NE(leading_parameter(kind), nullptr) << kind.name;
    }
  }
}

TEST(Kinds, ReadingKindsAreTheirPartOfTheFields) {
  const auto expected =
      std::count_if(measured_fields().begin(), measured_fields().end(),
                    [](const MeasuredField& field) { return field.record == "reading_kind"; });
  EXPECT_EQ(static_cast<std::ptrdiff_t>(reading_kinds().size()), expected);
  EXPECT_EQ(reading_kinds().front().record, "reading_kind");
  EXPECT_NE(find_reading_kind("firmness"), nullptr);
  EXPECT_EQ(find_reading_kind("distance"), nullptr) << "a roll's field is no kind of reading";
}

TEST(ValueRule, Numbers) {
  const ValueRule& distance = find_field("roll", "distance")->rule;
  EXPECT_FALSE(distance.takes(0.0));
  EXPECT_TRUE(distance.takes(0.01));
  EXPECT_TRUE(distance.takes(30.0));
  EXPECT_FALSE(distance.takes(30.01));
  EXPECT_FALSE(distance.takes(std::numeric_limits<double>::quiet_NaN()));
  EXPECT_FALSE(distance.takes("3"));
  EXPECT_EQ(distance.clause(), "a number above 0 and up to 30 m");
}

TEST(ValueRule, WholeNumbers) {
  const ValueRule& score = find_field("roll", "score")->rule;
  EXPECT_TRUE(score.takes(7.0));
  EXPECT_FALSE(score.takes(7.5));
  EXPECT_EQ(score.clause(), "a whole number from 1 to 10");
}

TEST(ValueRule, Words) {
  const ValueRule& dew = find_field("visit", "dew")->rule;
  EXPECT_TRUE(dew.takes("heavy"));
  EXPECT_FALSE(dew.takes("Heavy"));
  EXPECT_FALSE(dew.takes(1.0));
  EXPECT_EQ(dew.clause(), "one of none, light, heavy");
  const ValueRule& free = find_parameter(*find_work_kind("wetting_agent"), "substance")->rule;
  EXPECT_TRUE(free.takes("block copolymer"));
  EXPECT_FALSE(free.takes(""));
}

} // namespace
