#pragma once

#include "baize/journal/fold.h"

#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <vector>

/// Two phones and a server, each of them nothing but a set of entries, and a
/// network that loses, doubles and reorders.
namespace journal_model {

using namespace baize::journal;

/// Draws that are the same everywhere (splitmix64, Steele, Lea and Flood 2014).
class Chance {
 public:
  explicit Chance(std::uint64_t seed) : state_(seed) {}
  std::uint64_t next();
  /// 0 to n - 1.
  int below(int n) { return static_cast<int>(next() % static_cast<std::uint64_t>(n)); }
  bool one_in(int n) { return below(n) == 0; }
  template <class T> void shuffle(std::vector<T>& items) {
    for (std::size_t i = items.size(); i > 1; --i) {
      std::swap(items[i - 1], items[static_cast<std::size_t>(below(static_cast<int>(i)))]);
    }
  }

 private:
  std::uint64_t state_;
};

/// Keeps what arrives, in the order of arrival, each id once.
struct Server {
  std::vector<Entry> arrived;
  std::set<std::string> ids;
  void take(const std::vector<Entry>& entries);
};

class Phone {
 public:
  /// `number` parts its ids from those of others; `clock` is where its time begins.
  Phone(int number, int clock) : number_(number), clock_(clock) {}

  /// Writes fields of a thing over the newest entries that this phone knows.
  const Entry& write(const std::string& thing, Value::Members set);
  /// Sends what is not acknowledged, over a network with these habits, and
  /// fetches what others wrote. What is lost is simply lost.
  void meet(Server& server, Chance& chance, bool reliable);

  std::vector<Entry> known() const;
  std::vector<Entry> of(const std::string& thing) const;
  bool waiting() const { return !waiting_.empty(); }

 private:
  int number_;
  int clock_;
  int last_ = 0;
  std::map<std::string, Entry> entries_;
  std::set<std::string> waiting_;
  std::size_t fetched_ = 0;
};

/// The rule word by word, without any cleverness: for each field of each thing
/// the entries that stand. To hold `fold` against.
std::map<std::string, std::map<std::string, std::set<std::string>>>
standing_by_the_rule(const std::vector<Entry>& entries);

} // namespace journal_model
