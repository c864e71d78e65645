#include "files.h"

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <sys/stat.h>
#include <unistd.h>

namespace baize::certificates {

namespace fs = std::filesystem;

namespace {

units::Refusal refuse_folder(const std::string& path, int error) {
  return units::refuse("folder_unwritable", "folder", fs::path(path).parent_path().string(),
                       std::string("a folder in which a key can be kept (") + std::strerror(error) +
                           ")");
}

/// 0, or what went wrong.
int write_all(int file, const std::string& text) {
  for (std::size_t done = 0; done < text.size();) {
    const ssize_t wrote = ::write(file, text.data() + done, text.size() - done);
    if (wrote < 0) {
      return errno;
    }
    done += static_cast<std::size_t>(wrote);
  }
  return ::fsync(file) == 0 ? 0 : errno;
}

} // namespace

std::optional<std::string> text_of(const std::string& path) {
  std::error_code error;
  if (!fs::is_regular_file(path, error)) {
    return std::nullopt;
  }
  std::ifstream in(path, std::ios::binary);
  if (!in) {
    return std::nullopt;
  }
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

bool exists(const std::string& path) {
  std::error_code error;
  return fs::exists(path, error);
}

bool is_private(const std::string& path) {
  struct stat is{};
  return ::stat(path.c_str(), &is) == 0 && (is.st_mode & (S_IRWXG | S_IRWXO)) == 0;
}

units::Result<void> write_private(const std::string& path, const std::string& text, bool first) {
  std::error_code failed;
  fs::create_directories(fs::path(path).parent_path(), failed);
  std::string part = path + ".XXXXXX";
  const int file = ::mkstemp(part.data()); // of mode 0600 from its first moment
  if (file < 0) {
    return refuse_folder(path, errno);
  }
  int error = write_all(file, text);
  ::close(file);
  if (error == 0 && first) {
    error = ::link(part.c_str(), path.c_str()) == 0 || errno == EEXIST ? 0 : errno;
  } else if (error == 0) {
    error = ::rename(part.c_str(), path.c_str()) == 0 ? 0 : errno;
  }
  ::unlink(part.c_str()); // gone already where it was renamed
  if (error != 0) {
    return refuse_folder(path, error);
  }
  return {};
}

} // namespace baize::certificates
