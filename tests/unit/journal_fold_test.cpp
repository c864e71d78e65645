// What several entries say together, by pencil.
#include "unit/journal_samples.h"

#include <gtest/gtest.h>

namespace {

using namespace journal_test;
using journal::fold;

const journal::Field* field(const journal::Folded& folded, Kind kind, const std::string& thing,
                            const std::string& name) {
  const journal::Thing* found = folded.find(kind, thing);
  if (found == nullptr) {
    return nullptr;
  }
  for (const auto& one : found->fields) {
    if (one.name == name) {
      return &one;
    }
  }
  return nullptr;
}

TEST(JournalFold, OnePhoneWritesOneEntry) {
  const auto folded = fold({roll(1, roll_fields())});
  const auto* roll = folded.find(Kind::roll, kRoll);
  ASSERT_NE(roll, nullptr);
  EXPECT_EQ(*roll->find("score")->number(), 8);
  EXPECT_EQ(*roll->find("visit")->text(), kVisit);
  EXPECT_EQ(roll->heads, std::vector{id(1)});
  EXPECT_FALSE(roll->removed());
  EXPECT_TRUE(conflicts(folded).empty());
}

TEST(JournalFold, ACorrectionReplacesOnlyWhatItSets) {
  const auto folded = fold({roll(1, roll_fields()), roll(2, {{"score", number(7)}}, {1})});
  const auto* roll = folded.find(Kind::roll, kRoll);
  EXPECT_EQ(*roll->find("score")->number(), 7);
  EXPECT_EQ(*roll->find("distance")->number(), 3.05);
  EXPECT_EQ(roll->heads, std::vector{id(2)});
  EXPECT_TRUE(conflicts(folded).empty());
}

TEST(JournalFold, ACorrectionWinsThoughItsIdIsSmaller) {
  // A phone whose clock runs behind makes smaller ids; `over` decides, not time.
  const auto folded = fold({roll(5, roll_fields()), roll(2, {{"score", number(7)}}, {5})});
  EXPECT_EQ(*folded.find(Kind::roll, kRoll)->find("score")->number(), 7);
  EXPECT_TRUE(conflicts(folded).empty());
}

TEST(JournalFold, CorrectionsOfOneFieldGoOverThoseOfAnother) {
  // 3 was written over 2, which sets another field; it still supersedes 1.
  const auto folded =
      fold({roll(1, {{"score", number(9)}}), roll(2, {{"distance", number(3)}}, {1}),
            roll(3, {{"score", number(6)}}, {2})});
  EXPECT_EQ(*folded.find(Kind::roll, kRoll)->find("score")->number(), 6);
  EXPECT_TRUE(conflicts(folded).empty());
}

TEST(JournalFold, TwoPhonesWithDifferentFieldsDoNotConflict) {
  const auto folded = fold({visit(1, visit_fields()), visit(2, {{"dew", text("light")}}, {1}),
                            visit(3, {{"wind", text("calm")}}, {1})});
  const auto* visit = folded.find(Kind::visit, kVisit);
  EXPECT_EQ(*visit->find("dew")->text(), "light");
  EXPECT_EQ(*visit->find("wind")->text(), "calm");
  EXPECT_EQ(visit->heads, (std::vector{id(2), id(3)}));
  EXPECT_EQ(visit->conflicts(), 0);
}

TEST(JournalFold, TwoPhonesWithDifferentValuesConflict) {
  const auto folded = fold({roll(1, roll_fields()), roll(2, {{"score", number(6)}}, {1}),
                            roll(3, {{"score", number(7)}}, {1})});
  const auto found = conflicts(folded);
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].field, "score");
  EXPECT_EQ(found[0].thing, kRoll);
  ASSERT_EQ(found[0].values.size(), 2U);
  EXPECT_EQ(*found[0].values[0].value.number(), 6);
  EXPECT_EQ(*found[0].values[1].value.number(), 7);
  // Until a person has chosen, the greatest id is used.
  EXPECT_EQ(*folded.find(Kind::roll, kRoll)->find("score")->number(), 7);
}

TEST(JournalFold, TwoPhonesWithTheSameValueAgree) {
  const auto folded = fold({roll(1, roll_fields()), roll(2, {{"score", number(6)}}, {1}),
                            roll(3, {{"score", number(6)}}, {1})});
  EXPECT_TRUE(conflicts(folded).empty());
  EXPECT_EQ(field(folded, Kind::roll, kRoll, "score")->standing.size(), 2U);
}

TEST(JournalFold, AnEntryOverBothSolvesTheConflict) {
  const auto folded =
      fold({roll(1, roll_fields()), roll(2, {{"score", number(6)}}, {1}),
            roll(3, {{"score", number(7)}}, {1}), roll(4, {{"score", number(6)}}, {2, 3})});
  EXPECT_TRUE(conflicts(folded).empty());
  EXPECT_EQ(*folded.find(Kind::roll, kRoll)->find("score")->number(), 6);
}

TEST(JournalFold, AnEntryOverOneOfThemDoesNot) {
  const auto folded =
      fold({roll(1, roll_fields()), roll(2, {{"score", number(6)}}, {1}),
            roll(3, {{"score", number(7)}}, {1}), roll(4, {{"score", number(5)}}, {2})});
  const auto found = conflicts(folded);
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].values[0].entry, id(3));
  EXPECT_EQ(found[0].values[1].entry, id(4));
}

TEST(JournalFold, TakenBackIsNotMeasured) {
  const auto folded = fold({roll(1, roll_fields()), roll(2, {{"distance", nothing()}}, {1})});
  EXPECT_EQ(folded.find(Kind::roll, kRoll)->find("distance"), nullptr);
  EXPECT_TRUE(conflicts(folded).empty());
}

TEST(JournalFold, TakenBackAgainstCorrectedIsAConflict) {
  const auto folded = fold({roll(1, roll_fields()), roll(2, {{"distance", nothing()}}, {1}),
                            roll(3, {{"distance", number(3.1)}}, {1})});
  EXPECT_EQ(conflicts(folded).size(), 1U);
}

TEST(JournalFold, RemovedAndBroughtBack) {
  std::vector<Entry> entries{roll(1, roll_fields()), roll(2, {{"removed", flag(true)}}, {1})};
  EXPECT_TRUE(fold(entries).find(Kind::roll, kRoll)->removed());
  entries.push_back(roll(3, {{"removed", flag(false)}}, {2}));
  EXPECT_FALSE(fold(entries).find(Kind::roll, kRoll)->removed());
  EXPECT_EQ(*fold(entries).find(Kind::roll, kRoll)->find("score")->number(), 8);
}

TEST(JournalFold, WhatHasNotArrivedIsNamed) {
  const auto folded = fold({roll(3, {{"score", number(6)}}, {2}), roll(1, roll_fields())});
  EXPECT_EQ(folded.find(Kind::roll, kRoll)->missing, std::vector{id(2)});
  // Without 2, nothing says that 3 was written over 1.
  EXPECT_EQ(conflicts(folded).size(), 1U);
  const auto whole = fold({roll(3, {{"score", number(6)}}, {2}), roll(1, roll_fields()),
                           roll(2, {{"distance", number(3)}}, {1})});
  EXPECT_TRUE(conflicts(whole).empty());
}

TEST(JournalFold, ACircleDecidesNothing) {
  const auto folded =
      fold({roll(1, {{"score", number(6)}}, {2}), roll(2, {{"score", number(7)}}, {1})});
  EXPECT_EQ(conflicts(folded).size(), 1U);
  const auto above =
      fold({roll(1, {{"score", number(6)}}, {2}), roll(2, {{"score", number(7)}}, {1}),
            roll(3, {{"score", number(5)}}, {1})});
  EXPECT_TRUE(conflicts(above).empty());
  EXPECT_EQ(*above.find(Kind::roll, kRoll)->find("score")->number(), 5);
}

TEST(JournalFold, AChainOfAThousandCorrectionsIsFolded) {
  constexpr int kMany = 1000;
  std::vector<Entry> entries{roll(1, {{"score", number(1)}})};
  for (int i = 2; i <= kMany; ++i) {
    entries.push_back(roll(i, {{"score", number(i)}}, {i - 1}));
  }
  EXPECT_EQ(*fold(entries).find(Kind::roll, kRoll)->find("score")->number(), kMany);
}

TEST(JournalFold, EntriesOfAnotherThingSupersedeNothing) {
  const auto folded =
      fold({roll(1, roll_fields()), entry(2, Kind::roll, id(900012), {{"score", number(5)}}, {1})});
  EXPECT_EQ(*folded.find(Kind::roll, kRoll)->find("score")->number(), 8);
  EXPECT_EQ(folded.find(Kind::roll, id(900012))->missing, std::vector{id(1)});
}

} // namespace
