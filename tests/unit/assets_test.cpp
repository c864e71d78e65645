// The pages inside the program.
#include "baize/assets/assets.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <regex>
#include <string>

namespace {

using baize::assets::all;
using baize::assets::Asset;
using baize::assets::find;
using baize::assets::report_page;

TEST(Assets, FilesStandInOrderOfPath) {
  EXPECT_TRUE(std::is_sorted(all().begin(), all().end(),
                             [](const Asset& a, const Asset& b) { return a.path < b.path; }));
}

TEST(Assets, EachIsFoundByItsPathAndNothingElse) {
  ASSERT_FALSE(all().empty());
  for (const Asset& asset : all()) {
    EXPECT_EQ(find(asset.path), &asset) << asset.path;
    EXPECT_FALSE(asset.bytes.empty()) << asset.path;
    EXPECT_FALSE(asset.content_type.empty()) << asset.path;
  }
  EXPECT_EQ(find("/nothing"), nullptr);
  EXPECT_EQ(find(""), nullptr);
  EXPECT_EQ(find("/assets/../index.html"), nullptr);
}

TEST(Assets, TheFirstPageIsIndex) {
  ASSERT_NE(find("/"), nullptr);
  EXPECT_EQ(find("/")->path, "/index.html");
  EXPECT_EQ(find("/")->content_type, "text/html; charset=utf-8");
}

#if BAIZE_HAS_PAGES

TEST(Assets, WhatThePageNamesIsThere) {
  const std::string page(find("/")->bytes);
  static const std::regex named(R"re((?:src|href)="\.(/[^"]+)")re");
  int seen = 0;
  for (auto it = std::sregex_iterator(page.begin(), page.end(), named);
       it != std::sregex_iterator(); ++it) {
    ++seen;
    EXPECT_NE(find((*it)[1].str()), nullptr) << (*it)[1];
  }
  EXPECT_GE(seen, 3);
}

TEST(Assets, ThePageUsedOnTheGreenStandsInItsOwnFolder) {
  ASSERT_NE(find("/field/"), nullptr);
  EXPECT_EQ(find("/field/")->path, "/field/index.html");
  ASSERT_NE(find("/field"), nullptr);
  EXPECT_EQ(find("/field")->path, "/field.html");
  const Asset* worker = find("/field/sw.js");
  ASSERT_NE(worker, nullptr);
  // What it keeps in the phone is there to be fetched.
  const std::string text(worker->bytes);
  static const std::regex list(R"(files\s*=\s*\[([^\]]*)\])");
  std::smatch found;
  ASSERT_TRUE(std::regex_search(text, found, list));
  static const std::regex quoted("\"([^\"]+)\"");
  int seen = 0;
  const std::string files = found[1].str();
  for (auto it = std::sregex_iterator(files.begin(), files.end(), quoted);
       it != std::sregex_iterator(); ++it) {
    ++seen;
    const std::string file = (*it)[1].str();
    const std::string path =
        file.starts_with("../") ? file.substr(2) : "/field/" + (file == "./" ? "" : file);
    EXPECT_NE(find(path), nullptr) << path;
  }
  EXPECT_GT(seen, 8);
}

TEST(Assets, NothingPointsElsewhere) {
  // Addresses that name a vocabulary are no requests.
  static const std::regex elsewhere(R"re((?:src|href)="(?:https?:)?//|url\(["']?(?:https?:)?//)re");
  for (const Asset& asset : all()) {
    if (asset.content_type.starts_with("text/html") || asset.content_type.starts_with("text/css")) {
      const std::string text(asset.bytes.substr(0, 20000));
      EXPECT_FALSE(std::regex_search(text, elsewhere)) << asset.path;
    }
  }
}

TEST(Assets, TheCoreOnThePhoneIsThereOnce) {
  int seen = 0;
  for (const Asset& asset : all()) {
    if (asset.path.ends_with(".wasm")) {
      ++seen;
      EXPECT_EQ(asset.content_type, "application/wasm");
      EXPECT_EQ(asset.bytes.substr(0, 4), std::string_view("\0asm", 4));
    }
  }
  EXPECT_EQ(seen, 1);
}

TEST(Assets, TheReportHoldsItsDataAndCannotBeEndedByIt) {
  const auto page = report_page(R"({"note":"</script><script>alert(1)</script>"})");
  ASSERT_TRUE(page);
  EXPECT_NE(page->find(R"({"note":"\u003c/script>\u003cscript>alert(1)\u003c/script>"})"),
            std::string::npos);
  EXPECT_EQ(page->find("<script>alert"), std::string::npos);
  EXPECT_EQ(page->find("BAIZE_REPORT_DATA"), std::string::npos);
}

#else

TEST(Assets, WithoutPagesOnePageSaysSo) {
  ASSERT_EQ(all().size(), 1U);
  EXPECT_NE(find("/")->bytes.find("not built in"), std::string_view::npos);
  EXPECT_FALSE(report_page("{}"));
}

#endif

} // namespace
