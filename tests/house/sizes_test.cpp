// Files stay small enough to be read in one sitting. A file that may be longer
// stands in larger_files.txt with its reason.
#include "house/tree.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

namespace {

constexpr std::size_t kLongest = 400;
constexpr std::size_t kMedian = 150;

std::map<std::string, std::string> reasons() {
  std::map<std::string, std::string> all;
  for (const std::string& line : house::lines(house::root() / "tests/house/larger_files.txt")) {
    const auto space = line.find(' ');
    if (line.empty() || line.front() == '#' || space == std::string::npos) {
      continue;
    }
    all[line.substr(0, space)] = line.substr(space + 1);
  }
  return all;
}

TEST(Sizes, NoFileIsTooLong) {
  auto allowed = reasons();
  std::vector<std::size_t> sizes;
  for (const auto& file :
       house::files({"core", "services", "adapters", "surfaces", "apps", "demo", "tests", "bench"},
                    {".h", ".cpp", ".ts", ".tsx", ".css", ".mjs", ".cmake"})) {
    const std::size_t length = house::lines(file).size();
    sizes.push_back(length);
    const std::string name = house::shown(file);
    if (allowed.erase(name) == 0) {
      EXPECT_LE(length, kLongest) << name;
    } else {
      EXPECT_GT(length, kLongest) << name << " no longer needs its exception";
    }
  }
  ASSERT_GT(sizes.size(), 100U);
  for (const auto& [name, reason] : allowed) {
    ADD_FAILURE() << name << " is excepted but does not exist";
  }
  std::nth_element(sizes.begin(), sizes.begin() + sizes.size() / 2, sizes.end());
  EXPECT_LE(sizes[sizes.size() / 2], kMedian);
}

} // namespace
