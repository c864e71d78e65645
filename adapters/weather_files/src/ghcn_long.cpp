#include "dates.h"
#include "ghcn_parts.h"
#include "text.h"

namespace baize::weather_files {

namespace {

char flag(const std::vector<std::string>& cells, std::size_t at) {
  return at < cells.size() && !cells[at].empty() ? cells[at].front() : ' ';
}

void read_row(const std::vector<std::string>& cells, std::string_view line, int number,
              ElementList& list) {
  if (!is_long_row(cells)) {
    list.notes.add(number, "not_a_long_row", "line", line,
                   "station,yyyymmdd,element,value,flags; it is left out");
    return;
  }
  const auto day = parse_date(DateStyle::yyyymmdd, cells[1]);
  if (!day) {
    list.notes.add(number, "no_such_day", "date", cells[1],
                   "a day that exists; the row is left out");
    return;
  }
  list.row();
  list.day(*day);
  const double value = *ghcn_number(cells[3]);
  if (value != kGhcnMissing) {
    list.add({*day, list.station(cells[0]), list.name(cells[2]), value, flag(cells, 4),
              flag(cells, 5), flag(cells, 6)});
  }
}

} // namespace

GhcnElements read_ghcn_long(std::string_view content) {
  ElementList list;
  std::vector<std::string> cells;
  bool first = true;
  for (Lines lines(content); lines.next();) {
    if (blank(lines.line())) {
      continue;
    }
    split(lines.line(), ',', cells);
    const bool header = first && !is_long_row(cells);
    first = false;
    if (header) {
      continue;
    }
    if (!lines.ended() && cells.size() < 7) {
      list.notes.add(lines.number(), "cut_short", "line", lines.line(),
                     "a whole row with a line end; it is left out");
      continue;
    }
    read_row(cells, lines.line(), lines.number(), list);
  }
  return list.take();
}

} // namespace baize::weather_files
