#include "baize/api/metrics.h"

#include <fmt/format.h>

#include <algorithm>

namespace baize::api {

namespace {

void declare(std::string& text, std::string_view name, const char* type, std::string_view help) {
  text += fmt::format("# HELP baize_{0} {1}\n# TYPE baize_{0} {2}\n", name, help, type);
}

void add(std::string& text, const Figure& figure) {
  declare(text, figure.name, figure.counts ? "counter" : "gauge", figure.help);
  text += fmt::format("baize_{}{} {}\n", figure.name, figure.counts ? "_total" : "", figure.value);
}

/// Methods are the client's words: others than these are counted as one.
std::string known(std::string_view method) {
  for (const std::string_view one : {"GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS"}) {
    if (method == one) {
      return std::string(one);
    }
  }
  return "other";
}

} // namespace

void Metrics::answered(std::string_view method, std::string_view route, int status,
                       double seconds) {
  const std::string pattern(route.empty() ? "none" : route);
  const std::lock_guard lock(mutex_);
  ++answers_[{known(method), pattern, status}];
  Times& times = times_[pattern];
  const auto bound = std::lower_bound(kBounds.begin(), kBounds.end(), seconds);
  ++times.in.at(static_cast<std::size_t>(bound - kBounds.begin()));
  times.sum += seconds;
}

void Metrics::handed_in(std::int64_t kept, std::int64_t refused) {
  ++hand_ins_;
  kept_ += kept;
  refused_ += refused;
}

std::string Metrics::text(const std::vector<Figure>& more) const {
  std::string text;
  {
    const std::lock_guard lock(mutex_);
    declare(text, "requests", "counter", "Answers given, by method, route and status.");
    for (const auto& [what, count] : answers_) {
      const auto& [method, route, status] = what;
      text += fmt::format("baize_requests_total{{method=\"{}\",route=\"{}\",status=\"{}\"}} {}\n",
                          method, route, status, count);
    }
    declare(text, "request_seconds", "histogram", "Seconds an answer took, by route.");
    for (const auto& [route, times] : times_) {
      std::int64_t count = 0;
      for (std::size_t i = 0; i < times.in.size(); ++i) {
        count += times.in.at(i);
        const std::string bound = i < kBounds.size() ? fmt::format("{}", kBounds.at(i)) : "+Inf";
        text += fmt::format("baize_request_seconds_bucket{{route=\"{}\",le=\"{}\"}} {}\n", route,
                            bound, count);
      }
      text += fmt::format("baize_request_seconds_count{{route=\"{0}\"}} {1}\n"
                          "baize_request_seconds_sum{{route=\"{0}\"}} {2}\n",
                          route, count, times.sum);
    }
  }
  add(text, {"open_connections", "Connections open now.", false, connections_});
  add(text, {"hand_ins", "Hand-ins of phones.", true, hand_ins_});
  add(text, {"entries_kept", "Entries that hand-ins kept.", true, kept_});
  add(text, {"entries_refused", "Entries that hand-ins refused.", true, refused_});
  for (const Figure& figure : more) {
    add(text, figure);
  }
  return text + "# EOF\n";
}

} // namespace baize::api
