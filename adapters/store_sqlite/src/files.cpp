#include "files.h"

#include "database.h"

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <unistd.h>

namespace baize::store_sqlite {

namespace fs = std::filesystem;

namespace {

[[noreturn]] void refuse_file(const std::string& path, int error) {
  fail(error == ENOSPC ? "disk_full" : "file_unwritable", "file", path,
       std::string("a file that can be written (") + std::strerror(error) + ")");
}

class Handle {
 public:
  Handle(const std::string& path, int flags)
      : path_(path), number_(::open(path.c_str(), flags, 0644)) {
    if (number_ < 0) {
      refuse_file(path, errno);
    }
  }
  Handle(const Handle&) = delete;
  Handle& operator=(const Handle&) = delete;
  ~Handle() { ::close(number_); }

  void write(const std::string& text) const {
    std::size_t done = 0;
    while (done < text.size()) {
      const ssize_t wrote = ::write(number_, text.data() + done, text.size() - done);
      if (wrote < 0) {
        refuse_file(path_, errno);
      }
      done += static_cast<std::size_t>(wrote);
    }
  }
  void settle() const {
    if (::fsync(number_) != 0) {
      refuse_file(path_, errno);
    }
  }

 private:
  const std::string& path_;
  int number_;
};

std::string folder_of(const std::string& path) {
  const std::string folder = fs::path(path).parent_path().string();
  return folder.empty() ? "." : folder;
}

} // namespace

void rename_durably(const std::string& from, const std::string& to) {
  std::error_code error;
  fs::rename(from, to, error);
  if (error) {
    refuse_file(to, error.value());
  }
  const std::string folder = folder_of(to);
  Handle(folder, O_RDONLY | O_DIRECTORY).settle();
}

void write_durably(const std::string& path, const std::string& text) {
  const std::string part = path + ".part";
  const Leftover leftover(part);
  {
    const Handle file(part, O_WRONLY | O_CREAT | O_TRUNC);
    file.write(text);
    file.settle();
  }
  rename_durably(part, path);
}

std::string read_text(const std::string& path, const char* code) {
  std::ifstream in(path, std::ios::binary);
  if (!in) {
    fail(code, "file", path, "a file that can be read");
  }
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

Leftover::Leftover(std::string path) : path_(std::move(path)) {}

Leftover::~Leftover() {
  std::error_code ignored;
  fs::remove(path_, ignored);
}

} // namespace baize::store_sqlite
