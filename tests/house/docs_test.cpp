// What the documents name exists: paths, commands of the program, presets.
// A path is a word in back quotes that holds a slash and starts with a folder
// of the checkout, or one of the files at its top.
#include "house/tree.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <regex>
#include <set>

namespace {

std::vector<std::filesystem::path> documents() {
  auto all =
      house::files({"docs", "core", "services", "adapters", "surfaces", "demo", "tests"}, {".md"});
  for (const char* top : {"README.md", "CONTRIBUTING.md"}) {
    all.push_back(house::root() / top);
  }
  return all;
}

std::vector<std::string> quoted(const std::string& text) {
  static const std::regex word("`([^`\n]+)`");
  std::vector<std::string> found;
  for (auto it = std::sregex_iterator(text.begin(), text.end(), word); it != std::sregex_iterator();
       ++it) {
    found.push_back((*it)[1]);
  }
  return found;
}

std::set<std::string> folders() {
  std::set<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(house::root())) {
    if (entry.is_directory() && entry.path().filename() != "build") {
      names.insert(entry.path().filename().string());
    }
  }
  return names;
}

bool pattern(const std::string& path) {
  return path.find_first_of("*<>{}$ ") != std::string::npos ||
         path.find("NAME") != std::string::npos;
}

TEST(Docs, EveryPathExists) {
  const auto tops = folders();
  int checked = 0;
  for (const auto& document : documents()) {
    for (std::string path : quoted(house::text(document))) {
      path = path.substr(0, path.find(':'));
      const auto slash = path.find('/');
      if (slash == std::string::npos || !tops.contains(path.substr(0, slash)) || pattern(path)) {
        continue;
      }
      ++checked;
      EXPECT_TRUE(std::filesystem::exists(house::root() / path))
          << house::shown(document) << " names " << path;
    }
  }
  EXPECT_GT(checked, 40);
}

TEST(Docs, EveryCommandExists) {
  std::string program;
  for (const auto& file : house::files({"surfaces/cli", "apps"}, {".cpp"})) {
    program += house::text(file);
  }
  static const std::regex command(R"(^(?:\./)?baize ([a-z]+))");
  static const std::regex option(R"((--[a-z][a-z-]+))");
  int checked = 0;
  for (const auto& document : documents()) {
    for (const std::string& word : quoted(house::text(document))) {
      std::smatch match;
      if (!std::regex_search(word, match, command)) {
        continue;
      }
      ++checked;
      EXPECT_NE(program.find('"' + match[1].str() + '"'), std::string::npos)
          << house::shown(document) << " names the command " << match[1];
      for (auto it = std::sregex_iterator(word.begin(), word.end(), option);
           it != std::sregex_iterator(); ++it) {
        EXPECT_NE(program.find((*it)[1].str()), std::string::npos)
            << house::shown(document) << " names the option " << (*it)[1];
      }
    }
  }
  EXPECT_GT(checked, 10);
}

TEST(Docs, EveryPresetExists) {
  const std::string presets = house::text(house::root() / "CMakePresets.json");
  static const std::regex preset(R"(--preset ([a-z-]+))");
  int checked = 0;
  for (const auto& document : documents()) {
    const std::string text = house::text(document);
    for (auto it = std::sregex_iterator(text.begin(), text.end(), preset);
         it != std::sregex_iterator(); ++it) {
      ++checked;
      EXPECT_NE(presets.find("\"name\": \"" + (*it)[1].str() + "\""), std::string::npos)
          << house::shown(document) << " names the preset " << (*it)[1];
    }
  }
  EXPECT_GE(checked, 2);
}

TEST(Docs, ReadmeOpensWithTheJob) {
  const auto all = house::lines(house::root() / "README.md");
  ASSERT_GT(all.size(), 3U);
  EXPECT_EQ(all[0].rfind("# ", 0), 0U);
  EXPECT_GT(all[2].size(), 200U) << "the job stands in one paragraph at the top";
}

// A code that a program may meet is explained where its reader would look.
TEST(Docs, EveryProblemCodeIsExplained) {
  const std::string page = house::text(house::root() / "docs/howto/problems.md");
  static const std::regex made(
      R"((?:Problem ?\{|problem\(|bad\(|refuse\(|refused\(|fail\(|degenerate\()\{?\s*"([a-z]+(?:_[a-z]+)+)\")");
  std::set<std::string> codes;
  for (const auto& file :
       house::files({"core", "services", "adapters", "surfaces", "apps"}, {".cpp", ".h"})) {
    const std::string text = house::text(file);
    for (auto it = std::sregex_iterator(text.begin(), text.end(), made);
         it != std::sregex_iterator(); ++it) {
      codes.insert((*it)[1]);
    }
  }
  EXPECT_GT(codes.size(), 100U);
  for (const std::string& code : codes) {
    EXPECT_NE(page.find('`' + code + '`'), std::string::npos) << code << " is not in problems.md";
  }
}

} // namespace
