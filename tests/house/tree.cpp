#include "house/tree.h"

#include <algorithm>
#include <fstream>
#include <sstream>

namespace house {

namespace fs = std::filesystem;

fs::path root() {
  return BAIZE_SOURCE_DIR;
}

namespace {
bool made(const fs::path& folder) {
  const std::string name = folder.filename().string();
  return name == "node_modules" || name == "dist" || name == "build" || name == ".git";
}
} // namespace

std::vector<fs::path> files(const std::vector<std::string>& folders,
                            const std::vector<std::string>& endings) {
  std::vector<fs::path> found;
  for (const std::string& folder : folders) {
    for (auto it = fs::recursive_directory_iterator(root() / folder);
         it != fs::recursive_directory_iterator(); ++it) {
      if (it->is_directory() && made(it->path())) {
        it.disable_recursion_pending();
      } else if (it->is_regular_file() &&
                 std::find(endings.begin(), endings.end(), it->path().extension().string()) !=
                     endings.end()) {
        found.push_back(it->path());
      }
    }
  }
  std::sort(found.begin(), found.end());
  return found;
}

std::vector<std::string> lines(const fs::path& file) {
  std::ifstream in(file);
  std::vector<std::string> all;
  for (std::string line; std::getline(in, line);) {
    all.push_back(line);
  }
  return all;
}

std::string text(const fs::path& file) {
  std::ifstream in(file);
  std::ostringstream out;
  out << in.rdbuf();
  return out.str();
}

std::string shown(const fs::path& file) {
  return fs::relative(file, root()).generic_string();
}

} // namespace house
