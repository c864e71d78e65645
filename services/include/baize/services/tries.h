#pragma once

#include "baize/services/people_port.h"

#include <cstddef>
#include <string>
#include <unordered_map>

namespace baize::services {

/// How long a try must wait after tries that failed.
struct TriesRules {
  int free = 5;              ///< failed tries without a wait
  Seconds first_wait = 2;    ///< after the next one; each further one doubles it
  Seconds most_wait = 900;   ///< and no longer than this
  Seconds forget = 86'400;   ///< failures are forgotten this long after the last
  std::size_t most = 10'000; ///< names kept; when full, those with fewest failures go
};

/// Counts tries by name (an address, an account), in memory. Not safe from many
/// threads: whoever owns it holds a lock. It has no clock: `now` is an argument.
class Tries {
 public:
  explicit Tries(TriesRules rules = {}) : rules_(rules) {}

  /// Seconds to wait before the next try; 0: it may be made now.
  Seconds wait(const std::string& name, Seconds now) const;
  /// Counts a try as failed, before its outcome is known: tries made at once
  /// are all counted.
  void begin(const std::string& name, Seconds now);
  /// The try was good after all: takes it back.
  void undo(const std::string& name);
  /// Forgets the name's failures.
  void clear(const std::string& name);
  std::size_t kept() const { return all_.size(); }

 private:
  struct Failures {
    int count = 0;
    Seconds last = 0;
  };
  Seconds wait_of(const Failures& failures) const;
  void make_room(Seconds now);
  TriesRules rules_;
  std::unordered_map<std::string, Failures> all_;
};

} // namespace baize::services
