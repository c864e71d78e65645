#include "files.h"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace baize::cli {

namespace fs = std::filesystem;

units::Result<std::string> read_file(const std::string& path) {
  std::error_code error;
  if (!fs::exists(path, error)) {
    return units::refuse("no_such_file", "file", path, "a file that exists");
  }
  std::ifstream in(path, std::ios::binary);
  std::string content((std::istreambuf_iterator<char>(in)), {});
  if (!in || fs::is_directory(path, error)) {
    return units::refuse("file_unreadable", "file", path, "a file that can be read");
  }
  return content;
}

units::Result<void> write_file(const std::string& path, const std::string& content) {
  const std::string part = path + ".part";
  std::error_code error;
  {
    std::ofstream out(part, std::ios::binary | std::ios::trunc);
    out << content;
    out.flush();
    if (!out) {
      const std::string why = std::strerror(errno);
      fs::remove(part, error);
      return units::refuse("file_unwritable", "file", path,
                           "a file that can be written (" + why + ")");
    }
  }
  fs::rename(part, path, error);
  if (error) {
    const std::string why = error.message();
    fs::remove(part, error);
    return units::refuse("file_unwritable", "file", path,
                         "a file that can be written (" + why + ")");
  }
  return {};
}

units::Result<std::vector<std::string>> files_of(const std::string& path) {
  std::error_code error;
  if (!fs::is_directory(path, error)) {
    return std::vector<std::string>{path};
  }
  std::vector<std::string> found;
  for (const auto& entry : fs::directory_iterator(path, error)) {
    if (entry.is_regular_file() && entry.path().extension() == ".csv") {
      found.push_back(entry.path().string());
    }
  }
  if (error) {
    return units::refuse("folder_unreadable", "folder", path,
                         "a folder that can be read (" + error.message() + ")");
  }
  if (found.empty()) {
    return units::refuse("no_such_file", "folder", path, "a folder with .csv files in it");
  }
  std::sort(found.begin(), found.end());
  return found;
}

std::string bare_name(const std::string& path) {
  return fs::path(path).filename().string();
}

bool same_file(const std::string& a, const std::string& b) {
  std::error_code error;
  return fs::equivalent(a, b, error);
}

} // namespace baize::cli
