#pragma once

#include <array>
#include <atomic>
#include <cstdint>
#include <map>
#include <mutex>
#include <string>
#include <string_view>
#include <tuple>
#include <vector>

namespace baize::api {

/// A figure told by somebody else: the store's queue, say.
struct Figure {
  std::string name; ///< without "baize_"
  std::string help;
  bool counts = false; ///< only ever grows
  std::int64_t value = 0;
};

/// Counts what the server does, and tells it in the OpenMetrics text format
/// (version 1.0). Safe from many threads.
class Metrics {
 public:
  /// Upper bounds of the histogram's buckets, seconds.
  static constexpr std::array<double, 11> kBounds{0.002, 0.005, 0.01, 0.025, 0.05, 0.1,
                                                  0.25,  0.5,   1,    2.5,   10};

  /// `route` is a pattern of the table; empty where none was found.
  void answered(std::string_view method, std::string_view route, int status, double seconds);
  void handed_in(std::int64_t kept, std::int64_t refused);
  void connections(std::int64_t open) { connections_ = open; }
  std::string text(const std::vector<Figure>& more) const;

 private:
  struct Times {
    std::array<std::int64_t, kBounds.size() + 1> in{};
    double sum = 0;
  };
  mutable std::mutex mutex_;
  std::map<std::tuple<std::string, std::string, int>, std::int64_t> answers_;
  std::map<std::string, Times, std::less<>> times_;
  std::atomic<std::int64_t> hand_ins_ = 0;
  std::atomic<std::int64_t> kept_ = 0;
  std::atomic<std::int64_t> refused_ = 0;
  std::atomic<std::int64_t> connections_ = 0;
};

} // namespace baize::api
