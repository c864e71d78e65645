#include "password.h"

#include <cstdio>
#include <fcntl.h>
#include <iostream>
#include <memory>
#include <optional>
#include <termios.h>
#include <unistd.h>

namespace baize::apps {

namespace {

/// The terminal itself, whatever the program's input and output are; it shows
/// what is typed again when this ends.
class Terminal {
 public:
  Terminal() : file_(::open("/dev/tty", O_RDWR | O_CLOEXEC)) {
    if (file_ >= 0 && ::tcgetattr(file_, &before_) == 0) {
      termios quiet = before_;
      quiet.c_lflag &= ~static_cast<tcflag_t>(ECHO);
      good_ = ::tcsetattr(file_, TCSAFLUSH, &quiet) == 0;
    }
  }
  Terminal(const Terminal&) = delete;
  Terminal& operator=(const Terminal&) = delete;
  ~Terminal() {
    if (good_) {
      ::tcsetattr(file_, TCSAFLUSH, &before_);
    }
    if (file_ >= 0) {
      ::close(file_);
    }
  }
  bool good() const { return good_; }

  std::optional<std::string> ask(const std::string& question) const {
    say(question);
    std::string line;
    char c = 0;
    while (::read(file_, &c, 1) == 1) {
      if (c == '\n') {
        say("\n");
        return line;
      }
      line += c;
    }
    return std::nullopt;
  }

 private:
  void say(const std::string& text) const {
    if (::write(file_, text.data(), text.size()) < 0) {
      return; // a terminal that went away: reading from it will tell
    }
  }
  int file_;
  termios before_{};
  bool good_ = false;
};

units::Refusal none(const char* rule) {
  return units::refuse("no_password", "password", "", rule);
}

} // namespace

units::Result<std::string> read_password(bool from_input) {
  if (from_input) {
    std::string line;
    if (!std::getline(std::cin, line)) {
      return none("one line of the standard input");
    }
    if (!line.empty() && line.back() == '\r') {
      line.pop_back();
    }
    return line;
  }
  const Terminal terminal;
  if (!terminal.good()) {
    return none("asked for on a terminal, or given with --password-from-input");
  }
  const auto first = terminal.ask("Password (not shown): ");
  const auto second = first ? terminal.ask("The same again: ") : std::nullopt;
  if (!second) {
    return none("typed twice");
  }
  if (*first != *second) {
    return units::refuse("passwords_differ", "password", "", "typed the same twice");
  }
  return *first;
}

} // namespace baize::apps
