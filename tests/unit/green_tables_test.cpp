// A malformed table is refused with its file and line, so that no build holds one.
#include "tables.h"

#include <gtest/gtest.h>

#include <fstream>
#include <functional>
#include <sstream>

namespace {

using namespace baize::data;

std::string real(const std::string& name) {
  std::ifstream in(std::string(BAIZE_SOURCE_DIR "/data/") + name);
  std::ostringstream out;
  out << in.rdbuf();
  return out.str();
}

const std::string kKindColumns =
    "row\tname\ttitle\tclass\ttype\tunit\tlowest\thighest\twords\tleading\tmeaning\n";
const std::string kKind = "kind\tcoring\tCoring\tdisruptive\t-\t-\t-\t-\t-\t-\tcores out\n";
const std::string kTine = "parameter\ttine\tTine\t-\tnumber\tmm\t3\t40\t-\tleading\tof the tine\n";

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  return at == std::string::npos ? text : text.replace(at, from.size(), to);
}

std::string refusal(const std::function<std::string(const std::string&)>& make,
                    const std::string& text) {
  try {
    make(text);
  } catch (const TableError& error) {
    return error.what();
  }
  return "taken";
}

TEST(Tables, TheRealOnesAreTaken) {
  EXPECT_NE(work_kinds_source(real("work_kinds.tsv")).find("coring"), std::string::npos);
  EXPECT_NE(measured_fields_source(real("measured_fields.tsv")).find("firmness"),
            std::string::npos);
  EXPECT_NE(roll_score_source(real("roll_score.tsv")).find("std::nullopt"), std::string::npos);
}

TEST(Tables, KindsThatAreMalformed) {
  const std::string good = kKindColumns + kKind + kTine;
  ASSERT_EQ(refusal(work_kinds_source, good), "taken");
  const struct {
    std::string text;
    const char* says;
  } cases[] = {
      {"", "holds no line"},
      {kKindColumns, "holds no line"},
      {replaced(good, "title", "name"), "line 1: the columns"},
      {kKindColumns + kTine, "line 2: a parameter stands above every kind"},
      {good + kKind, "line 4: coring stands twice"},
      {good + kTine, "line 4: tine stands twice"},
      {good + replaced(kTine, "tine", "depth"), "line 4: coring has a leading parameter"},
      {replaced(good, "disruptive", "harmful"), "line 2: class is 'harmful'"},
      {replaced(good, "coring", "Core-ing"), "line 2: name is 'Core-ing'"},
      {replaced(good, "number", "length"), "line 3: type is 'length'"},
      {replaced(good, "\t3\t", "\tthree\t"), "line 3: lowest is 'three'"},
      {replaced(good, "\t3\t", "\t3x\t"), "line 3: lowest is '3x'"},
      {replaced(good, "\t3\t", "\tnan\t"), "line 3: lowest is 'nan'"},
      {replaced(good, "\t40\t", "\t3\t"), "line 3: highest is '3'"},
      {replaced(good, "\t40\t-\t", "\t40\ta|b\t"), "line 3: words is 'a|b'"},
      {replaced(good, "cores out", ""), "line 2: meaning is empty"},
      {replaced(good, "cores out", "cores out "), "line 2: meaning starts or ends"},
      {replaced(good, "cores out", "cores\tout"), "line 2: 12 cells"},
  };
  for (const auto& one : cases) {
    EXPECT_NE(refusal(work_kinds_source, one.text).find(one.says), std::string::npos)
        << refusal(work_kinds_source, one.text);
  }
}

TEST(Tables, FieldsThatAreMalformed) {
  const std::string good =
      "record\tname\ttitle\ttype\tunit\tlowest\thighest\twords\tkind\tsource\ttrust\n"
      "visit\tdew\tDew\tword\t-\t-\t-\tnone|light\tjudged\teye\tcoarse\n"
      "reading_kind\troot_depth\tRoots\tnumber\tmm\t>0\t600\t-\tmeasured\truler\t10 mm\n";
  ASSERT_EQ(refusal(measured_fields_source, good), "taken");
  const struct {
    std::string text;
    const char* says;
  } cases[] = {
      {replaced(good, "visit", "green"), "line 2: record is 'green'"},
      {replaced(good, "none|light", "none"), "line 2: words is 'none'"},
      {replaced(good, "none|light", "none|none"), "line 2: words is 'none|none'"},
      {replaced(good, "word\t-", "word\tmm"), "line 2: unit is 'mm'"},
      {replaced(good, "judged", "guessed"), "line 2: kind is 'guessed'"},
      {replaced(replaced(good, "number", "whole"), "600", "600.5"), "line 3: highest is '600.5'"},
      {replaced(good, ">0", ">600"), "line 3: highest is '600'"},
      {good + "visit\twind\tWind\tword\t-\t-\t-\tcalm|strong\tjudged\teye\tcoarse\n",
       "line 4: kinds of reading stand last"},
  };
  for (const auto& one : cases) {
    EXPECT_NE(refusal(measured_fields_source, one.text).find(one.says), std::string::npos)
        << refusal(measured_fields_source, one.text);
  }
}

TEST(Tables, ARollScoreRuleWithAGapOrAnOverlap) {
  const std::string good = real("roll_score.tsv");
  ASSERT_EQ(refusal(roll_score_source, good), "taken");
  const struct {
    std::string text;
    const char* says;
  } cases[] = {
      {replaced(good, "0\t0\t2\t2\t7\t6\t7\n", ""), "0 bobbles and 2 others are met by 0 lines"},
      {replaced(good, "0\t0\t3\t*", "0\t0\t2\t*"), "0 bobbles and 2 others are met by 2 lines"},
      {replaced(good, "2\t*\t0", "2\t7\t0"), "8 bobbles and 0 others are met by 0 lines"},
      {replaced(good, "\t9\t9\t10", "\t8\t9\t10"), "the score offered must lie in a band"},
      {replaced(good, "\t9\t9\t10", "\t9\t9\t11"), "the score offered must lie in a band"},
      {replaced(good, "\t9\t9\t10", "\t9.5\t9\t10"), "offered is '9.5'"},
  };
  for (const auto& one : cases) {
    EXPECT_NE(refusal(roll_score_source, one.text).find(one.says), std::string::npos)
        << refusal(roll_score_source, one.text);
  }
}

} // namespace
