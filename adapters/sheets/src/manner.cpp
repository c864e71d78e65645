#include "manner.h"

#include "baize/green/kinds.h"
#include "names.h"

namespace baize::sheets {
namespace {

bool any_marks(const RollRow& row) {
  return row.bobbles || row.chatters || row.snakes || !row.bobble_s.empty() ||
         !row.chatter_s.empty() || !row.snake_s.empty();
}

int counted(const std::optional<int>& count, const std::vector<double>& times) {
  return count.value_or(static_cast<int>(times.size()));
}

bool same_marks(const RollRow& a, const RollRow& b) {
  return any_marks(a) == any_marks(b) && a.bobble_s == b.bobble_s && a.chatter_s == b.chatter_s &&
         a.snake_s == b.snake_s &&
         counted(a.bobbles, a.bobble_s) == counted(b.bobbles, b.bobble_s) &&
         counted(a.chatters, a.chatter_s) == counted(b.chatters, b.chatter_s) &&
         counted(a.snakes, a.snake_s) == counted(b.snakes, b.snake_s);
}

void keep_key(const VisitKey& old, VisitKey& row, bool first) {
  if (row.visit.empty() && old.visit == natural_id(row)) {
    row.visit = old.visit;
  }
  if (!old.to && !first) {
    row.to.reset();
  }
}

} // namespace

bool same_place(const GreenRow& a, const GreenRow& b) {
  return a.spot == b.spot && (!a.spot.empty() || a.half == b.half);
}

bool same_place(const RollRow& a, const RollRow& b) {
  return a.spot == b.spot && a.direction == b.direction && a.roll == b.roll;
}

void in_manner_of(const ClubRow& old, ClubRow& row, bool /*first*/) {
  if (old.name.empty() && row.name == row.club) {
    row.name.clear();
  }
}

void in_manner_of(const GreenRow& old, GreenRow& row, bool first) {
  if (old.name.empty() && (!first || row.name == row.green)) {
    row.name.clear();
  }
  if (!old.grass && (!first || row.grass == green::Grass::cool)) {
    row.grass.reset();
  }
  if (old.grass_mix.empty() && !first) {
    row.grass_mix.clear();
  }
  if (!old.area_m2 && !first) {
    row.area_m2.reset();
  }
}

void in_manner_of(const ObserverRow& /*old*/, ObserverRow& /*row*/, bool /*first*/) {}

void in_manner_of(const RollRow& old, RollRow& row, bool first) {
  keep_key(old, row, first);
  if (same_marks(old, row)) {
    row.bobbles = old.bobbles;
    row.chatters = old.chatters;
    row.snakes = old.snakes;
  }
}

void in_manner_of(const VisitRow& old, VisitRow& row, bool /*first*/) {
  keep_key(old, row, old.to.has_value() || !row.to);
}

void in_manner_of(const ReadingRow& old, ReadingRow& row, bool /*first*/) {
  if (row.reading.empty()) {
    row.reading = old.reading;
  }
  const green::MeasuredField* kind = green::find_reading_kind(row.kind);
  if (!old.unit.empty() && kind != nullptr) {
    row.unit = kind->rule.unit;
  }
}

void in_manner_of(const WorkRow& old, WorkRow& row, bool /*first*/) {
  if (row.work.empty()) {
    row.work = old.work;
  }
  if (green_list(old.greens, {}) == green_list(row.greens, {})) {
    row.greens = old.greens;
  }
}

void in_manner_of(const FixtureRow& old, FixtureRow& row, bool /*first*/) {
  if (row.fixture.empty()) {
    row.fixture = old.fixture;
  }
  if (!row.until && old.until == row.day) {
    row.until = old.until;
  }
  if (!old.importance && row.importance == 1) {
    row.importance.reset();
  }
}

void in_manner_of(const StandardRow& /*old*/, StandardRow& /*row*/, bool /*first*/) {}

bool goes_without_saying(const ClubRow& row, const std::string& column, bool /*has_marks*/) {
  return column == "name" && row.name == row.club;
}

bool goes_without_saying(const GreenRow& row, const std::string& column, bool /*has_marks*/) {
  return (column == "name" && row.name == row.green) ||
         (column == "grass" && row.grass == green::Grass::cool);
}

bool goes_without_saying(const RollRow& row, const std::string& column, bool has_marks) {
  const bool told = has_marks || row.bobbles.value_or(0) > 0 || row.chatters.value_or(0) > 0 ||
                    row.snakes.value_or(0) > 0;
  return told &&
         ((column == "bobbles" && row.bobbles == 0) ||
          (column == "chatters" && row.chatters == 0) || (column == "snakes" && row.snakes == 0));
}

bool goes_without_saying(const FixtureRow& row, const std::string& column, bool /*has_marks*/) {
  return column == "importance" && row.importance == 1;
}

} // namespace baize::sheets
