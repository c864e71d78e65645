#include "baize/stats/random.h"

#include "baize/stats/distributions.h"

namespace baize::stats {
namespace {

constexpr std::uint32_t low_word(std::uint64_t bits) {
  return static_cast<std::uint32_t>(bits);
}
constexpr std::uint32_t high_word(std::uint64_t bits) {
  return static_cast<std::uint32_t>(bits >> 32U);
}
constexpr std::uint64_t joined(std::uint32_t low, std::uint32_t high) {
  return std::uint64_t{high} << 32U | low;
}

// Multipliers and steps of the key as published.
constexpr std::uint64_t kMultiply0 = 0xD2511F53;
constexpr std::uint64_t kMultiply1 = 0xCD9E8D57;
constexpr std::uint32_t kStep0 = 0x9E3779B9;
constexpr std::uint32_t kStep1 = 0xBB67AE85;
constexpr int kRounds = 10;

} // namespace

std::array<std::uint32_t, 4> philox(std::array<std::uint32_t, 4> counter,
                                    std::array<std::uint32_t, 2> key) {
  for (int round = 0; round < kRounds; ++round) {
    const std::uint64_t a = kMultiply0 * counter[0];
    const std::uint64_t b = kMultiply1 * counter[2];
    counter = {high_word(b) ^ counter[1] ^ key[0], low_word(b), high_word(a) ^ counter[3] ^ key[1],
               low_word(a)};
    key[0] += kStep0;
    key[1] += kStep1;
  }
  return counter;
}

Random::Random(std::uint64_t seed, std::uint64_t stream) : seed_(seed), stream_(stream) {}

std::uint64_t Random::bits() {
  if (left_ == 0) {
    const auto words =
        philox({low_word(block_), high_word(block_), low_word(stream_), high_word(stream_)},
               {low_word(seed_), high_word(seed_)});
    ++block_;
    waiting_ = {joined(words[2], words[3]), joined(words[0], words[1])};
    left_ = waiting_.size();
  }
  return waiting_[--left_];
}

double Random::uniform() {
  // The half keeps 0 and 1 out; with 53 bits the largest would round to 1.
  return (static_cast<double>(bits() >> 12U) + 0.5) * 0x1p-52;
}

double Random::normal() {
  return normal_quantile(uniform());
}

std::size_t Random::below(std::size_t n) {
  if (n == 0) {
    return 0;
  }
  // What is left of 2^64 after whole turns of n would favour the small numbers.
  const std::uint64_t wide = n;
  const std::uint64_t uneven = (0 - wide) % wide;
  std::uint64_t drawn = bits();
  while (drawn < uneven) {
    drawn = bits();
  }
  return static_cast<std::size_t>(drawn % wide);
}

} // namespace baize::stats
