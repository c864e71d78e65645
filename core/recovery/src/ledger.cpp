#include "baize/recovery/ledger.h"

#include "disruption.h"

#include <algorithm>

namespace baize::recovery {
namespace {

struct Book {
  std::vector<DayScore> days; ///< visited days up to the record's end, also outside the period
  std::vector<Disruption> disruptions;
  std::vector<const green::Work*> closings;
  std::vector<std::string> halves;
};

/// A green is closed when all of it is: by one closing, or each half by its own.
bool closed_on(const Book& book, units::Day day) {
  const auto shut = [&](const std::string& half) {
    return std::any_of(book.closings.begin(), book.closings.end(), [&](const green::Work* work) {
      return work->half == half && work->day <= day && day <= work->until.value_or(work->day);
    });
  };
  return shut({}) ||
         (!book.halves.empty() && std::all_of(book.halves.begin(), book.halves.end(), shut));
}

/// Nobody can say at what hour of the left day's visit the work began, so a work
/// on that day counts as between; one on the right day was seen by its visit.
bool worked_between(const Book& book, units::Day left, units::Day right) {
  return std::any_of(book.disruptions.begin(), book.disruptions.end(),
                     [&](const Disruption& d) { return d.day < right && left <= d.last; });
}

Book open_book(const green::Records& records, const std::string& green, units::Day record_end) {
  Book book;
  book.days = day_scores(visit_scores(records, green));
  std::erase_if(book.days, [&](const DayScore& d) { return d.day > record_end; });
  book.disruptions = disruptions(records, green, {}, record_end);
  for (const green::Work& work : records.works) {
    if (green::touches(work, green) && green::class_of(work) == green::WorkClass::closing) {
      book.closings.push_back(&work);
    }
  }
  if (const green::Green* place = green::find_green(records, green)) {
    book.halves = place->halves;
  }
  return book;
}

void count(Ledger& ledger, DayKind kind) {
  ledger.days.push_back(kind);
  ledger.measured_true += kind == DayKind::measured_true ? 1 : 0;
  ledger.measured_not += kind == DayKind::measured_not ? 1 : 0;
  ledger.between_true += kind == DayKind::between_true ? 1 : 0;
  ledger.unmeasured += kind == DayKind::unmeasured ? 1 : 0;
  ledger.closed += kind == DayKind::closed ? 1 : 0;
}

} // namespace

Ledger true_days(const green::Records& records, const std::string& green, units::Period period,
                 units::Day record_end) {
  Ledger ledger;
  ledger.period = {period.first, std::max(std::min(period.last, record_end), period.first - 1)};
  const Book book = open_book(records, green, record_end);
  const auto standard = [&](units::Day day) {
    return green::standard_on(records.standards, green, day);
  };
  const auto is_true = [&](const DayScore& d) { return reaches(d.score, standard(d.day)); };
  auto next = book.days.begin();
  for (units::Day day = ledger.period.first; day <= ledger.period.last; ++day) {
    while (next != book.days.end() && next->day < day) {
      ++next;
    }
    if (closed_on(book, day)) {
      count(ledger, DayKind::closed);
    } else if (next != book.days.end() && next->day == day) {
      count(ledger, is_true(*next) ? DayKind::measured_true : DayKind::measured_not);
    } else if (next != book.days.begin() && next != book.days.end()) {
      const DayScore& left = *(next - 1);
      const double wanted = standard(day);
      const bool both = next->day - left.day <= kLongestBridge && is_true(left) && is_true(*next) &&
                        reaches(left.score, wanted) && reaches(next->score, wanted);
      count(ledger, both && !worked_between(book, left.day, next->day) ? DayKind::between_true
                                                                       : DayKind::unmeasured);
    } else {
      count(ledger, DayKind::unmeasured);
    }
  }
  return ledger;
}

} // namespace baize::recovery
