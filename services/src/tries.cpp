#include "baize/services/tries.h"

#include <algorithm>
#include <vector>

namespace baize::services {

Seconds Tries::wait_of(const Failures& failures) const {
  Seconds wait = failures.count > rules_.free ? rules_.first_wait : 0;
  for (int n = rules_.free + 1; n < failures.count && wait < rules_.most_wait; ++n) {
    wait *= 2;
  }
  return std::min(wait, rules_.most_wait);
}

Seconds Tries::wait(const std::string& name, Seconds now) const {
  const auto found = all_.find(name);
  if (found == all_.end() || now - found->second.last >= rules_.forget) {
    return 0;
  }
  // A clock set back must not lock anybody out for longer than the wait itself.
  const Seconds passed = std::max<Seconds>(now - found->second.last, 0);
  return std::max<Seconds>(wait_of(found->second) - passed, 0);
}

void Tries::begin(const std::string& name, Seconds now) {
  if (all_.size() >= rules_.most && !all_.contains(name)) {
    make_room(now);
  }
  Failures& failures = all_[name];
  if (now - failures.last >= rules_.forget) {
    failures.count = 0;
  }
  failures.count = std::min(failures.count + 1, 1'000);
  failures.last = now;
}

void Tries::undo(const std::string& name) {
  const auto found = all_.find(name);
  if (found != all_.end() && --found->second.count <= 0) {
    all_.erase(found);
  }
}

void Tries::clear(const std::string& name) {
  all_.erase(name);
}

/// A tenth goes at once, so that a flood of names does not sort them each time.
void Tries::make_room(Seconds now) {
  std::erase_if(all_, [&](const auto& one) { return now - one.second.last >= rules_.forget; });
  if (all_.size() < rules_.most) {
    return;
  }
  using Line = std::pair<Failures, std::string>;
  std::vector<Line> lines;
  lines.reserve(all_.size());
  for (const auto& [name, failures] : all_) {
    lines.emplace_back(failures, name);
  }
  const auto end = lines.begin() + static_cast<std::ptrdiff_t>(lines.size() / 10 + 1);
  std::partial_sort(lines.begin(), end, lines.end(), [](const Line& a, const Line& b) {
    return a.first.count != b.first.count ? a.first.count < b.first.count
                                          : a.first.last < b.first.last;
  });
  for (auto line = lines.begin(); line != end; ++line) {
    all_.erase(line->second);
  }
}

} // namespace baize::services
