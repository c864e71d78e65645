#pragma once

#include "baize/stats/random.h"

#include <nlohmann/json.hpp>

#include <array>
#include <cmath>
#include <string>

namespace phone {

using nlohmann::json;

/// What phones send, drawn from a seed: rolls, marks, lengths as text.
class Draw {
 public:
  Draw(std::uint64_t seed, std::uint64_t stream) : random_(seed, stream) {}

  bool one_in(std::size_t n) { return random_.below(n) == 0; }
  int from_to(int first, int last) {
    return first + static_cast<int>(random_.below(static_cast<std::size_t>(last - first + 1)));
  }
  template <class T, std::size_t N> T of(const std::array<T, N>& words) {
    return words[random_.below(N)];
  }

  /// Now with all its digits, now as read from a tape.
  double length() {
    const double metres = 12 * random_.uniform();
    if (one_in(50)) {
      return 1000 * metres - 6000;
    }
    return one_in(2) ? metres : std::round(metres * 100) / 100;
  }
  json mark() {
    json one = {{"kind", of(std::array{"bobble", "chatter", "snake"})}};
    if (one_in(2)) {
      one["seconds"] = one_in(40) ? 100.0 : 4 * random_.uniform();
    }
    return one;
  }
  json marks() {
    if (one_in(5)) {
      return nullptr;
    }
    json all = json::array();
    const int count = one_in(100) ? 120 : from_to(0, 3);
    for (int i = 0; i < count; ++i) {
      all.push_back(mark());
    }
    return all;
  }
  json score() { return one_in(60) ? json(11) : one_in(60) ? json(7.5) : json(from_to(1, 10)); }
  json roll() {
    json one = json::object();
    if (!one_in(4)) {
      one["distance"] = length();
    }
    if (!one_in(4)) {
      one["score"] = score();
    }
    if (!one_in(3)) {
      one["marks"] = marks();
    }
    if (one_in(10)) {
      one["order"] = from_to(1, 4);
    }
    return one;
  }
  json rolls() {
    json all = json::array();
    const int count = from_to(0, 4);
    for (int i = 0; i < count; ++i) {
      all.push_back(roll());
    }
    return all;
  }
  json unit() { return of(std::array{"ft_in", "ft", "cm", "m"}); }
  json decimal() { return one_in(3) ? json() : json(of(std::array{".", ","})); }
  std::string length_text() {
    static constexpr std::array kSigns{"0", "1", "2", "9", "'", "\"", "-", ".", ",", " "};
    if (one_in(2)) {
      return std::to_string(from_to(0, 14)) + "'" + std::to_string(from_to(0, 13)) + "\"";
    }
    if (one_in(2)) {
      return std::to_string(from_to(0, 400)) + (one_in(2) ? "." : ",") +
             std::to_string(from_to(0, 99999));
    }
    std::string text;
    for (int i = from_to(0, 7); i > 0; --i) {
      text += of(kSigns);
    }
    return text;
  }
  /// Some bytes changed, put in or taken out.
  std::string broken(std::string text) {
    for (int i = from_to(1, 3); i > 0 && !text.empty(); --i) {
      const std::size_t at = random_.below(text.size());
      switch (random_.below(4)) {
      case 0:
        text.erase(at, 1);
        break;
      case 1:
        text.insert(at, 1, static_cast<char>(random_.below(256)));
        break;
      case 2:
        text[at] = static_cast<char>(random_.below(256));
        break;
      default:
        text.resize(at);
      }
    }
    return text;
  }

 private:
  baize::stats::Random random_;
};

/// Entries of a handful of things, some written over others, in any order.
json drawn_entries(Draw& draw);

} // namespace phone
