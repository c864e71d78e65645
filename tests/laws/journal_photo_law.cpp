// Photos, well told or not, change nothing of what visits and works come to.
#include "baize/journal/records.h"
#include "laws/journal_model.h"
#include "unit/journal_samples.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace {

using namespace journal_test;
using journal_model::Chance;

Value drawn_value(Chance& chance) {
  const std::vector<Value> values{text(kVisit), text(id(900099)),     number(chance.below(2000000)),
                                  nothing(),    flag(true),           text(std::string(64, 'a')),
                                  text(""),     Value{Value::List{}}, text("2026-05-03T07:09:12Z")};
  return values[static_cast<std::size_t>(chance.below(static_cast<int>(values.size())))];
}

std::vector<Entry> drawn_photos(Chance& chance) {
  const std::vector<std::string> fields{"visit", "work", "taken",   "sha256",
                                        "bytes", "note", "removed", "score"};
  std::vector<Entry> all;
  for (int number = 100; number < 100 + chance.below(12); ++number) {
    Value::Members set{{"note", text("seen")}};
    for (const std::string& field : fields) {
      if (chance.one_in(2)) {
        set.push_back({field, drawn_value(chance)});
      }
    }
    const std::vector<int> over =
        number > 100 && chance.one_in(2) ? std::vector{number - 1} : std::vector<int>{};
    all.push_back(entry(number, Kind::photo, id(900040 + chance.below(3)), set, over));
  }
  return all;
}

RC_GTEST_PROP(JournalPhotoLaw, TheyChangeNoVisitAndNoWork, ()) {
  Chance chance(*rc::gen::arbitrary<std::uint64_t>());
  const std::vector<Entry> plain{
      visit(1, visit_fields()), roll(2, roll_fields()),
      entry(3, Kind::work, id(900051),
            {{"club", text("hill")}, {"day", text("2026-05-03")}, {"done_as", text("coring")}})};
  std::vector<Entry> more = plain;
  const auto photos = drawn_photos(chance);
  more.insert(more.end(), photos.begin(), photos.end());
  chance.shuffle(more);
  const auto before = journal::records(journal::fold(plain));
  const auto after = journal::records(journal::fold(more));
  RC_ASSERT(after.visits.size() == 1U && after.works.size() == 1U && after.readings.empty());
  RC_ASSERT(after.visits[0].record == before.visits[0].record);
  RC_ASSERT(after.visits[0].problems.empty() && after.visits[0].conflicts == 0);
  RC_ASSERT(after.works[0].record == before.works[0].record);
  RC_ASSERT(after.works[0].problems.empty());
  RC_ASSERT(after.astray.empty());
  // A photo without a fault is told whole, and is of what is here.
  for (const auto& made : after.photos) {
    const journal::Photo& one = made.record;
    RC_ASSERT(!made.problems.empty() ||
              ((one.visit == kVisit || one.work == id(900051)) && one.bytes > 0 &&
               one.bytes <= journal::kMostPhotoBytes && one.sha256.size() == 64U &&
               journal::parse_instant(one.taken).has_value()));
  }
}

} // namespace
