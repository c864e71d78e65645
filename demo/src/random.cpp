#include "random.h"

namespace baize::demo {
namespace {

std::uint64_t mixed(std::uint64_t z) {
  z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9ULL;
  z = (z ^ (z >> 27U)) * 0x94D049BB133111EBULL;
  return z ^ (z >> 31U);
}

constexpr std::uint64_t kStep = 0x9E3779B97F4A7C15ULL;

} // namespace

std::uint64_t splitmix(std::uint64_t& state) {
  state += kStep;
  return mixed(state);
}

Chance::Chance(std::uint64_t seed, Purpose purpose, std::initializer_list<std::int64_t> where)
    : state_(mixed(seed + kStep)) {
  state_ = mixed(state_ ^ (static_cast<std::uint64_t>(purpose) * kStep));
  for (const std::int64_t part : where) {
    state_ = mixed(state_ + kStep + static_cast<std::uint64_t>(part));
  }
}

std::uint64_t Chance::next() {
  return splitmix(state_);
}

double Chance::uniform() {
  constexpr double kUnit = 1.0 / 9007199254740992.0; // 2^-53
  return static_cast<double>(next() >> 11U) * kUnit;
}

double Chance::between(double low, double high) {
  return low + (high - low) * uniform();
}

double Chance::normal() {
  double sum = -6;
  for (int i = 0; i < 12; ++i) {
    sum += uniform();
  }
  return sum;
}

bool Chance::happens(double probability) {
  return uniform() < probability;
}

int Chance::below(int count) {
  return static_cast<int>(uniform() * count);
}

double steady_exp(double x) {
  int halvings = 0;
  while (x > 0.125 || x < -0.125) {
    x /= 2;
    ++halvings;
  }
  double term = 1;
  double sum = 1;
  for (int i = 1; i <= 12; ++i) {
    term *= x / i;
    sum += term;
  }
  for (int i = 0; i < halvings; ++i) {
    sum *= sum;
  }
  return sum;
}

} // namespace baize::demo
