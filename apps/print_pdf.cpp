#include "print_pdf.h"

#include <fmt/format.h>

#include <cstdlib>
#include <fcntl.h>
#include <filesystem>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>
#include <vector>

namespace baize::apps {

namespace fs = std::filesystem;

namespace {

std::string file_url(const fs::path& path) {
  std::string url = "file://";
  for (const char c : fs::absolute(path).string()) {
    const bool plain = std::isalnum(static_cast<unsigned char>(c)) != 0 ||
                       std::string_view("/-_.~").find(c) != std::string_view::npos;
    url += plain ? std::string(1, c) : fmt::format("%{:02X}", static_cast<unsigned char>(c));
  }
  return url;
}

/// Runs a program quietly; its exit status, or -1 where it is not there.
int run_quietly(const std::vector<std::string>& words) {
  std::vector<char*> arguments;
  arguments.reserve(words.size() + 1);
  for (const std::string& word : words) {
    arguments.push_back(const_cast<char*>(word.c_str()));
  }
  arguments.push_back(nullptr);
  posix_spawn_file_actions_t quiet;
  posix_spawn_file_actions_init(&quiet);
  posix_spawn_file_actions_addopen(&quiet, STDOUT_FILENO, "/dev/null", O_WRONLY, 0);
  posix_spawn_file_actions_addopen(&quiet, STDERR_FILENO, "/dev/null", O_WRONLY, 0);
  pid_t child = 0;
  const int started =
      ::posix_spawnp(&child, arguments[0], &quiet, nullptr, arguments.data(), environ);
  posix_spawn_file_actions_destroy(&quiet);
  int status = 0;
  if (started != 0 || ::waitpid(child, &status, 0) < 0) {
    return -1;
  }
  return WIFEXITED(status) ? WEXITSTATUS(status) : 1;
}

} // namespace

units::Result<void> print_pdf(const std::string& html, const std::string& pdf) {
  std::error_code error;
  const std::string part = fs::absolute(pdf).string() + ".part";
  fs::remove(part, error);
  std::string profile = (fs::temp_directory_path() / "baize-print-XXXXXX").string();
  if (::mkdtemp(profile.data()) == nullptr) {
    return units::refuse("pdf_failed", "pdf", pdf, "printed from a temporary folder");
  }
  std::vector<std::string> words{"chromium",
                                 "--headless",
                                 "--disable-gpu",
                                 "--no-pdf-header-footer",
                                 "--user-data-dir=" + profile,
                                 "--print-to-pdf=" + part};
  if (::geteuid() == 0) {
    words.emplace_back("--no-sandbox"); // it refuses to start for the super-user otherwise
  }
  words.push_back(file_url(html));
  const int status = run_quietly(words);
  fs::remove_all(profile, error);
  if (status == -1 || status == 127) {
    return units::refuse("pdf_no_browser", "pdf", pdf,
                         "printed by Chromium, which is not installed: open " + html +
                             " in a browser and print it");
  }
  if (status == 0 && fs::exists(part, error)) {
    fs::rename(part, pdf, error);
    if (!error) {
      return {};
    }
  }
  return units::refuse("pdf_failed", "pdf", pdf, "a file that can be printed to");
}

} // namespace baize::apps
