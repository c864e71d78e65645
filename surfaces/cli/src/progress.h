#pragma once

#include <ostream>
#include <string>

namespace baize::cli {

/// A bar on one line of the error stream, only where somebody watches.
class Progress {
 public:
  Progress(std::ostream& to, bool show, int steps) : to_(to), show_(show), steps_(steps) {}
  Progress(const Progress&) = delete;
  Progress& operator=(const Progress&) = delete;
  ~Progress() {
    if (drawn_) {
      to_ << "\r\x1b[K" << std::flush;
    }
  }
  /// Begins the next step.
  void step(const std::string& what) {
    if (!show_) {
      return;
    }
    constexpr int kWidth = 20;
    const int full = steps_ > 0 ? kWidth * done_ / steps_ : kWidth;
    to_ << "\r\x1b[K[" << std::string(static_cast<std::size_t>(full), '#')
        << std::string(static_cast<std::size_t>(kWidth - full), '.') << "] " << what << std::flush;
    drawn_ = true;
    done_ = done_ < steps_ ? done_ + 1 : steps_;
  }

 private:
  std::ostream& to_;
  bool show_;
  int steps_;
  int done_ = 0;
  bool drawn_ = false;
};

} // namespace baize::cli
