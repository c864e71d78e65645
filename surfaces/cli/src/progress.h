#pragma once

#include "baize/stats/summary.h"
#include "session.h"

#include <algorithm>
#include <ostream>
#include <string>

namespace baize::cli {

/// A bar on one line of the error stream, only where somebody watches.
class Progress {
 public:
  Progress(std::ostream& to, bool show, int steps) : to_(to), show_(show), steps_(steps) {}
  Progress(const Progress&) = delete;
  Progress& operator=(const Progress&) = delete;
  ~Progress() { clear(); }
  /// Begins the next step.
  void step(const std::string& what) {
    draw(steps_ > 0 ? kWidth * done_ / steps_ : kWidth, what);
    done_ = done_ < steps_ ? done_ + 1 : steps_;
  }
  /// A share of the whole, 0 to 1. Drawn where the bar grows.
  void share(double done, const std::string& what) {
    const int full = static_cast<int>(kWidth * std::clamp(done, 0.0, 1.0));
    if (full != full_) {
      draw(full, what);
    }
  }
  void clear() {
    if (drawn_) {
      to_ << "\r\x1b[K" << std::flush;
      drawn_ = false;
    }
  }

 private:
  static constexpr int kWidth = 20;
  void draw(int full, const std::string& what) {
    full_ = full;
    if (show_) {
      to_ << "\r\x1b[K[" << std::string(static_cast<std::size_t>(full), '#')
          << std::string(static_cast<std::size_t>(kWidth - full), '.') << "] " << what
          << std::flush;
      drawn_ = true;
    }
  }

  std::ostream& to_;
  bool show_;
  int steps_;
  int done_ = 0;
  int full_ = -1;
  bool drawn_ = false;
};

/// Shows how far a long computation is, and stops it when the keyboard says so.
/// `session` and `progress` must outlive it.
inline stats::Watch watch(const Session& session, Progress& progress, std::string what) {
  return [&session, &progress, what = std::move(what)](double done) {
    progress.share(done, what);
    return !session.ports.asked_to_stop || !session.ports.asked_to_stop();
  };
}

} // namespace baize::cli
