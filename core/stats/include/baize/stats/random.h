#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace baize::stats {

/// Random numbers that are the same bytes on every machine. A counter is put
/// through ten rounds of Philox 4x32 with the seed as key, so that each stream of
/// a seed is a sequence of its own: give each repeat of a simulation its own
/// stream and repeats may be left out, added or put in another order without
/// changing the others. 2^65 numbers to a stream. Not for secrets.
/// Salmon JK, Moraes MA, Dror RO, Shaw DE (2011) Parallel random numbers: as easy
/// as 1, 2, 3. Proc. SC11.
///
/// The standard library's distributions differ between libraries; these do not.
class Random {
 public:
  explicit Random(std::uint64_t seed, std::uint64_t stream = 0);

  /// 64 random bits.
  std::uint64_t bits();
  /// Above 0 and below 1, of 2^52 values equally far apart.
  double uniform();
  /// Mean 0, standard deviation 1: the normal quantile of `uniform()`, so that
  /// two runs with the same seed have the same errors, whatever they are added to.
  double normal();
  /// 0 to n - 1, each exactly as likely; 0 where n is 0.
  std::size_t below(std::size_t n);

 private:
  std::uint64_t seed_;
  std::uint64_t stream_;
  std::uint64_t block_ = 0;
  std::array<std::uint64_t, 2> waiting_{};
  std::size_t left_ = 0;
};

/// Puts the items into random order, every order as likely.
/// Fisher and Yates; Durstenfeld R (1964) Commun. ACM 7:420.
template <class T> void shuffle(std::vector<T>& items, Random& random) {
  for (std::size_t left = items.size(); left > 1; --left) {
    using std::swap;
    swap(items[left - 1], items[random.below(left)]);
  }
}

/// The generator's core: the four words of `counter` mixed under `key`.
std::array<std::uint32_t, 4> philox(std::array<std::uint32_t, 4> counter,
                                    std::array<std::uint32_t, 2> key);

} // namespace baize::stats
