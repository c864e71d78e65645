// Each library sees only what it declares: every include of baize/NAME/ must be
// the library's own or one that CMake was told of. The core includes nothing
// that reaches outside itself.
#include "house/tree.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <regex>
#include <set>
#include <sstream>

namespace {

struct Library {
  std::string folder;
  std::set<std::string> sees;
};

std::map<std::string, Library> declared() {
  std::map<std::string, Library> all;
  for (const std::string& line : house::lines(BAIZE_BUILD_DIR "/layers.txt")) {
    std::istringstream in(line);
    std::string name, used;
    Library library;
    in >> name >> library.folder >> used;
    std::istringstream list(used);
    for (std::string one; std::getline(list, one, ',');) {
      library.sees.insert(one);
    }
    library.sees.insert(name);
    all[name] = library;
  }
  return all;
}

std::vector<std::string> includes(const std::filesystem::path& file) {
  static const std::regex include(R"(^\s*#include\s*[<"]([^>"]+)[>"])");
  std::vector<std::string> found;
  std::smatch match;
  for (const std::string& line : house::lines(file)) {
    if (std::regex_search(line, match, include)) {
      found.push_back(match[1]);
    }
  }
  return found;
}

TEST(Layers, EveryLibrarySeesOnlyWhatItDeclares) {
  const auto libraries = declared();
  ASSERT_GE(libraries.size(), 10U);
  int seen = 0;
  for (const auto& [name, library] : libraries) {
    for (const auto& file : house::files({library.folder}, {".h", ".cpp"})) {
      for (const std::string& include : includes(file)) {
        if (include.rfind("baize/", 0) != 0) {
          continue;
        }
        const std::string of = include.substr(6, include.find('/', 6) - 6);
        ++seen;
        EXPECT_TRUE(library.sees.contains(of))
            << house::shown(file) << " includes " << include << ", but " << name
            << " does not declare " << of << " under USES";
      }
    }
  }
  EXPECT_GT(seen, 50);
}

TEST(Layers, EveryHeaderMayBeIncludedTwice) {
  const auto headers = house::files({"core", "services", "adapters", "surfaces", "demo"}, {".h"});
  EXPECT_GT(headers.size(), 100U);
  for (const auto& header : headers) {
    const auto lines = house::lines(header);
    const bool guarded = std::find(lines.begin(), lines.end(), "#pragma once") != lines.end();
    EXPECT_TRUE(guarded) << house::shown(header) << " has no #pragma once";
  }
}

TEST(Layers, StrataPointDownwards) {
  const auto libraries = declared();
  const std::vector<std::string> strata{"core/", "services", "adapters/", "surfaces/"};
  const auto stratum = [&](const std::string& name) {
    const std::string& folder = libraries.at(name).folder;
    for (std::size_t i = 0; i < strata.size(); ++i) {
      if (folder.rfind(strata[i], 0) == 0) {
        return i;
      }
    }
    return strata.size();
  };
  for (const auto& [name, library] : libraries) {
    for (const std::string& used : library.sees) {
      EXPECT_LE(stratum(used), stratum(name)) << name << " must not use " << used;
      // Surfaces and adapters meet only in apps.
      const bool sideways = stratum(name) == 3 && stratum(used) == 2;
      EXPECT_FALSE(sideways) << "surface " << name << " must not know adapter " << used;
    }
  }
}

TEST(Layers, CoreIsPure) {
  const std::set<std::string> outside{"fstream", "filesystem", "iostream",  "thread",
                                      "mutex",   "atomic",     "locale",    "future",
                                      "random",  "ctime",      "sqlite3.h", "condition_variable"};
  const std::regex throws(R"(\b(throw|std::chrono::system_clock|setlocale|getenv)\b)");
  for (const auto& file : house::files({"core"}, {".h", ".cpp"})) {
    for (const std::string& include : includes(file)) {
      EXPECT_FALSE(outside.contains(include)) << house::shown(file) << " includes " << include;
    }
    int number = 0;
    for (std::string line : house::lines(file)) {
      ++number;
      line = line.substr(0, line.find("//"));
      EXPECT_FALSE(std::regex_search(line, throws)) << house::shown(file) << ":" << number;
    }
  }
}

} // namespace
