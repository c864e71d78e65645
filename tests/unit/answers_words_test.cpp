// Each enumeration's words are those that the OpenAPI file lists, in its order.
#include "api_contract.h"
#include "baize/answers/words.h"
#include "baize/green/kinds.h"

#include <gtest/gtest.h>

namespace {

using namespace baize;

using answers::word; // beside those that the values bring along

template <class E> void same_words(const std::string& schema) {
  const auto& listed = contract::openapi()["components"]["schemas"][schema]["enum"];
  ASSERT_GE(listed.size(), 2U) << schema;
  for (std::size_t i = 0; i < listed.size(); ++i) {
    EXPECT_EQ(word(static_cast<E>(i)), listed[i].get<std::string>()) << schema;
  }
  EXPECT_EQ(word(static_cast<E>(listed.size())), "") << schema << " has one more";
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
  EXPECT_EQ(word(green::MarkKind::snake), "snake");
  EXPECT_EQ(word(green::Direction::back), "back");
  EXPECT_EQ(word(green::WorkClass::closing), "closing");
  EXPECT_EQ(word(green::ValueType::whole), "whole");
  EXPECT_EQ(word(green::Grass::warm), "warm");
  EXPECT_EQ(word(speed::SlopeClass::steep), "steep");
  EXPECT_EQ(word(recovery::DayKind::between_true), "between_true");
  EXPECT_EQ(word(recovery::Definition::own_level), "own_level");
  EXPECT_EQ(word(recovery::Censoring::next_work), "next_work");
  EXPECT_EQ(word(services::Trend::worse), "worse");
}

} // namespace
