#pragma once

#include <string>

namespace baize::store_sqlite {

/// Writes a small file so that after the call it is on disk, whole, under its name.
void write_durably(const std::string& path, const std::string& text);
/// Renames, and makes the new name last through a power cut.
void rename_durably(const std::string& from, const std::string& to);
/// The file's text; refuses with `code` where it cannot be read.
std::string read_text(const std::string& path, const char* code);

/// Removed at the end of the scope, whatever happens; nothing where it was renamed.
class Leftover {
 public:
  explicit Leftover(std::string path);
  Leftover(const Leftover&) = delete;
  Leftover& operator=(const Leftover&) = delete;
  ~Leftover();

 private:
  std::string path_;
};

} // namespace baize::store_sqlite
