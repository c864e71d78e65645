// One word for one thing, in files, database and interfaces alike.
#include "baize/green/kinds.h"

#include <array>

namespace baize::green {
namespace {

// The order of each table is the order of its enumeration.
constexpr std::array<std::string_view, 3> kMarkKinds{"bobble", "chatter", "snake"};
constexpr std::array<std::string_view, 2> kDirections{"out", "back"};
constexpr std::array<std::string_view, 3> kWorkClasses{"disruptive", "routine", "closing"};
constexpr std::array<std::string_view, 3> kValueTypes{"number", "whole", "word"};

template <class E, std::size_t N>
std::string_view pick(const std::array<std::string_view, N>& words, E value) {
  const auto index = static_cast<std::size_t>(value);
  return index < N ? words[index] : std::string_view();
}

template <class E, std::size_t N>
std::optional<E> find(const std::array<std::string_view, N>& words, std::string_view word) {
  for (std::size_t i = 0; i < N; ++i) {
    if (words[i] == word) {
      return static_cast<E>(i);
    }
  }
  return std::nullopt;
}

} // namespace

std::string_view word(MarkKind kind) {
  return pick(kMarkKinds, kind);
}
std::optional<MarkKind> find_mark_kind(std::string_view word) {
  return find<MarkKind>(kMarkKinds, word);
}
std::string_view word(Direction direction) {
  return pick(kDirections, direction);
}
std::optional<Direction> find_direction(std::string_view word) {
  return find<Direction>(kDirections, word);
}
std::string_view word(WorkClass work_class) {
  return pick(kWorkClasses, work_class);
}
std::string_view word(ValueType type) {
  return pick(kValueTypes, type);
}

} // namespace baize::green
