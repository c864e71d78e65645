// The reader of comma-separated values against RFC 4180, section 2, rule by
// rule, and the places where Baize takes more or says no.
#include "baize/sheets/csv.h"

#include <gtest/gtest.h>

namespace {

using baize::sheets::CsvReader;
using baize::sheets::CsvRow;

using Table = std::vector<std::vector<std::string>>;

Table all_rows(std::string_view text, char delimiter = ',') {
  CsvReader reader(text, delimiter);
  CsvRow row;
  Table table;
  for (auto step = reader.next(row); step != CsvReader::Step::end; step = reader.next(row)) {
    EXPECT_EQ(step, CsvReader::Step::row) << sentence(reader.problem());
    auto& cells = table.emplace_back();
    for (const auto& cell : row.cells) {
      cells.emplace_back(cell.text);
    }
  }
  return table;
}

std::string first_problem(std::string_view text, int line) {
  CsvReader reader(text, ',');
  CsvRow row;
  for (auto step = reader.next(row); step != CsvReader::Step::end; step = reader.next(row)) {
    if (step == CsvReader::Step::problem) {
      EXPECT_EQ(reader.problem_line(), line);
      return reader.problem().code;
    }
  }
  return "none";
}

const Table kTwo{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}};

TEST(Csv, EachRecordOnALine) { // RFC 4180, 2.1, its own example
  EXPECT_EQ(all_rows("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"), kTwo);
  EXPECT_EQ(all_rows("aaa,bbb,ccc\nzzz,yyy,xxx\n"), kTwo);
}

TEST(Csv, LastLineMayLackItsEnd) { // RFC 4180, 2.2
  EXPECT_EQ(all_rows("aaa,bbb,ccc\r\nzzz,yyy,xxx"), kTwo);
}

TEST(Csv, SpacesBelongToTheCell) { // RFC 4180, 2.4
  EXPECT_EQ(all_rows(" a ,b\n"), (Table{{" a ", "b"}}));
}

TEST(Csv, QuotesAroundCells) { // RFC 4180, 2.5 to 2.7, their own examples
  EXPECT_EQ(all_rows("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"), kTwo);
  EXPECT_EQ(all_rows("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"),
            (Table{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
  EXPECT_EQ(all_rows("\"aaa\",\"b\"\"bb\",\"ccc\""), (Table{{"aaa", "b\"bb", "ccc"}}));
}

TEST(Csv, EmptyCellsAndLines) {
  EXPECT_EQ(all_rows(",\n\"\",\n\na,"), (Table{{"", ""}, {"", ""}, {""}, {"a", ""}}));
  EXPECT_EQ(all_rows(""), Table{});
}

TEST(Csv, MarkOfUtf8IsPassedOver) {
  EXPECT_EQ(all_rows("\xEF\xBB\xBF"
                     "a,b\n"),
            (Table{{"a", "b"}}));
}

TEST(Csv, QuoteInsideAnUnquotedCellIsAQuote) {
  EXPECT_EQ(all_rows("9'6\",8\n"), (Table{{"9'6\"", "8"}}));
}

TEST(Csv, LinesAreCountedThroughQuotedCells) {
  const std::string text = "a\n\"b\nb\r\nb\"\nc";
  CsvReader reader(text, ',');
  CsvRow row;
  std::vector<int> lines;
  while (reader.next(row) == CsvReader::Step::row) {
    lines.push_back(row.line);
  }
  EXPECT_EQ(lines, (std::vector<int>{1, 2, 5}));
}

TEST(Csv, UnclosedQuoteIsToldWhereItOpened) {
  EXPECT_EQ(first_problem("a,b\nc,\"d\ne,f\n", 2), "quote_not_closed");
  EXPECT_EQ(first_problem("a\n\"x\ny\",\"z", 3), "quote_not_closed");
}

TEST(Csv, TextAfterAQuoteIsRefusedAndReadingGoesOn) {
  EXPECT_EQ(first_problem("a\n\"b\"c\nd\n", 2), "text_after_quote");
  CsvReader reader("\"b\"c\nd\n", ',');
  CsvRow row;
  EXPECT_EQ(reader.next(row), CsvReader::Step::problem);
  ASSERT_EQ(reader.next(row), CsvReader::Step::row);
  EXPECT_EQ(row.cells.front().text, "d");
  EXPECT_EQ(row.line, 2);
}

TEST(Csv, StrayCarriageReturnIsRefused) {
  EXPECT_EQ(first_problem("a\rb\n", 1), "stray_carriage_return");
}

TEST(Csv, DelimiterComesFromTheHeader) {
  EXPECT_EQ(*baize::sheets::find_delimiter("a,b\n1;2\n"), ',');
  EXPECT_EQ(*baize::sheets::find_delimiter("a;b\n1,2\n"), ';');
  EXPECT_EQ(*baize::sheets::find_delimiter("a\tb\n"), '\t');
  EXPECT_EQ(*baize::sheets::find_delimiter("\"a,x\";b\n"), ';');
  EXPECT_EQ(*baize::sheets::find_delimiter("a\n"), ',');
  EXPECT_EQ(baize::sheets::find_delimiter("a;b,c\n").error().code, "mixed_delimiters");
}

TEST(Csv, TextMustBeUtf8) {
  using baize::sheets::text_problem;
  EXPECT_FALSE(text_problem("Gr\xC3\xBCn \xF0\x9F\x8C\xB1\n"));
  EXPECT_FALSE(text_problem("\xEF\xBB\xBF"
                            "a\n"));
  // Not well formed by RFC 3629: a Latin-1 letter, an overlong slash, half of a
  // surrogate pair, a code point above U+10FFFF, a sequence cut off, NUL.
  for (const std::string& bad :
       {std::string("Gr\xFCn"), std::string("\xC0\xAF"), std::string("\xED\xA0\x80"),
        std::string("\xF4\x90\x80\x80"), std::string("\xE2\x82"), std::string("a\0b", 3)}) {
    ASSERT_TRUE(text_problem(bad)) << bad;
    EXPECT_EQ(text_problem(bad)->code, "not_utf8");
  }
  EXPECT_EQ(text_problem("12345678\n1234567\xFC")->place, "line 2 byte 17");
}

TEST(Csv, CellsAreQuotedOnlyWhenTheyMust) {
  using baize::sheets::csv_cell;
  EXPECT_EQ(csv_cell("plain", ','), "plain");
  EXPECT_EQ(csv_cell("3,5", ';'), "3,5");
  EXPECT_EQ(csv_cell("3,5", ','), "\"3,5\"");
  EXPECT_EQ(csv_cell("9'6\"", ','), "\"9'6\"\"\"");
  EXPECT_EQ(csv_cell(" a", ','), "\" a\"");
  EXPECT_EQ(csv_cell("a\nb", ','), "\"a\nb\"");
  EXPECT_EQ(csv_cell("", ','), "");
}

} // namespace
