// Each enumeration's words are those that the OpenAPI file lists, in its order.
#include "api_contract.h"
#include "baize/answers/words.h"

#include <gtest/gtest.h>

namespace {

using namespace baize;

template <class E> void same_words(const std::string& schema) {
  const auto& listed = contract::openapi()["components"]["schemas"][schema]["enum"];
  ASSERT_GE(listed.size(), 2U) << schema;
  for (std::size_t i = 0; i < listed.size(); ++i) {
    EXPECT_EQ(answers::word(static_cast<E>(i)), listed[i].get<std::string>()) << schema;
  }
  EXPECT_EQ(answers::word(static_cast<E>(listed.size())), "") << schema << " has one more";
}

TEST(Words, AreThoseOfTheContract) {
  same_words<green::MarkKind>("MarkKind");
  same_words<green::Direction>("Direction");
  same_words<green::WorkClass>("WorkClass");
  same_words<speed::SlopeClass>("SlopeClass");
  same_words<recovery::DayKind>("DayKind");
  same_words<recovery::Definition>("Definition");
  same_words<recovery::Censoring>("Censoring");
  same_words<services::Trend>("Trend");
}

TEST(Words, StandForTheirValues) {
  EXPECT_EQ(answers::word(green::MarkKind::snake), "snake");
  EXPECT_EQ(answers::word(green::Direction::back), "back");
  EXPECT_EQ(answers::word(green::WorkClass::closing), "closing");
  EXPECT_EQ(answers::word(green::Grass::warm), "warm");
  EXPECT_EQ(answers::word(speed::SlopeClass::steep), "steep");
  EXPECT_EQ(answers::word(recovery::DayKind::between_true), "between_true");
  EXPECT_EQ(answers::word(recovery::Definition::own_level), "own_level");
  EXPECT_EQ(answers::word(recovery::Censoring::next_work), "next_work");
  EXPECT_EQ(answers::word(services::Trend::worse), "worse");
}

} // namespace
